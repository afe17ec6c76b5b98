/**
 * One script, two places: in the window it draws the page, in a worker it is the engine. The worker is made from
 * the text of this very script, so the page stays one file and the policy needs no other source.
 */
import { render } from 'preact';
import { App } from './app.js';
import { connect, type Port } from './client.js';
import { serve } from './worker.js';

if (typeof document === 'undefined') serve(globalThis as never);
else start();

function start(): void {
  const code = document.currentScript?.textContent ?? '';
  const url = URL.createObjectURL(new Blob([code], { type: 'text/javascript' }));
  const worker = new Worker(url);
  const root = document.getElementById('app');
  if (root) render(<App client={connect(worker as Port)} />, root);
}

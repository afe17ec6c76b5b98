/** The far side of the engine: answers messages in order, one at a time. */
import { createEngine } from './engine.js';
import type { Ask } from './protocol.js';

export interface Message {
  readonly id: number;
  readonly ask: Ask;
}

export type Result =
  | { readonly id: number; readonly value: unknown }
  | { readonly id: number; readonly refused: string };

/** Only what a dedicated worker needs of its global scope. */
interface Scope {
  onmessage: ((event: { readonly data: Message }) => void) | null;
  postMessage(message: Result): void;
}

export function serve(scope: Scope): void {
  const engine = createEngine(Date.now);
  scope.onmessage = ({ data: { id, ask } }) => {
    try {
      scope.postMessage({ id, value: engine.handle(ask) });
    } catch (error) {
      scope.postMessage({ id, refused: error instanceof Error ? error.message : String(error) });
    }
  };
}

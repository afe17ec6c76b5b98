/** What can be taken along: the page of the report, a forum post, a ticket. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Client } from './client.js';
import { download, fileName } from './files.js';
import type { DocumentKind, PageView } from './protocol.js';

const TEXTS: readonly { readonly kind: DocumentKind; readonly label: string }[] = [
  { kind: 'forum', label: 'Forum post' },
  { kind: 'forum-markdown', label: 'Forum post (Markdown)' },
  { kind: 'ticket', label: 'Ticket' },
  { kind: 'text', label: 'Plain text' },
  { kind: 'json', label: 'For programs (JSON)' },
];

export function Outcome({ client, view }: { readonly client: Client; readonly view: PageView }) {
  const [shown, setShown] = useState<{ readonly label: string; readonly text: string }>();
  const [page, setPage] = useState<string>();
  const [news, setNews] = useState('');
  const frame = useRef<HTMLIFrameElement>(null);
  // A report of an earlier state is no report.
  useEffect(() => {
    setShown(undefined);
    setPage(undefined);
  }, [view]);

  const show = async (kind: DocumentKind, label: string): Promise<void> =>
    setShown({ label, text: await client.ask({ do: 'write', kind }) });
  const copy = async (): Promise<void> => {
    try {
      await navigator.clipboard.writeText(shown?.text ?? '');
      setNews('Copied.');
    } catch {
      setNews('This browser does not let the page copy; select the text instead.');
    }
  };
  const report = (): Promise<string> => client.ask({ do: 'write', kind: 'page' });
  const fit = (): void => {
    const inside = frame.current?.contentDocument?.documentElement;
    if (frame.current && inside) frame.current.height = String(inside.scrollHeight);
  };
  return (
    <section class="c-outcome" aria-labelledby="outcome-h">
      <h2 id="outcome-h">The outcome</h2>
      <p class="c-ways">
        <button
          type="button"
          class={view.atResult ? 'c-main' : ''}
          onClick={async () => setPage(await report())}
        >
          Show the report
        </button>
        <button
          type="button"
          onClick={async () => download(fileName(view.title, 'html'), await report(), 'text/html')}
        >
          Save the report
        </button>
        {TEXTS.map(({ kind, label }) => (
          <button key={kind} type="button" onClick={() => show(kind, label)}>
            {label}
          </button>
        ))}
      </p>
      {shown && (
        <div>
          <label for="outcome-text">{shown.label}</label>
          <textarea id="outcome-text" readOnly rows={16} value={shown.text} />
          <p class="c-ways">
            <button type="button" onClick={copy}>
              Copy
            </button>
            <span class="soft" role="status">
              {news}
            </span>
          </p>
        </div>
      )}
      {page !== undefined && (
        <div>
          <p class="c-ways">
            <button type="button" onClick={() => frame.current?.contentWindow?.print()}>
              Print the report
            </button>
            <button type="button" onClick={() => setPage(undefined)}>
              Close the report
            </button>
          </p>
          <iframe ref={frame} class="c-report" title="The report" srcdoc={page} onLoad={fit} />
        </div>
      )}
    </section>
  );
}

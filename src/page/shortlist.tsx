/** What it could be, how sure, and what would settle it; a change is told to those who cannot see it. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { PageView } from './protocol.js';

export function Shortlist({ view }: { readonly view: PageView }) {
  const { shortlist, standing, settledBy } = view;
  const before = useRef<string | undefined>(undefined);
  const [news, setNews] = useState('');
  const first = shortlist[0];
  useEffect(() => {
    if (first !== undefined && before.current !== undefined && before.current !== first.id) {
      setNews(`Now first: ${first.title}, ${first.confidence}.`);
    }
    before.current = first?.id;
  }, [first?.id]);
  return (
    <section class="c-list" aria-labelledby="list-h">
      <h2 id="list-h">What it could be</h2>
      {shortlist.length === 0 ? (
        <p class="soft">Nothing was told yet, so nothing stands out.</p>
      ) : (
        <ol class="c-causes">
          {shortlist.map(({ id, title, confidence }) => (
            <li key={id}>
              <strong>{title}</strong>
              <span class="soft">{confidence}</span>
            </li>
          ))}
        </ol>
      )}
      {standing !== '' && <p>{standing}</p>}
      {settledBy !== '' && <p class="soft">What would tell most now: {settledBy}.</p>}
      <p class="c-unseen" role="status">
        {news}
      </p>
    </section>
  );
}

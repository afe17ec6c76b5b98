/** Everything answered so far, each to be changed. */
import type { Act } from './app.js';
import type { PageView } from './protocol.js';

export function Answers({ view, act }: { readonly view: PageView; readonly act: Act }) {
  const { answers } = view;
  return (
    <section class="c-answers" aria-labelledby="answers-h">
      <h2 id="answers-h">What you told</h2>
      {answers.length === 0 ? (
        <p class="soft">Nothing yet.</p>
      ) : (
        <ul>
          {answers.map(({ topic, text }) => (
            <li key={topic}>
              <span>{text}</span>
              <button
                type="button"
                aria-label={`Change: ${text}`}
                onClick={() => act({ do: 'again', topic })}
              >
                change
              </button>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}

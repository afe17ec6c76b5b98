/** One question at a time, with its choices, the usual ways out, and what was said to the last answer. */
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Act } from './app.js';
import type { PageView } from './protocol.js';

/** The marks of the conversation as buttons. */
const WAYS_OUT = [
  { text: '?', label: 'I don’t know' },
  { text: 'h', label: 'How do I find out?' },
  { text: 'w', label: 'Why this question?' },
] as const;

export function Conversation({ view, act }: { readonly view: PageView; readonly act: Act }) {
  const { question, said } = view;
  const [draft, setDraft] = useState('');
  const [picked, setPicked] = useState<readonly number[]>([]);
  const line = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  const asked = useRef<HTMLLabelElement>(null);
  const isFirst = useRef(true);

  useEffect(() => {
    setDraft('');
    setPicked([]);
    // The first view does not take the focus away from where the reader is.
    // A long list would push the question out of sight, so the view follows the question, not the line.
    if (!isFirst.current) {
      line.current?.focus({ preventScroll: true });
      asked.current?.scrollIntoView({ block: 'nearest' });
    }
    isFirst.current = false;
  }, [question.ask]);

  const send = (text: string): void => {
    setDraft('');
    setPicked([]);
    act({ do: 'reply', text });
  };
  const submit = (event: Event): void => {
    event.preventDefault();
    send(draft === '' && picked.length > 0 ? picked.join(' ') : draft);
  };
  const toggle = (number: number): void =>
    setPicked(
      picked.includes(number)
        ? picked.filter((each) => each !== number)
        : [...picked, number].sort((a, b) => a - b),
    );
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Escape') act({ do: 'back' });
    // In a text of several lines Enter begins a new one.
    if (event.key === 'Enter' && (event.ctrlKey || event.metaKey)) submit(event);
  };

  return (
    <section class="c-talk" aria-labelledby="talk-h">
      <h2 id="talk-h" class="c-eyebrow">
        {question.head === '' ? 'The conversation' : question.head}
      </h2>
      <div class="c-said" role="status">
        {said.map((text, i) => (
          <p key={`${i}-${text}`}>{text}</p>
        ))}
      </div>
      <form onSubmit={submit}>
        <label for="line" class="c-ask" ref={asked}>
          {question.ask}
        </label>
        {question.hint !== '' && (
          <p id="line-hint" class="soft">
            {question.hint}
          </p>
        )}
        {question.choices.length > 0 && (
          <ol class="c-choices">
            {question.choices.map((choice, i) => (
              <li key={choice}>
                {question.several ? (
                  <label>
                    <input type="checkbox" checked={picked.includes(i + 1)} onChange={() => toggle(i + 1)} />
                    {choice}
                  </label>
                ) : (
                  <button type="button" onClick={() => send(String(i + 1))}>
                    {choice}
                  </button>
                )}
              </li>
            ))}
          </ol>
        )}
        <div class="c-line">
          {question.long ? (
            <textarea
              id="line"
              ref={line}
              rows={6}
              value={draft}
              placeholder="Paste a post, or tell it in your own words."
              aria-describedby={question.hint === '' ? undefined : 'line-hint'}
              onInput={(event) => setDraft(event.currentTarget.value)}
              onKeyDown={onKeyDown}
            />
          ) : (
            <input
              id="line"
              ref={line}
              type="text"
              autocomplete="off"
              value={draft}
              aria-describedby={question.hint === '' ? undefined : 'line-hint'}
              onInput={(event) => setDraft(event.currentTarget.value)}
              onKeyDown={onKeyDown}
            />
          )}
          <button type="submit" class="c-main">
            {draft === '' && picked.length === 0 && question.onEnter !== '' ? 'Go on' : 'Answer'}
          </button>
        </div>
        {question.onEnter !== '' && <p class="soft">Enter alone {question.onEnter}.</p>}
      </form>
      <p class="c-ways">
        <button type="button" onClick={() => act({ do: 'back' })}>
          Back
        </button>
        {question.marks &&
          WAYS_OUT.map(({ text, label }) => (
            <button key={text} type="button" onClick={() => send(text)}>
              {label}
            </button>
          ))}
        {!view.atResult && (
          <button type="button" onClick={() => send('f')}>
            Result now
          </button>
        )}
      </p>
    </section>
  );
}

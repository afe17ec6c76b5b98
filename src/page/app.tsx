/** The page: the conversation, the room beside it, what it could be, and what can be taken along. */
import { useEffect, useRef, useState } from 'preact/hooks';
import { Answers } from './answers.js';
import type { Client } from './client.js';
import { Conversation } from './conversation.js';
import { FileBar } from './file-bar.js';
import { Hearing } from './hearing.js';
import { Outcome } from './outcome.js';
import { type Ask, type Change, isNoChange, type PageView, type RoomView } from './protocol.js';
import { Recording } from './recording.js';
import { Room } from './room.js';
import { Shortlist } from './shortlist.js';

const NO_CHANGE: Change = {};

export function App({ client }: { readonly client: Client }) {
  const [view, setView] = useState<PageView>();
  const [trouble, setTrouble] = useState('');
  const [change, setChange] = useState<Change>(NO_CHANGE);
  const [tried, setTried] = useState<RoomView>();
  const shown = useRef<PageView | undefined>(undefined);

  /** Everything that gives a new view goes through here; a refusal is told and the old view stands. */
  const act: Act = async (ask) => {
    try {
      const next = await client.ask(ask);
      setTrouble('');
      shown.current = next;
      setView(next);
      return next;
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
      return undefined;
    }
  };
  useEffect(() => {
    act({ do: 'look' });
  }, []);
  useEffect(() => {
    if (isNoChange(change)) setTried(undefined);
    else
      client.newest({ do: 'try', change }).then(
        (room) => room && setTried(room),
        (error) => setTrouble(String(error)),
      );
  }, [change, view]);

  if (view === undefined) return <p class="c-wait">One moment …</p>;
  const keep = async (): Promise<void> => {
    await act({ do: 'keep', change });
    setChange(NO_CHANGE);
  };
  const open = async (caseText?: string, files: Readonly<Record<string, string>> = {}): Promise<void> => {
    setChange(NO_CHANGE);
    await act(caseText === undefined ? { do: 'open' } : { do: 'open', caseText, files });
  };
  return (
    <>
      <header class="c-head">
        <h1>Why does the center loudspeaker ruin the image?</h1>
        <FileBar client={client} title={view.title} open={open} />
      </header>
      {trouble !== '' && (
        <p class="caution" role="alert">
          {trouble}
        </p>
      )}
      <main id="main" class="c-desk">
        <Conversation view={view} act={act} />
        <Room
          asIs={view.room}
          tried={isNoChange(change) ? undefined : tried}
          change={change}
          move={setChange}
          keep={keep}
          client={client}
        />
        <Shortlist view={view} />
        <Answers view={view} act={act} />
        <Outcome client={client} view={view} />
        <Hearing client={client} room={view.room} change={change} act={act} />
        <Recording client={client} room={view.room} act={act} />
      </main>
      <footer class="c-foot">
        <p>
          This page is one file. It loads nothing and sends nothing; what you type stays in it until you close
          or save it.
        </p>
      </footer>
    </>
  );
}

export type Act = (
  ask: Extract<Ask, { do: 'open' | 'reply' | 'back' | 'again' | 'look' | 'keep' | 'remark' }>,
) => Promise<PageView | undefined>;

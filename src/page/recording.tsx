/** One recording at the seat: play the test, record it here or bring a file; what it tells goes into the case. */
import { useRef, useState } from 'preact/hooks';
import type { Act } from './app.js';
import { createRecorder, decoded, playTest } from './audio/recorder.js';
import type { Client } from './client.js';
import { download } from './files.js';
import type { RoomView } from './protocol.js';

interface Props {
  readonly client: Client;
  readonly room: RoomView;
  readonly act: Act;
}

export function Recording({ client, room, act }: Props) {
  const recorder = useRef(createRecorder());
  const [seat, setSeat] = useState<number>();
  const [state, setState] = useState<'idle' | 'recording' | 'measuring'>('idle');
  const [told, setTold] = useState('');
  const [trouble, setTrouble] = useState('');
  // The settings are made for the main seat, so that is where most recordings are made.
  const main = Math.max(
    0,
    room.seats.findIndex((each) => each.main),
  );
  const place = Math.min(seat ?? main, room.seats.length - 1);

  const measure = async (sound: Blob, file: string): Promise<void> => {
    setState('measuring');
    setTrouble('');
    try {
      const { samples, rateHz } = await decoded(sound);
      const { html } = await client.ask({ do: 'measure', samples, rateHz, file, seat: place });
      setTold(html);
      await act({ do: 'look' });
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
    setState('idle');
  };
  const record = async (): Promise<void> => {
    setTrouble('');
    try {
      await recorder.current.start();
      setState('recording');
    } catch {
      setTrouble(
        'This browser does not let the page use a microphone. Record with a phone and bring the file.',
      );
    }
  };
  const stop = async (): Promise<void> => measure(await recorder.current.stop(), 'recorded in the page');
  const save = async (): Promise<void> =>
    download('center-audit-test.wav', await client.ask({ do: 'signal' }), 'audio/wav');

  return (
    <section class="c-record" aria-labelledby="record-h">
      <h2 id="record-h">Measure with one recording</h2>
      <p>
        A phone at the seat tells what nobody can guess: when the center arrives, which way round it is wired,
        how loud it is, and its tone against the mains. Nothing leaves this page.
      </p>
      <p>
        <label for="record-seat">Recorded at</label>{' '}
        <select
          id="record-seat"
          value={String(place)}
          onChange={(event) => setSeat(Number(event.currentTarget.value))}
        >
          {room.seats.map(({ name }, i) => (
            <option key={name} value={String(i)}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <p class="caution">
        <strong>Caution:</strong> begin softly, as loud as people talk. The sweep ends in the treble: turn
        down if it hisses or rattles, and keep ears away from the loudspeakers.
      </p>
      <p class="c-ways">
        <button type="button" onClick={save}>
          Save the test file
        </button>
        <button
          type="button"
          onClick={() => playTest().catch(() => setTrouble('This browser plays no sound here.'))}
        >
          Play the test from here
        </button>
        {state === 'recording' ? (
          <button type="button" class="c-main" onClick={stop}>
            Stop and measure
          </button>
        ) : (
          <button type="button" disabled={state === 'measuring'} onClick={record}>
            Record with this device
          </button>
        )}
      </p>
      <p>
        <label for="record-file">Or bring a recording</label>{' '}
        <input
          id="record-file"
          type="file"
          accept="audio/*"
          onChange={(event) => {
            const file = event.currentTarget.files?.[0];
            if (file) measure(file, file.name);
          }}
        />
      </p>
      <p class="soft" role="status">
        {state === 'recording' &&
          'Recording. Play the test now, stay silent, and stop it three seconds after the last tone.'}
        {state === 'measuring' && 'Measuring …'}
      </p>
      {trouble !== '' && <p role="alert">{trouble}</p>}
      {/* Written and escaped by the same writer as every report. */}
      {told !== '' && <div class="c-measured" dangerouslySetInnerHTML={{ __html: told }} />}
    </section>
  );
}

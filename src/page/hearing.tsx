/** What a seat gets, drawn and played: as it should be, and through the curve computed for this case. */
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Act } from './app.js';
import { createPlayer } from './audio/player.js';
import type { Client } from './client.js';
import { CurvePlot } from './curve-plot.js';
import type { Change, Heard, RoomView } from './protocol.js';

interface Props {
  readonly client: Client;
  readonly room: RoomView;
  readonly change: Change;
  readonly act: Act;
}

export function Hearing({ client, room, change, act }: Props) {
  const player = useMemo(createPlayer, []);
  const [seat, setSeat] = useState(0);
  const [heard, setHeard] = useState<Heard>();
  const [playing, setPlaying] = useState<'plain' | 'seat'>();
  const [trouble, setTrouble] = useState('');
  const file = useRef<HTMLInputElement>(null);
  const place = Math.min(seat, room.seats.length - 1);

  useEffect(() => {
    client.newest({ do: 'hear', seat: place, change }).then(
      (next) => next && setHeard(next),
      () => setHeard(undefined),
    );
  }, [place, change, room]);
  useEffect(() => {
    if (playing === 'seat' && heard) player.play(heard.total).catch(() => stop());
  }, [heard]);

  const play = async (what: 'plain' | 'seat'): Promise<void> => {
    try {
      setPlaying(what);
      await player.play(what === 'seat' ? heard?.total : undefined);
    } catch {
      setTrouble('This browser plays no sound here.');
      setPlaying(undefined);
    }
  };
  const stop = (): void => {
    player.stop();
    setPlaying(undefined);
  };
  const choose = async (): Promise<void> => {
    stop();
    try {
      await player.useFile(file.current?.files?.[0]);
      setTrouble('');
    } catch {
      setTrouble('This file is no sound that the browser can play; the made sound is played instead.');
    }
  };
  const nothing = heard === undefined || heard.parts.length === 0;
  return (
    <section class="c-hear" aria-labelledby="hear-h">
      <h2 id="hear-h">Hear it</h2>
      <p>
        <label for="hear-seat">Seat</label>{' '}
        <select
          id="hear-seat"
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
      {nothing ? (
        <p class="soft">
          Nothing that can be played is computed for this seat yet: tell how the center is built, where it
          stands and how it is set.
        </p>
      ) : (
        <>
          <CurvePlot heard={heard} />
          <p class="caution">
            <strong>Caution:</strong> turn the volume down first, above all with headphones; it starts softly.
            Take no loudspeaker to its limits with it.
          </p>
          <p class="c-ways">
            <button type="button" aria-pressed={playing === 'plain'} onClick={() => play('plain')}>
              Play as it should be
            </button>
            <button type="button" aria-pressed={playing === 'seat'} onClick={() => play('seat')}>
              Play as this seat gets it
            </button>
            <button type="button" disabled={playing === undefined} onClick={stop}>
              Stop
            </button>
          </p>
          <p class="soft">
            Noise with the spectrum and the rhythm of a voice, made in this page, both equally loud. The room
            of your loudspeakers or headphones adds its own.
          </p>
          <p>
            <label for="hear-file">Or your own sound</label>{' '}
            <input id="hear-file" ref={file} type="file" accept="audio/*" onChange={choose} />
          </p>
          <fieldset>
            <legend>Is that what is heard at this seat?</legend>
            <p class="c-ways">
              <button type="button" onClick={() => act({ do: 'remark', seat: heard.seat, matches: true })}>
                Yes, like that
              </button>
              <button type="button" onClick={() => act({ do: 'remark', seat: heard.seat, matches: false })}>
                No, not like that
              </button>
            </p>
            <p class="soft">It goes in as a remark: an ear that was told what to expect proves little.</p>
          </fieldset>
        </>
      )}
      {trouble !== '' && <p role="alert">{trouble}</p>}
    </section>
  );
}

/** The room to scale, from above and from the side; what is moved is heard about at once and taken over or dropped. */
import { useState } from 'preact/hooks';
import type { FactId } from '../facts/catalog.js';
import type { Client } from './client.js';
import { Drawing, type Place } from './drawing.js';
import { type Change, isNoChange, type Reply, type RoomKnob, type RoomView } from './protocol.js';

interface Props {
  readonly asIs: RoomView;
  /** What the engine says of the room as moved; lags a frame or two behind `change`. */
  readonly tried: RoomView | undefined;
  readonly change: Change;
  readonly move: (change: Change) => void;
  readonly keep: () => void;
  readonly client: Client;
}

export function Room({ asIs, tried, change, move, keep, client }: Props) {
  const set = (facts: NonNullable<Change['facts']>): void =>
    move({ ...change, facts: { ...change.facts, ...facts } });
  const moved = overlaid(asIs, change);
  const isMoved = !isNoChange(change);
  return (
    <section class="c-room-panel" aria-labelledby="room-h">
      <h2 id="room-h">The room</h2>
      <p class="soft" id="room-how">
        Drag what stands elsewhere, or choose it with Tab and move it with the arrow keys (with Shift in
        larger steps).
      </p>
      <div class="c-views">
        <Drawing
          label="The room from above, to scale, facing the picture"
          describedBy="room-how"
          places={fromAbove(moved, change, move, set)}
          picture={moved.picture && [-moved.picture.widthM / 2, 0, moved.picture.widthM / 2, 0]}
          axis={moved.center && [moved.center.xM, -moved.center.behindM]}
          view="above"
        />
        <Drawing
          label="The room from the side, to scale, the picture at the left"
          describedBy="room-how"
          places={fromTheSide(moved, set)}
          picture={sidePicture(moved)}
          view="side"
        />
      </div>
      <SeatTable room={asIs} caption={isMoved ? 'As it is' : 'What each seat hears'} />
      {isMoved && <SeatTable room={tried ?? asIs} caption="As moved here" />}
      {asIs.assumed !== '' && <p class="soft">{asIs.assumed}</p>}
      {asIs.knobs.length > 0 && (
        <fieldset class="c-knobs">
          <legend>Settings</legend>
          {(tried ?? asIs).knobs.map((knob) => (
            <Knob key={knob.fact} knob={knob} turn={(value) => set({ [knob.fact]: value })} />
          ))}
        </fieldset>
      )}
      <Compromise key={asIs.leader.title} client={client} change={change} move={move} />
      {isMoved && (
        <p class="c-ways" role="group" aria-label="What to do with the moved room">
          {tried && (
            <span class="soft">
              As moved, first: {tried.leader.title} ({tried.leader.confidence}).
            </span>
          )}
          <button type="button" class="c-main" onClick={keep}>
            Take it over
          </button>
          <button type="button" onClick={() => move({})}>
            Drop it
          </button>
        </p>
      )}
    </section>
  );
}

interface CompromiseProps {
  readonly client: Client;
  readonly change: Change;
  readonly move: (change: Change) => void;
}

/** The numbers to type into the menu for all seats at once, and their price at each. */
function Compromise({ client, change, move }: CompromiseProps) {
  const [sheet, setSheet] = useState<Reply['settings']>();
  const [trouble, setTrouble] = useState('');
  const find = async (): Promise<void> => {
    try {
      setSheet(await client.ask({ do: 'settings', change }));
      setTrouble('');
    } catch (error) {
      setTrouble(error instanceof Error ? error.message : String(error));
    }
  };
  return (
    <>
      <p class="c-ways">
        <button type="button" onClick={find}>
          The best compromise over all seats
        </button>
        {sheet && (
          <button type="button" onClick={() => move(sheet.entries)}>
            Try its entries here
          </button>
        )}
      </p>
      {trouble !== '' && <p role="alert">{trouble}</p>}
      {/* Written and escaped by the same writer as every report. */}
      {sheet && <div class="c-sheet" dangerouslySetInnerHTML={{ __html: sheet.html }} />}
    </>
  );
}

function SeatTable({ room: { table }, caption }: { readonly room: RoomView; readonly caption: string }) {
  const [first = '', ...head] = table.head;
  return (
    <div class="scroll" tabindex={0} role="group" aria-label={caption}>
      <table>
        <caption>{caption}</caption>
        <thead>
          <tr>
            <th scope="col">{first}</th>
            {head.map((cell) => (
              <th key={cell} scope="col">
                {cell}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {table.rows.map(([name = '', ...cells]) => (
            <tr key={name}>
              <th scope="row">{name}</th>
              {cells.map((cell, i) => (
                <td key={table.head[i + 1]}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {[...table.marks, ...table.missing.map((what) => `Not computed yet: ${what}`)].map((note) => (
        <p key={note} class="soft">
          {note}
        </p>
      ))}
    </div>
  );
}

function Knob({ knob, turn }: { readonly knob: RoomKnob; readonly turn: (value: number) => void }) {
  const id = `knob-${knob.fact}`;
  return (
    <p>
      <label for={id}>
        {knob.label}
        {knob.assumed && <span class="soft"> (not told)</span>}
      </label>
      <input
        id={id}
        type="range"
        min={knob.from}
        max={knob.to}
        step={knob.step}
        value={knob.value}
        aria-valuetext={knob.text}
        onInput={(event) => turn(Number(event.currentTarget.value))}
      />
      <output for={id}>{knob.text}</output>
    </p>
  );
}

/** The room as it is drawn while it is moved: at once, before the engine has answered. */
function overlaid(room: RoomView, { facts = {}, seats = {} }: Change): RoomView {
  const of = (id: FactId, asIs: number): number => facts[id] ?? asIs;
  return {
    ...room,
    seats: room.seats.map((seat, i) => ({
      ...seat,
      ...seats[i],
      earHeightM: seat.main ? of('earHeight', seat.earHeightM) : seat.earHeightM,
    })),
    baseM: of('mainsBase', room.baseM),
    mainsHeightM: of('mainsTweeterHeight', room.mainsHeightM),
    ...(room.center
      ? {
          center: {
            xM: of('centerSideOffset', room.center.xM),
            behindM: of('centerBehindMains', room.center.behindM),
            heightM: of('centerTweeterHeight', room.center.heightM),
          },
        }
      : {}),
  };
}

/** Nobody sits nearer to the line of the mains than this, m. */
const NEAREST_SEAT_M = 0.5;
const NARROWEST_BASE_M = 0.5;

type Set = (facts: NonNullable<Change['facts']>) => void;

function fromAbove(room: RoomView, change: Change, move: (change: Change) => void, set: Set): Place[] {
  const half = room.baseM / 2;
  const widen = (xM: number): void => set({ mainsBase: Math.max(NARROWEST_BASE_M, 2 * Math.abs(xM)) });
  return [
    { kind: 'main', name: 'left', at: [-half, 0], to: ([xM]) => widen(xM) },
    { kind: 'main', name: 'right', at: [half, 0], to: ([xM]) => widen(xM) },
    ...(room.center
      ? [
          {
            kind: 'center',
            name: 'center',
            at: [room.center.xM, -room.center.behindM],
            to: ([xM, yM]) => set({ centerSideOffset: xM, centerBehindMains: -yM }),
          } satisfies Place,
        ]
      : []),
    ...room.seats.map(
      ({ name, xM, yM, main }, i): Place => ({
        kind: main ? 'main-seat' : 'seat',
        name,
        at: [xM, yM],
        to: ([x, y]) =>
          move({ ...change, seats: { ...change.seats, [i]: { xM: x, yM: Math.max(NEAREST_SEAT_M, y) } } }),
      }),
    ),
  ];
}

/** x counts back from the line of the mains, y up from the floor. */
function fromTheSide(room: RoomView, set: Set): Place[] {
  const main = room.seats.find((seat) => seat.main) ?? room.seats[0];
  return [
    {
      kind: 'main',
      name: 'mains',
      at: [0, room.mainsHeightM],
      to: ([, m]) => set({ mainsTweeterHeight: m }),
    },
    ...(room.center
      ? [
          {
            kind: 'center',
            name: 'center',
            at: [-room.center.behindM, room.center.heightM],
            to: ([, m]) => set({ centerTweeterHeight: m }),
          } satisfies Place,
        ]
      : []),
    ...(main
      ? [
          {
            kind: 'main-seat',
            name: 'ears',
            at: [main.yM, main.earHeightM],
            to: ([, m]) => set({ earHeight: m }),
          } satisfies Place,
        ]
      : []),
  ];
}

function sidePicture({ picture }: RoomView): [number, number, number, number] | undefined {
  if (picture?.middleM === undefined || picture.heightM === undefined) return undefined;
  const half = picture.heightM / 2;
  return [0, picture.middleM - half, 0, picture.middleM + half];
}

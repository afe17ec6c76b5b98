/** What goes between the page and its engine: plain data, so that the engine can live in a worker. */
import type { SeatTable } from '../explain/seat-table.js';
import type { FactId } from '../facts/catalog.js';
import type { CauseId } from '../rules/cause-ids.js';

/** A room or menu that is not (yet) that of the case: facts in SI units, and seats moved. */
export interface Change {
  readonly facts?: Readonly<Partial<Record<FactId, number>>>;
  /** Seat by its place in the plan; meters. */
  readonly seats?: Readonly<Record<number, { readonly xM: number; readonly yM: number }>>;
}

export const isNoChange = ({ facts = {}, seats = {} }: Change): boolean =>
  Object.keys(facts).length + Object.keys(seats).length === 0;

interface PageQuestion {
  readonly head: string;
  readonly ask: string;
  readonly hint: string;
  readonly choices: readonly string[];
  /** Several numbers may be given at once. */
  readonly several: boolean;
  /** A post may be pasted: several lines of text. */
  readonly long: boolean;
  readonly onEnter: string;
  readonly marks: boolean;
}

interface PageCause {
  readonly id: CauseId;
  readonly title: string;
  /** "likely, about 75%" */
  readonly confidence: string;
}

export interface PageView {
  readonly question: PageQuestion;
  /** What was said since the last line, in order. */
  readonly said: readonly string[];
  readonly shortlist: readonly PageCause[];
  /** That nothing is decided yet, or what settled it; '' where the list says all. */
  readonly standing: string;
  /** What would settle it, in words; '' where nothing open would, or nothing has to. */
  readonly settledBy: string;
  readonly answers: readonly { readonly topic: string; readonly text: string }[];
  /** A result is on the screen. */
  readonly atResult: boolean;
  readonly title: string;
  readonly room: RoomView;
}

interface RoomSeat {
  readonly name: string;
  readonly main: boolean;
  readonly xM: number;
  readonly yM: number;
  readonly earHeightM: number;
}

export interface RoomKnob {
  readonly fact: FactId;
  readonly label: string;
  readonly value: number;
  readonly text: string;
  readonly from: number;
  readonly to: number;
  readonly step: number;
  /** The case does not say it: what is usual, or the middle. */
  readonly assumed: boolean;
}

export interface RoomView {
  readonly seats: readonly RoomSeat[];
  readonly baseM: number;
  readonly mainsHeightM: number;
  /** undefined where the system has no center. */
  readonly center?: { readonly xM: number; readonly behindM: number; readonly heightM: number };
  readonly picture?: {
    readonly widthM: number;
    readonly heightM?: number;
    readonly middleM?: number;
  };
  /** What each seat hears, in the words of the report. */
  readonly table: SeatTable;
  readonly knobs: readonly RoomKnob[];
  /** "Not told and taken as usual: …"; '' where all was told. */
  readonly assumed: string;
  /** The causes as they would stand. */
  readonly leader: PageCause;
}

/** One thing that colors the voice on its way to a seat, level over frequency. */
export interface HeardPart {
  readonly name: string;
  readonly points: readonly (readonly [hz: number, db: number])[];
}

export interface Heard {
  readonly seat: string;
  readonly parts: readonly HeardPart[];
  /** The sum of the parts, dB: what is drawn and what is played. */
  readonly total: HeardPart['points'];
}

export type DocumentKind = 'page' | 'forum' | 'forum-markdown' | 'ticket' | 'text' | 'json' | 'case';

export type Ask =
  /** A case with the response files that lie beside it, by name; without a case a new one is begun. */
  | { readonly do: 'open'; readonly caseText?: string; readonly files?: Readonly<Record<string, string>> }
  | { readonly do: 'reply'; readonly text: string }
  | { readonly do: 'back' }
  | { readonly do: 'again'; readonly topic: string }
  | { readonly do: 'look' }
  | { readonly do: 'try'; readonly change: Change }
  | { readonly do: 'keep'; readonly change: Change }
  | { readonly do: 'hear'; readonly seat: number; readonly change: Change }
  | { readonly do: 'remark'; readonly seat: string; readonly matches: boolean }
  | {
      readonly do: 'measure';
      readonly samples: Float32Array;
      readonly rateHz: number;
      readonly file: string;
      readonly seat: number;
    }
  /** The best compromise over all seats, as the room stands with the change. */
  | { readonly do: 'settings'; readonly change: Change }
  /** The test file as WAV bytes. */
  | { readonly do: 'signal' }
  | { readonly do: 'write'; readonly kind: DocumentKind };

/** What each request is answered with. */
export interface Reply {
  readonly open: PageView;
  readonly reply: PageView;
  readonly back: PageView;
  readonly again: PageView;
  readonly look: PageView;
  readonly try: RoomView;
  readonly keep: PageView;
  readonly hear: Heard;
  readonly remark: PageView;
  /** What was measured, as finished markup; what can be trusted stands in the case. */
  readonly measure: { readonly html: string };
  /** The sheet as finished markup, and its entries as a change to try. */
  readonly settings: { readonly html: string; readonly entries: Change };
  readonly signal: Uint8Array<ArrayBuffer>;
  readonly write: string;
}
export type ReplyTo<A extends Ask> = Reply[A['do']];

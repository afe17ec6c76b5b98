/**
 * Pasted text is one piece, whatever lines it has. A terminal that is asked to brackets it between two escape
 * sequences; one that does not hands it over in one go. Here it is cut out of what is typed, so that its line ends
 * answer no question, and no key of it is drawn one by one.
 */
import { PassThrough } from 'node:stream';

export const BRACKETS_ON = '\u001b[?2004h';
export const BRACKETS_OFF = '\u001b[?2004l';
const BEGIN = '\u001b[200~';
const END = '\u001b[201~';
/** A short piece in one line is typed as it is, so that it can be edited. */
const LONGEST_TYPED = 200;
/** Beginnings of a bracket that a chunk may be cut at. */
const CUT = ['\u001b[20', '\u001b[200'];

type Piece = { readonly typed: string } | { readonly pasted: string };

interface PasteReader {
  /** A chunk of input taken apart: what is typed on, and a whole paste where one ended in it. */
  read(chunk: string): readonly Piece[];
  /** A paste has begun and not ended. */
  isPasting(): boolean;
}

export function pasteReader(): PasteReader {
  let rest = '';
  let pasting: string | undefined;
  const take = (chunk: string): Piece[] => {
    const out: Piece[] = [];
    let text = rest + chunk;
    rest = '';
    while (text !== '') {
      if (pasting === undefined) {
        const at = text.indexOf(BEGIN);
        if (at < 0) break;
        if (at > 0) out.push({ typed: text.slice(0, at) });
        text = text.slice(at + BEGIN.length);
        pasting = '';
      } else {
        // The closing bracket may have been cut in two.
        const from = Math.max(0, pasting.length - END.length);
        pasting += text;
        const at = pasting.indexOf(END, from);
        if (at < 0) return out;
        text = pasting.slice(at + END.length);
        out.push({ pasted: pasting.slice(0, at) });
        pasting = undefined;
      }
    }
    if (pasting === undefined && CUT.some((cut) => text.endsWith(cut))) rest = text;
    else if (pasting === undefined && text !== '') out.push(...unbracketed(text));
    return out;
  };
  return { read: take, isPasting: () => pasting !== undefined };
}

/** Nobody types a line end and more in one go: what stands around it was pasted. */
function unbracketed(text: string): Piece[] {
  const body = text.replace(/[\r\n]+$/, '');
  if (!/[\r\n]/.test(body)) return [{ typed: text }];
  const end = text.slice(body.length);
  return [{ pasted: body }, ...(end === '' ? [] : [{ typed: '\r' }])];
}

/** What stands on the line for a paste that is not shown. */
export const placeholder = (text: string): string => {
  const lines = text.split(/\r\n?|\n/).length;
  return `[pasted: ${lines} ${lines === 1 ? 'line' : 'lines'}, ${Array.from(text).length} letters]`;
};

/** The terminal as a stream in which pastes are replaced; `whole` puts them back into a typed line. */
interface PasteGate {
  readonly stream: NodeJS.ReadStream;
  whole(line: string): string;
  close(): void;
}

export function pasteGate(input: NodeJS.ReadStream): PasteGate {
  const stream = new PassThrough();
  const held = new Map<string, string>();
  const { read } = pasteReader();
  const onData = (chunk: Buffer | string): void => {
    for (const piece of read(chunk.toString())) {
      if ('typed' in piece) stream.write(piece.typed);
      else if (piece.pasted.length <= LONGEST_TYPED && !/[\r\n]/.test(piece.pasted))
        stream.write(piece.pasted);
      else {
        const shown = placeholder(piece.pasted);
        held.set(shown, piece.pasted);
        stream.write(shown);
      }
    }
  };
  const onEnd = (): void => void stream.end();
  input.on('data', onData);
  input.once('end', onEnd);
  const asTerminal = Object.assign(stream, {
    isTTY: true,
    setRawMode: (raw: boolean): typeof stream => {
      input.setRawMode?.(raw);
      return stream;
    },
  });
  return {
    stream: asTerminal as unknown as NodeJS.ReadStream,
    whole: (line) => {
      let text = line;
      for (const [shown, pasted] of held) text = text.replace(shown, () => pasted.replaceAll(/\r\n?/g, '\n'));
      held.clear();
      return text;
    },
    close: () => {
      input.off('data', onData);
      input.off('end', onEnd);
      input.pause();
      stream.end();
    },
  };
}

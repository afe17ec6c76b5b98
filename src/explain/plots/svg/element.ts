/** Markup of a drawing: elements as text, every string escaped, no style attribute, one decimal in coordinates. */
import { escapeHtml } from '../../escape-html.js';

type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Numbers keep one decimal: a tenth of a unit of the drawing is finer than a screen shows. */
export function el(tag: string, attributes: Attributes, ...children: readonly string[]): string {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${typeof value === 'number' ? px(value) : escapeHtml(value ?? '')}"`)
    .join('');
  return children.length === 0 ? `<${tag}${written}/>` : `<${tag}${written}>${children.join('')}</${tag}>`;
}

export const tenth = (value: number): number => Math.round(value * 10) / 10 + 0;
export const px = (value: number): string => String(tenth(value));

type Anchor = 'start' | 'middle' | 'end';
export interface TextAt {
  readonly x: number;
  readonly y: number;
  readonly anchor?: Anchor;
  readonly className?: string;
}

export function label(text: string, { x, y, anchor = 'start', className = 'c-text' }: TextAt): string {
  const at = { x, y, 'text-anchor': anchor === 'start' ? undefined : anchor, class: className };
  return el('text', at, escapeHtml(text));
}

export const line = (x1: number, y1: number, x2: number, y2: number, attributes: Attributes): string =>
  el('line', { x1, y1, x2, y2, ...attributes });

/** Width of a drawing, in units of which a phone shows about 0.85 and a wide page 1.3 as a pixel. */
export const WIDTH = 400;
/** Average width of a letter at the size of the drawings, units. System fonts differ; this errs to the wide side. */
const LETTER = 7.9;
export const textWidth = (text: string): number => Array.from(text).length * LETTER;

/** Cut to a width, with an ellipsis. */
export function fitting(text: string, width: number): string {
  const letters = Array.from(text);
  const most = Math.max(1, Math.floor(width / LETTER));
  return letters.length <= most
    ? text
    : `${letters
        .slice(0, most - 1)
        .join('')
        .trimEnd()}…`;
}

interface Drawing {
  readonly id: string;
  readonly title: string;
  readonly says: string;
  readonly height: number;
  readonly parts: readonly string[];
}

/** A drawing with its name and its description, for those who do not see it. */
export function drawing({ id, title, says, height, parts }: Drawing): string {
  const [titleId, descId] = [`${id}-title`, `${id}-desc`];
  return el(
    'svg',
    {
      class: 'c-plot',
      viewBox: `0 0 ${WIDTH} ${px(height)}`,
      role: 'img',
      'aria-labelledby': `${titleId} ${descId}`,
    },
    el('title', { id: titleId }, escapeHtml(title)),
    el('desc', { id: descId }, escapeHtml(says)),
    ...parts,
  );
}

/** How curves differ beside their color: by dashes. */
const DASHES: readonly (string | undefined)[] = [undefined, '7 4', '2 3', '10 3 2 3'];
export const dashOf = (index: number): string | undefined => DASHES[index % DASHES.length];
export const colorOf = (index: number): string => `c-${index % DASHES.length}`;

/** Takes a drawing apart into its elements, in the order drawn. */

export interface Element {
  readonly tag: string;
  /** Its attributes; numbers as text. */
  readonly is: Readonly<Record<string, string>>;
  /** What stands right after its opening tag. */
  readonly text: string;
  readonly at: (attribute: string) => number;
}

export function elementsOf(markup: string | readonly string[]): Element[] {
  const all = typeof markup === 'string' ? markup : markup.join('');
  return [...all.matchAll(/<([a-zA-Z]+)((?: [\w:-]+="[^"]*")*)\/?>([^<]*)/g)].map((match) => {
    const is = Object.fromEntries(
      [...(match[2] ?? '').matchAll(/ ([\w:-]+)="([^"]*)"/g)].map(([, name = '', value = '']) => [
        name,
        value,
      ]),
    );
    return { tag: match[1] ?? '', is, text: match[3] ?? '', at: (name) => Number(is[name]) };
  });
}

export const textsOf = (markup: string | readonly string[]): Element[] =>
  elementsOf(markup).filter(({ tag }) => tag === 'text');

/** The text that reads so; throws where none does. */
export function textAt(markup: string | readonly string[], text: string): Element {
  const found = textsOf(markup).find((each) => each.text === text);
  if (!found)
    throw new Error(
      `no text “${text}” among ${textsOf(markup)
        .map((each) => each.text)
        .join(', ')}`,
    );
  return found;
}

export const withClass = (markup: string | readonly string[], name: string): Element[] =>
  elementsOf(markup).filter(({ is }) => (is.class ?? '').split(' ').includes(name));

/** Horizontal extent of a text whose letters are 7.5 wide. */
export function extentOf({ is, text, at }: Element): readonly [left: number, right: number] {
  const width = 7.5 * Array.from(text).length;
  const left =
    at('x') - (is['text-anchor'] === 'end' ? width : is['text-anchor'] === 'middle' ? width / 2 : 0);
  return [left, left + width];
}

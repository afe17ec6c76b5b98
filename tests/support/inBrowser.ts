/** Questions asked inside the browser, as source text: the program itself has no types of a browser. */

export const OPEN_ALL = `for (const each of document.querySelectorAll('details')) each.open = true`;

export const SCROLL_WIDTH = 'document.documentElement.scrollWidth';

/** Names of a drawing that leave it, cover one another, stand on a line or are too small to read. */
export const NAMES_AT_FAULT = `(() => {
  const SLACK = 3;
  const SMALLEST_PX = 11;
  const LINES = 'path.c-line, line.c-limit, path.c-room, line.c-picture, line.c-obstacle';
  const found = [];
  for (const svg of document.querySelectorAll('svg.c-plot')) {
    const frame = svg.viewBox.baseVal;
    const scale = svg.getBoundingClientRect().width / frame.width;
    const of = svg.querySelector('title').textContent;
    // Where a name has a plate, the lines stop at it.
    const texts = [...svg.querySelectorAll('text')].map((text) => ({
      words: text.textContent,
      box: text.getBBox(),
      px: parseFloat(getComputedStyle(text).fontSize) * scale,
      plated: text.previousElementSibling?.classList.contains('c-plate') ?? false,
    }));
    const lines = [...svg.querySelectorAll(LINES)].map((line) =>
      Array.from({ length: Math.ceil(line.getTotalLength() / 1.5) }, (_, i) => line.getPointAtLength(1.5 * i)));
    texts.forEach(({ words, box, px, plated }, i) => {
      if (px < SMALLEST_PX) found.push(of + ': “' + words + '” is ' + px.toFixed(1) + ' px');
      const out =
        box.x < -SLACK || box.x + box.width > frame.width + SLACK ||
        box.y < -SLACK || box.y + box.height > frame.height + SLACK;
      if (out) found.push(of + ': “' + words + '” leaves the drawing');
      const on = (p) => p.x > box.x + 1 && p.x < box.x + box.width - 1 && p.y > box.y + SLACK && p.y < box.y + box.height - SLACK;
      if (!plated && lines.some((points) => points.filter(on).length > 1)) found.push(of + ': “' + words + '” on a line');
      for (const other of texts.slice(i + 1)) {
        const across = Math.min(box.x + box.width, other.box.x + other.box.width) - Math.max(box.x, other.box.x);
        const down = Math.min(box.y + box.height, other.box.y + other.box.height) - Math.max(box.y, other.box.y);
        if (across > 2 && down > 5) found.push(of + ': “' + words + '” on “' + other.words + '”');
      }
    });
  }
  return found;
})()`;

export const TEXT_COLOR = 'getComputedStyle(document.body).color';
export const FOCUSED = 'document.activeElement.textContent';
export const FOCUS_OUTLINE = 'getComputedStyle(document.activeElement).outlineStyle';
export const ADDRESS_END = 'location.hash';

/** What axe-core finds, once its own source has run. */
export const AXE_FINDINGS = `axe.run().then(({ violations }) =>
  violations.flatMap(({ id, nodes }) =>
    nodes.map((node) => id + ': ' + node.html.slice(0, 160) + ' ' + (node.failureSummary ?? ''))))`;

/**
 * One of the things that can be pressed, focused or clicked in one turn of the page, which may draw itself anew at any moment.
 * What opens a window of the system is left alone: it would hold the test up.
 */
export const touchOne = (pick: number, how: 'focus' | 'click'): string => `(() => {
  const seen = [...document.querySelectorAll('button:enabled, g[role=button]')].filter((each) => each.checkVisibility());
  const one = seen[${pick} % seen.length];
  if (${how === 'focus'}) one?.focus();
  else if (!/Open a case|Print|Save|Play/.test(one?.textContent ?? ''))
    one?.dispatchEvent(new MouseEvent('click', { bubbles: true }));
})()`;

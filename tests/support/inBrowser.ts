/** Questions asked inside the browser, as source text: the program itself has no types of a browser. */

export const OPEN_ALL = `for (const each of document.querySelectorAll('details')) each.open = true`;

export const SCROLL_WIDTH = 'document.documentElement.scrollWidth';

/** Names of a drawing that leave it, or that cover one another. */
export const NAMES_AT_FAULT = `(() => {
  const SLACK = 3;
  const found = [];
  for (const svg of document.querySelectorAll('svg.c-plot')) {
    const frame = svg.viewBox.baseVal;
    const of = svg.querySelector('title').textContent;
    const texts = [...svg.querySelectorAll('text')].map((text) => ({ words: text.textContent, box: text.getBBox() }));
    texts.forEach(({ words, box }, i) => {
      const out =
        box.x < -SLACK || box.x + box.width > frame.width + SLACK ||
        box.y < -SLACK || box.y + box.height > frame.height + SLACK;
      if (out) found.push(of + ': “' + words + '” leaves the drawing');
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

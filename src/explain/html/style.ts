/**
 * The look of every page the program writes: system fonts, quiet colors, contrast at WCAG AA in light and dark,
 * one column on a phone and two on a wide screen, and paper. Colors of the curves are told apart by those who
 * see colors differently, and curves differ by dashes too.
 */
const LIGHT = `
  --bg: #f5f5f0; --card: #ffffff; --ink: #1c2326; --soft: #4f5a60; --rule: #d6d9d2;
  --accent: #0a5a7c; --accent-soft: #e6f0f4; --track: #dfe3de;
  --good: #1b6341; --good-bg: #d5ecdf; --mid: #6d4a00; --mid-bg: #f8e8bf; --poor: #8f2b16; --poor-bg: #f7d6cc;
  --caution-bg: #fff7e3; --caution-edge: #a86f00;
  --c0: #0072b2; --c1: #a04600; --c2: #007f5f; --c3: #8a3d6b; --grid: #dcdfda; --limit: #8f2b16;`;
const DARK = `
  --bg: #12171a; --card: #1a2125; --ink: #e6eae8; --soft: #adb7bb; --rule: #3a454b;
  --accent: #7cc6ea; --accent-soft: #1c313c; --track: #364147;
  --good: #9adcb8; --good-bg: #1f3d2d; --mid: #f2d48c; --mid-bg: #413613; --poor: #f7b5a5; --poor-bg: #4a231a;
  --caution-bg: #2e2712; --caution-edge: #d9a441;
  --c0: #6cb8ec; --c1: #f0955a; --c2: #4cc9a0; --c3: #e39bc8; --grid: #323c42; --limit: #f7a08c;`;

const TEXT = `
* { box-sizing: border-box; }
html { -webkit-text-size-adjust: 100%; text-size-adjust: 100%; }
body { margin: 0; background: var(--bg); color: var(--ink); overflow-wrap: break-word;
  font: 1rem/1.55 system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", sans-serif; }
h1, h2, h3, h4 { line-height: 1.25; text-wrap: balance; margin: 0 0 .5rem; }
h1 { font-size: clamp(1.4rem, 1.05rem + 1.7vw, 2.1rem); letter-spacing: -.01em; }
h2 { font-size: 1.3rem; margin-top: 0; }
h3 { font-size: 1.1rem; }
h4 { font-size: .95rem; margin: 1.1rem 0 .3rem; color: var(--accent); }
p, ul, ol, dl, table, pre, blockquote { margin: 0 0 .75rem; }
p, li, dd { max-width: 70ch; }
ul, ol { padding-left: 1.35rem; }
li { margin-bottom: .35rem; }
li::marker { color: var(--soft); }
a { color: var(--accent); text-underline-offset: .15em; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; border-radius: 2px; }
dt { font-weight: 600; }
dd { margin: 0 0 .6rem; }
pre { white-space: pre-wrap; background: var(--bg); border: 1px solid var(--rule); border-radius: 6px; padding: .6rem .75rem; }
code, pre { font-family: ui-monospace, "Cascadia Mono", Menlo, Consolas, "Liberation Mono", monospace; font-size: .92em; }
h1, blockquote, .top, .prose th, .prose td { overflow-wrap: anywhere; }
blockquote { border-left: 4px solid var(--rule); padding: .1rem 0 .1rem .9rem; font-style: italic; }
blockquote p:last-child { margin-bottom: 0; }
table { border-collapse: collapse; width: 100%; font-size: .92rem; font-variant-numeric: tabular-nums; }
caption { text-align: left; color: var(--soft); font-size: .88rem; padding-bottom: .35rem; }
th, td { text-align: left; vertical-align: top; padding: .35rem .75rem .35rem 0; border-bottom: 1px solid var(--rule); }
thead th { color: var(--soft); font-weight: 600; }
tbody th { font-weight: 600; }
summary { cursor: pointer; color: var(--accent); padding: .2rem 0; }
.skip { position: absolute; left: -999rem; top: 0; background: var(--card); color: var(--accent); padding: .6rem 1rem; z-index: 2; }
.skip:focus { left: .5rem; top: .5rem; }
.soft, .note { color: var(--soft); font-size: .9rem; }
.scroll { overflow-x: auto; }`;

const LAYOUT = `
.top { max-width: 74rem; margin: 0 auto; padding: .9rem 1rem .2rem; color: var(--soft); font-size: .9rem; }
.top p { margin: 0; max-width: none; }
.top strong { color: var(--ink); }
main { max-width: 74rem; margin: 0 auto; padding: .6rem 1rem 2rem; display: grid; grid-template-columns: minmax(0, 1fr); gap: 1rem; }
main > section, .prose { background: var(--card); border: 1px solid var(--rule); border-radius: 10px; padding: 1.1rem 1.15rem; min-width: 0; }
@media (max-width: 30rem) { main { padding-inline: .5rem; } main > section, .prose { padding-inline: .8rem; } }
.prose { max-width: 52rem; margin-inline: auto; width: 100%; }
.prose h2 { margin-top: 1.6rem; }
.prose h3 { margin-top: 1.2rem; }
footer { max-width: 74rem; margin: 0 auto; padding: 0 1rem 2rem; color: var(--soft); font-size: .88rem; }
.toc { font-size: .92rem; }
.toc ul { list-style: none; margin: 0; padding: 0; display: flex; flex-wrap: wrap; gap: .1rem .9rem; }
.toc li { margin: 0; }
.toc a { display: inline-block; padding: .25rem 0; }
@media (min-width: 64rem) {
  main { grid-template-columns: 13rem minmax(0, 1fr); gap: 0 2rem; padding-top: 1rem; }
  main > section { grid-column: 2; padding: 1.5rem 1.75rem; margin-bottom: 1.25rem; }
  .toc { grid-column: 1; grid-row: 1 / span 40; position: sticky; top: 1rem; align-self: start; }
  .toc ul { display: block; }
}`;

const REPORT = `
.verdict { border-top: 5px solid var(--accent); }
.meter { display: block; width: 100%; height: .6rem; border-radius: .3rem; }
.track { fill: var(--track); } .fill { fill: var(--accent); }
.callout { background: var(--accent-soft); border-radius: 8px; padding: .8rem 1rem; margin: .9rem 0; }
.callout p:last-child { margin-bottom: 0; }
.callout .eyebrow + p { font-size: 1.08rem; margin-bottom: .25rem; }
.eyebrow { color: var(--soft); font-size: .82rem; font-weight: 600; letter-spacing: .04em; text-transform: uppercase; margin-bottom: .15rem; }
.caution { background: var(--caution-bg); border-left: 4px solid var(--caution-edge); border-radius: 4px; padding: .45rem .75rem; margin: .5rem 0; max-width: 70ch; }
.rank { list-style: none; padding: 0; }
.rank li { max-width: 48rem; margin-bottom: .7rem; display: grid; grid-template-columns: minmax(0, 1fr); gap: .1rem 1rem; align-items: baseline; }
.rank .meter { grid-column: 1 / -1; height: .5rem; }
.rank .how { color: var(--soft); font-size: .92rem; }
@media (min-width: 40rem) { .rank li { grid-template-columns: minmax(0, 1fr) auto; } }
.plan { list-style: none; padding: 0; counter-reset: step; }
.plan > li { max-width: none; border-top: 1px solid var(--rule); padding: .9rem 0 .5rem; margin: 0; }
.plan > li:first-child { border-top: 0; padding-top: .2rem; }
.plan .head { display: grid; grid-template-columns: auto 1fr; gap: .15rem .7rem; align-items: start; }
.plan input { width: 1.3rem; height: 1.3rem; margin: .1rem 0 0; accent-color: var(--accent); }
.plan label { font-weight: 600; cursor: pointer; max-width: 66ch; }
.plan .body { padding-left: 2rem; margin-top: .4rem; }
.plan input:checked + label { text-decoration: line-through; color: var(--soft); }
.plan li:has(input:checked) .body { display: none; }
figure { margin: 1rem 0; min-width: 0; }
figcaption { margin-bottom: .5rem; max-width: 70ch; }
figcaption strong { display: block; }
.c-plot { display: block; width: 100%; max-width: 36rem; height: auto; }
.range { margin: .6rem 0 .9rem; max-width: 30rem; }
.range p { margin-bottom: .2rem; font-size: .92rem; }`;

const PLOTS = `
.c-plot text { font: 13px system-ui, -apple-system, "Segoe UI", Roboto, "Noto Sans", "Liberation Sans", sans-serif; fill: var(--soft); }
.c-plot .c-strong, .c-plot .c-value, .c-plot .c-word { fill: var(--ink); }
.c-plot .c-strong, .c-plot .c-name { font-weight: 600; }
.c-plot .c-name, .c-plot .c-limit-text, .c-plot .c-strong, .c-plot .c-value { paint-order: stroke; stroke: var(--card); stroke-width: 3px; stroke-linejoin: round; }
.c-grid { stroke: var(--grid); } .c-minor { stroke-opacity: .55; }
.c-zero { stroke: var(--soft); stroke-width: 1.2; }
.c-limit { stroke: var(--limit); } .c-plot .c-limit-text { fill: var(--limit); }
.c-line { fill: none; stroke-width: 2.2; stroke-linejoin: round; }
.c-line.c-0 { stroke: var(--c0); } .c-line.c-1 { stroke: var(--c1); } .c-line.c-2 { stroke: var(--c2); } .c-line.c-3 { stroke: var(--c3); }
.c-mark.c-0 { fill: var(--c0); } .c-mark.c-1 { fill: var(--c1); } .c-mark.c-2 { fill: var(--c2); } .c-mark.c-3 { fill: var(--c3); }
.c-plot .c-name.c-0 { fill: var(--c0); } .c-plot .c-name.c-1 { fill: var(--c1); } .c-plot .c-name.c-2 { fill: var(--c2); } .c-plot .c-name.c-3 { fill: var(--c3); }
.c-bar { fill: var(--card); stroke: var(--c0); stroke-width: 1.5; } .c-bar-center { fill: var(--c0); }
.c-room { fill: none; } .c-sight { stroke: var(--soft); } .c-axis { stroke: var(--c0); stroke-width: 1.3; } .c-bounce { stroke: var(--c1); stroke-width: 1.6; } .c-floor { stroke: var(--ink); stroke-width: 1.5; }
.c-picture { stroke: var(--ink); stroke-width: 5; } .c-obstacle { stroke: var(--c1); stroke-width: 6; }
.c-speaker { fill: var(--card); stroke: var(--ink); stroke-width: 1.6; } .c-speaker-center { fill: var(--c0); stroke: var(--c0); }
.c-seat { fill: var(--card); stroke: var(--ink); stroke-width: 1.6; } .c-seat-main { fill: var(--ink); }
.c-plate { fill: var(--card); }
.c-scale { fill: none; stroke: var(--ink); stroke-width: 1.3; }
.c-good { fill: var(--good-bg); stroke: var(--good); } .c-borderline { fill: var(--mid-bg); stroke: var(--mid); } .c-poor { fill: var(--poor-bg); stroke: var(--poor); }
.c-marker { fill: var(--ink); stroke: var(--ink); stroke-width: 2; }`;

const PAPER = `
@page { size: A4; margin: 13mm 14mm; }
@media print {
  html { font-size: 9.5pt; }
  body { background: none; }
  .toc, .skip { display: none; }
  main { display: block; padding: 0; }
  main > section, .prose { border: 0; padding: 0; margin-bottom: .7rem; border-radius: 0; }
  .verdict { border-top: 3pt solid var(--accent); padding-top: .6rem; }
  h1, h2, h3, h4, summary { break-after: avoid; }
  .c-plot, .callout, .caution, .range, .rank li, .plan .head, figure, tr { break-inside: avoid; }
  .plan .head, caption { break-after: avoid; }
  li, p { orphans: 3; widows: 3; }
  p, ul, ol, dl { margin-bottom: .4rem; }
  .plan > li { padding: .5rem 0 .2rem; }
  .rank li { margin-bottom: .3rem; }
  figure table { font-size: .85rem; width: auto; min-width: 75%; }
  p, li, dd, figcaption, .caution { max-width: 82ch; }
  figure { display: grid; grid-template-columns: minmax(0, 100mm) minmax(0, 1fr); gap: 0 5mm; }
  figcaption { grid-column: 1 / -1; }
  figure svg { max-height: 85mm; }
  figure th, figure td { padding: .05rem .6rem .05rem 0; }
  .callout, .caution, .c-plot, .meter { print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  details:not([open]) { display: none; }
  /* A heading over nothing but what is folded has nothing to say on paper. */
  main > section:not(:has(> :not(h2, details:not([open])))) { display: none; }
  summary { color: var(--soft); list-style: none; }
  .scroll { overflow: visible; }
  a { color: inherit; }
}`;

export const STYLE = [
  `:root {${LIGHT}\n  color-scheme: light dark;\n}`,
  `@media screen and (prefers-color-scheme: dark) { :root {${DARK}\n} }`,
  TEXT,
  LAYOUT,
  REPORT,
  PLOTS,
  PAPER,
  '',
].join('\n');

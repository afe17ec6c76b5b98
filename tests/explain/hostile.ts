/**
 * Text that tries to become more than text: payloads of the kinds collected in public lists of injection
 * strings (HTML, event handlers, javascript: links, Markdown links and images, BBCode, terminal escapes, bidi).
 */
export const HOSTILE: readonly string[] = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  '<svg/onload=alert(1)>',
  '<a href="javascript:alert(1)">x</a>',
  '<iframe src="//evil.example"></iframe>',
  '</style><script>alert(1)</script>',
  '<!-- <b>x --><details open ontoggle=alert(1)>',
  '&lt;script&gt; &#60;b&#62;',
  '[click](javascript:alert(1))',
  '![x](https://evil.example/x.png)',
  '[x]: https://evil.example "t"',
  '<https://evil.example>',
  'see https://evil.example/a?b=1 and www.evil.example and mail a@evil.example',
  '`code` **bold** _it_ ~~gone~~ # heading',
  '# not a heading',
  '- not a list',
  '1. not a list',
  '> not a quote',
  '| a | b |',
  '---',
  '```\nfence\n```',
  '[b]bold[/b][url=javascript:alert(1)]x[/url]',
  '[img]https://evil.example/x.png[/img]',
  '[/quote][/list][/code][size=200]big[/size]',
  '[ b]x[ /b] [*] [list=1]',
  '8) :) ;) :D :p =) B) :-( :smile:',
  '\u001b[31mred\u001b[0m \u001b]0;title\u0007 \u009b2J',
  '\u202eabc\u202d \u2066x\u2069 \u200e\u200f \ufeff',
  'line one\r\nline two\u2028three',
  `${'long '.repeat(60)}title`,
  // biome-ignore lint/suspicious/noTemplateCurlyInString: a payload
  '$\\alpha$ \\(x\\) {{7*7}} ${7*7} <%= 7*7 %> {layoutDipDb} {limit}',
];

import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, test } from 'vitest';
import { Markdown } from './markdown.js';

const html = (text: string) => render(<Markdown text={text} />);

describe('a hover is shown as elements', () => {
  test.each([
    ['**Left**, desk', '<p><strong>Left</strong>, desk</p>'],
    [
      '- ✓ fits *`reach`, measured 3 in.*',
      '<ul><li><p>✓ fits <em><code>reach</code>, measured 3 in.</em></p></li></ul>',
    ],
    [
      '| What | |\n| :-- | --: |\n| width | 60 in |',
      '<table><thead><tr><th scope="col">What</th><td></td></tr></thead>' +
        '<tbody><tr><td>width</td><td class="right">60 in</td></tr></tbody></table>',
    ],
  ])('%s', (text, expected) => {
    expect(html(text)).toBe(expected);
  });
});

const tags = 'p|strong|em|code|pre|ul|li|table|thead|tbody|tr|th|td';
const allowed = new RegExp(
  `<(?:(?:${tags})|th scope="col"(?: class="(?:right|centre)")?|td class="(?:right|centre)"|/(?:${tags}))>`,
  'g',
);

/** Nothing is left of a tag once those that a hover may have are taken away. */
const leftOver = (text: string) => html(text).replace(allowed, '').match(/<[^]*/)?.[0];

describe('what a hover holds never becomes markup of another kind', () => {
  test.each([
    '<img src=x onerror=alert(1)>',
    '<script>alert(1)</script>',
    '[here](javascript:alert(1))',
    '![picture](https://example.org/a.png)',
    '<https://example.org>',
    '# heading\n\n> quote\n\n---\n\n1. one',
    '| a | <b onclick=x> |\n| - | - |\n| <i> | `<u>` |',
  ])('%s', (text) => {
    expect(leftOver(text)).toBeUndefined();
  });

  test('whatever it is', () => {
    const piece = fc.constantFrom(
      '<b>',
      '</p>',
      '<!--',
      '"',
      "'",
      '`',
      '**',
      '|',
      '\n',
      '- ',
      '[x](y)',
      '&lt;',
      'a',
      ' ',
      '<a href="x">',
    );
    fc.assert(fc.property(fc.array(fc.oneof(piece, fc.string())), (parts) => leftOver(parts.join('')) === undefined));
  });
});

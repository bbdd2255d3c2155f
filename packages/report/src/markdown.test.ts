import fc from 'fast-check';
import { micromark } from 'micromark';
import { gfm, gfmHtml } from 'micromark-extension-gfm';
import { describe, expect, it } from 'vitest';
import { isReport, renderMarkdown, renderReport, type ReportOptions } from './index.js';
import { code, inline, list, strong, table } from './markdown-text.js';
import { adviceWithText, withText } from './testing/hostile.js';
import { larkfieldAdvice } from './testing/larkfield-advice.js';
import { larkfield, larkfieldFindings } from './testing/larkfield.js';

const options: ReportOptions = {
  generatedBy: 'Boothwright 0.1.0',
  date: '4 May 2026',
  names: 'full',
  advice: larkfieldAdvice,
};

/** As a reader sees it: HTML in the Markdown is kept, so that it would show. */
function rendered(markdown: string): string {
  return micromark(markdown, { extensions: [gfm()], htmlExtensions: [gfmHtml()], allowDangerousHtml: true });
}

/** The structure alone. */
function tags(markdown: string): string {
  return rendered(markdown)
    .match(/<[a-z!/][^>]*>/gi)!
    .join('\n');
}

/** The words alone. */
function words(markdown: string): string {
  return rendered(markdown)
    .replace(/<\/?(strong|code)>/g, '')
    .replace(/<[^>]*>/g, ' ')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&amp;', '&')
    .replace(/\s+/g, ' ')
    .trim();
}

describe('the fit report as Markdown', () => {
  const markdown = renderMarkdown(larkfield, options);
  const text = words(markdown);

  it('says every finding once that does not pass, with its terms, source, reason and what to add', () => {
    for (const { verdict, message, terms, source, accepted, missing } of larkfieldFindings) {
      if (verdict === 'pass') continue;
      expect(text.split(message), message).toHaveLength(2);
      if (terms) expect(text).toContain(terms);
      expect(text).toContain(`Source: ${source}`);
      if (accepted) expect(text).toContain(`Accepted because: ${accepted}`);
      if (missing) expect(text).toContain(`Add ${missing.example} to ${missing.of}`);
    }
    expect(text).toMatch(/Feet supported \d of \d [^:]* to spare, suits 93%: workstation Sound, Noor, sitting/);
    expect(text).toContain('‘boothwright check FILE --format json’ writes every finding');
  });

  it('says what the advice says', () => {
    const changes = text.slice(text.lastIndexOf('What to change'));
    for (const { title } of larkfieldAdvice.stations[0]!.plans) expect(changes.split(title)).toHaveLength(2);
    expect(text).toContain(
      'Leaves out: Noor, sitting: ‘Feet supported’ misses by 2 in and ‘Thigh room’ misses by 1 in.',
    );
    expect(text).toContain('stool Tall seat adjustable over at least 27 1/2 to 30 3/4 in; foot ring');
    expect(text).toContain('Noor: popliteal height');
    expect(words(renderMarkdown(larkfield, { ...options, advice: undefined }))).not.toMatch(/Plans for|in a shop/);
  });

  it('has the headings of the HTML report but for its drawings, in the order of a reader’s questions', () => {
    const headingsOf = (html: string) =>
      [...html.matchAll(/<h(\d)>([^<]*)/g)].map(([, level, title]) => `${level} ${title}`);
    const headings = headingsOf(rendered(markdown));
    expect(headings).toEqual(headingsOf(renderReport(larkfield, options)));
    expect(headings.filter((title) => !title.startsWith('3'))).toEqual([
      '1 Larkfield Hall: fit report',
      '2 Does it fit?',
      '2 What to change',
      '2 Workstations',
      '2 Heights and shares served',
      '2 Walkways',
      '2 Skirt and furniture',
      '2 What passes',
      '2 What to ask for in a shop',
      '2 What to measure next',
      '2 Accepted on purpose',
      '2 Assumptions and defaults',
      '2 Sources',
      '2 Cautions',
    ]);
  });

  it('answers first, and shows who passes what', () => {
    expect(text.slice(text.indexOf('Does it fit?'))).toMatch(/^Does it fit\? Not yet\. Of 10 results, 2 fail/);
    expect(markdown).toContain('| Everything at once | Fails, 0% | Marginal, 30% | Marginal, 44% | Passes, 97% |');
    expect(text).toContain('CCOHS, Working in a sitting position (weak)');
    expect(text).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });

  it('shows letters in place of names when asked', () => {
    const lettered = renderMarkdown(larkfield, { ...options, names: 'letters' });
    expect(lettered).not.toMatch(/Noor|Tobias|Priya/);
    expect(lettered).toContain('Person A');
  });

  it('is known again as ours by its first words', () => {
    expect(isReport(markdown)).toBe(true);
    expect(isReport(`# Minutes\n\n${markdown}`)).toBe(false);
    expect(isReport('{\n  "schema": "boothwright-assessment-1"')).toBe(true);
    expect(isReport('[{ "schema": "boothwright-assessment-1" }]')).toBe(false);
  });
});

const hostile = fc.oneof(
  fc.constantFrom(
    '<script>alert(1)</script>',
    '![x](http://example.org/x.png)',
    '[x](javascript:alert(1))',
    '<http://example.org>',
    'http://example.org www.example.org mailto:a@example.org a@example.org',
    '# heading',
    '- item',
    '1. item',
    '2) item',
    '+ item',
    '===',
    '---',
    '> quote',
    '```\nfence',
    '~~~\nfence',
    '~~gone~~',
    '    code',
    '\ttab',
    'a | b\n--- | ---',
    '*a* _b_ **c** __d__',
    '`code',
    '``',
    '\\',
    '\\|',
    'a\\\nb',
    'a  \nb',
    'a\n\nb',
    '&lt;b&gt; &amp; &#60;',
    '[^1]: note',
    '[x]: http://example.org',
    '- [ ] task',
    '\u2028\u00a0\u0000',
  ),
  fc.string({ unit: fc.constantFrom(...'<>*_`~[]()#+-=.!|&\\:@/ 1a\n'.split('')), maxLength: 24 }),
);

describe('text from a booth file', () => {
  it('never becomes structure', () => {
    const of = (text: string) => tags(renderMarkdown(withText(text), { ...options, advice: adviceWithText(text) }));
    const expected = of('plain');
    fc.assert(
      fc.property(hostile, (text) => {
        expect(of(`${text}x`)).toBe(expected);
      }),
      { numRuns: 150 },
    );
  }, 60_000);

  it('is shown as it is, but for white space', () => {
    fc.assert(
      fc.property(hostile, (text) => {
        const shown = `${text}x`.replace(/[\s\u0000]+/g, ' ').trim();
        expect(words(inline(`${text}x`))).toBe(shown);
        expect(words(strong(`${text}x`))).toBe(shown);
        expect(words(list([[inline(`${text}x`), 'below']])[0]!)).toBe(`${shown} below`);
        expect(words(table(['head'], [[inline(`${text}x`)]])[0]!)).toBe(`head ${shown}`);
        expect(rendered(code(`${text}x`))).toMatch(/^<p><code>.*<\/code><\/p>$/);
        expect(words(code(`${text}x`))).toBe(shown);
      }),
      { numRuns: 500 },
    );
  });
});

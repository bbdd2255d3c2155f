import { describe, expect, it } from 'vitest';
import fc from 'fast-check';
import { isReport, renderReport, type ReportOptions } from './index.js';
import { adviceWithText, withText } from './testing/hostile.js';
import { larkfieldAdvice } from './testing/larkfield-advice.js';
import { finding, larkfield, larkfieldFindings } from './testing/larkfield.js';

const options: ReportOptions = { generatedBy: 'Boothwright 0.1.0', date: '4 May 2026', names: 'full' };

describe('the fit report', () => {
  const html = renderReport(larkfield, options);

  it('writes out every finding once, and only once', () => {
    for (const { message } of larkfieldFindings) {
      expect(html.split(escaped(message)), message).toHaveLength(2);
    }
  });

  it('shows terms, sources, remedies, reasons and what to add', () => {
    for (const finding of larkfieldFindings) {
      expect(html).toContain(escaped(finding.source));
      if (finding.terms) expect(html).toContain(escaped(finding.terms));
      if (finding.accepted) expect(html).toContain(`<strong>Accepted because:</strong> ${escaped(finding.accepted)}`);
      if (finding.missing)
        expect(html).toContain(`<code>${escaped(finding.missing.example)}</code> to ${finding.missing.of}`);
      if (finding.accepted === undefined) {
        for (const { title } of finding.remedies) expect(html).toContain(escaped(title));
      }
    }
  });

  it('answers first', () => {
    const answer = html.slice(html.indexOf('Does it fit?'), html.indexOf('What to change'));
    expect(answer).toContain('Not yet.');
    expect(answer).toContain('Of 10 results, 2 fail, 2 are marginal, 2 lack a figure and 4 pass.');
    expect(answer).toContain('it does not suit Noor sitting at Sound');
    expect(answer).toContain('1 finding is accepted on purpose');
  });

  it('says yes only when nothing is open', () => {
    const passing = larkfieldFindings.filter(({ verdict }) => verdict === 'pass');
    const answer = (findings: typeof passing) => renderReport({ ...larkfield, findings, workstations: [] }, options);
    expect(answer(passing)).toContain('Yes, on paper.');
    expect(answer([])).toContain('Nothing was checked.');
    expect(answer(larkfieldFindings.filter(({ verdict }) => verdict !== 'fail'))).toContain('Nearly.');
    expect(answer(larkfieldFindings.filter(({ verdict }) => verdict === 'unknown'))).toContain(
      'Yes, as far as can be said.',
    );
  });

  it('names each change once, and all that it is for', () => {
    const remedies = [{ title: 'Raise it by 4 in', changes: [], safe: true }];
    const low = (name: string, operator: string) =>
      finding('screen-height', { kind: 'monitor', name }, { operator, posture: 'sit', verdict: 'marginal', remedies });
    const findings = [low('Cues', 'Noor'), low('Cues', 'Tobias'), low('Lyrics', 'Priya')];
    const changes = renderReport({ ...larkfield, findings }, options)
      .split('<h2>What to change')[1]!
      .split('<h2>')[0]!;
    expect(changes.split('Raise it by 4 in')).toHaveLength(3);
    expect(changes).toContain('Screen height (monitor Cues: Noor, sitting; Tobias, sitting)<');
    expect(changes).toContain('Screen height (monitor Lyrics: Priya, sitting)<');
  });

  it('marks weak sources', () => {
    expect(html).toContain('CCOHS, Working in a sitting position (weak)');
    expect(html).toContain('Grandjean 1988, from memory (from memory)');
  });

  it('lists the defaults that nobody said', () => {
    const section = html.slice(html.indexOf('Assumptions and defaults'), html.indexOf('<h2>Sources'));
    expect(section).toContain('<strong>The booth:</strong> shoe 1 in; slump 1 5/8 in.');
    expect(section).toContain('<strong>Words:</strong> postures sit; task keyboard; working 0 in; lean 0 in.');
    expect(section).toContain('<strong>Left, Right:</strong> turn 0°.');
  });

  it('tells measured from predicted figures', () => {
    expect(html).toContain('<strong>10 1/2 in</strong> <span class="soft">(measured)');
    expect(html).toContain('8 7/8 in <span class="soft">(7 3/8 to 10 1/2 in)');
  });

  it('needs nothing from elsewhere, runs nothing, and promises nothing', () => {
    expect(html).not.toMatch(/<script|<link|<img|<iframe|\son\w+=|https?:|url\(|@import/i);
    expect(html).not.toMatch(/complian/i);
    expect(html).toContain('Your local building or fire official');
    expect(html).not.toMatch(/NaN|undefined|Infinity|\[object/);
  });

  it('is known again as ours by its first kilobyte', () => {
    expect(isReport(html)).toBe(true);
    expect(isReport('<html><title>Boothwright</title>')).toBe(false);
    expect(isReport(' '.repeat(1024) + html)).toBe(false);
  });

  it('has headings in order and names its tables', () => {
    const levels = [...html.matchAll(/<h(\d)/g)].map(([, level]) => Number(level));
    expect(levels[0]).toBe(1);
    levels.slice(1).forEach((level, index) => expect(level - levels[index]!).toBeLessThanOrEqual(1));
    expect(html.match(/<table/g)!.length).toBe(html.match(/<caption[^>]*>[^<]/g)!.length);
    expect(html).toMatch(/<html lang="en">/);
    expect(html).not.toMatch(/<th(?![^>]*scope=)[^e][^>]*>/);
  });
});

describe('advice in the report', () => {
  const html = renderReport(larkfield, { ...options, advice: larkfieldAdvice });
  const section = html.slice(html.indexOf('<h2>What to change'), html.indexOf('<h2>Accepted'));

  it('stands in what to change, and only if it was asked for', () => {
    const parts = (text: string) => [...text.matchAll(/<h3>([^<]*)/g)].map(([, heading]) => heading);
    expect(parts(section).slice(0, 3)).toEqual(['Plans for Sound', 'Plans for Words', 'Single changes']);
    expect(renderReport(larkfield, options)).not.toMatch(
      /Plans for|Heights and shares|in a shop|Body sizes that settle/,
    );
  });

  it('says whom each plan suits, most likely suits, and leaves out by how much', () => {
    for (const { title } of larkfieldAdvice.stations[0]!.plans) expect(section.split(escaped(title))).toHaveLength(2);
    expect(section).toContain('Suits: Tobias.');
    expect(section).toContain('Most likely suits: Noor; measure to be sure.');
    expect(section).toContain(
      'Leaves out: Noor, sitting: ‘Feet supported’ misses by 2 in and ‘Thigh room’ misses by 1 in.',
    );
    expect(section).toContain('47% of Volunteers, sitting (53% served, 90% wanted): first ‘Feet supported’.');
    expect(section).toMatch(/Plans for Words<\/h3><p>No other heights were found/);
  });

  it('says which heights suit whom, and why none does', () => {
    expect(section).toContain('<strong>Desk Right</strong> <span class="soft">now 40 in</span>');
    expect(section).toContain('Noor, sitting: about 36 to 38 in');
    expect(section).toContain('Tobias, sitting: none: ‘Feet supported’ fails at any height');
    expect(section).toContain('Everyone named: no one height');
    expect(section).toContain('Volunteers, sitting: 15 to 16 in');
  });

  it('draws the share served, and says it in words and figures too', () => {
    expect(section.match(/<svg[^>]*role="img"/g)).toHaveLength(1);
    expect(section).toContain('Noor, sitting: most at about 37 in, 95%. Tobias, standing: most at about 44');
    const rows = [...section.matchAll(/<th scope="row">(\d+) in<\/th><td>(\d+)%<\/td><td>(\d+)%<\/td>/g)];
    const shares = rows.map(([, height, noor, tobias]) => [Number(height), Number(noor), Number(tobias)]);
    expect(shares.length).toBeGreaterThan(4);
    for (const [height, noor, tobias] of shares) {
      expect(Math.abs(noor! - 100 * Math.max(0, 0.95 * (1 - Math.abs(height! - 37) / 4)))).toBeLessThan(5);
      expect(Math.abs(tobias! - 100 * Math.max(0, 0.8 * (1 - Math.abs(height! - 44) / 4)))).toBeLessThan(5);
    }
  });

  it('says what to measure and what to ask for', () => {
    expect(section).toMatch(/<strong>Noor: popliteal height<\/strong>.*It settles 2 results\./);
    expect(section).toMatch(
      /stool Tall<\/strong><\/th><td>seat adjustable over at least 27 1\/2 to 30 3\/4 in; foot ring 15 to 16 in below the seat</,
    );
  });

  it('shows letters there too', () => {
    const lettered = renderReport(larkfield, { ...options, names: 'letters', advice: larkfieldAdvice });
    expect(lettered).not.toMatch(/Noor|Tobias|Priya/);
    expect(lettered).toContain('serves 1 of 3, most likely Person A too, not Volunteers');
    expect(lettered).toContain('Person A: popliteal height');
    expect(lettered).toContain('Shoes off, sitting: from the floor');
  });
});

describe('names by letters', () => {
  const html = renderReport(larkfield, { ...options, names: 'letters' });

  it('shows no operator by name, and the crowd by its own', () => {
    expect(html).not.toMatch(/Noor|Tobias|Priya/);
    expect(html).toContain('Lower desk Right to 37 1/4 in: suits Person A');
    expect(html).toContain('Volunteers');
  });

  it('takes a name that starts with another for itself, and leaves longer words alone', () => {
    const [first, second] = larkfield.booth.operators;
    const booth = {
      ...larkfield.booth,
      operators: [
        { ...first!, name: 'Al' },
        { ...second!, name: 'Al-Two' },
      ],
    };
    const findings = [{ ...larkfieldFindings[0]!, message: "Al-Two's ring is Also good for Al." }];
    const shown = renderReport({ ...larkfield, booth, findings }, { ...options, names: 'letters' });
    expect(shown).toContain("Person B's ring is Also good for Person A.");
  });
});

describe('text from a booth file', () => {
  it('never becomes markup', () => {
    const hostile = fc.oneof(
      fc.constantFrom(
        '</script><img src=x onerror=alert(1)>',
        '</style><script>',
        '"><svg onload=x>',
        '<!--',
        '&lt;b&gt;',
      ),
      fc.string({ unit: fc.constantFrom('<', '>', '"', "'", '&', '/', '=', 'a', ' ') }),
    );
    const tags = (text: string) => {
      const html = renderReport(withText(text), { ...options, advice: adviceWithText(text) });
      return html.match(/<[a-z!/][^>]*>/gi)!.join('\n');
    };
    const expected = tags('plain');
    fc.assert(
      fc.property(hostile, (text) => {
        expect(tags(`x${text}x`)).toBe(expected);
      }),
    );
  });
});

function escaped(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('"', '&quot;');
}

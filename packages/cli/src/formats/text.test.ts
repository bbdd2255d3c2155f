import { stripVTControlCharacters } from 'node:util';
import { larkfield } from '@boothwright/report/testing';
import { describe, expect, it } from 'vitest';
import { formatProblems, formatText } from './text.js';

const reading = { file: 'larkfield-hall.booth', problems: [], understood: true, assessment: larkfield };
const options = { width: 80, colours: false, passes: false };

describe('findings as text', () => {
  const text = formatText([reading], options);

  it('shows the worst first, and counts passes', () => {
    const verdicts = [...text.matchAll(/ (FAIL|MARGINAL|CANNOT SAY|PASS)(?=  )/g)].map(([, verdict]) => verdict);
    expect(verdicts).toEqual(['FAIL', 'FAIL', 'MARGINAL', 'MARGINAL', 'CANNOT SAY', 'CANNOT SAY']);
    expect(text).toContain('2 failed, 2 marginal, 2 cannot be said, 4 passed, 1 accepted.');
  });

  it('says where, what, of whom, why, what to do and by which source', () => {
    expect(text).toMatch(
      /larkfield-hall\.booth:19:39 {2}FAIL {2}seated-elbow(, |\n {2})workstation Sound, Noor sitting\n/,
    );
    expect(text).toContain(`
  The desk is 2 3/4 in too high for Noor, sitting. With her elbows below the
  work her shoulders lift and tire. Lower the desk to 37 1/4 in.
  40 in desk − 28 in seat − 7 1/4 in elbow = 4 3/4 in
  → Lower desk Right to 37 1/4 in: suits Noor
  → No single height serves both; a desk adjustable from 37 to 42 in would
  Source: CCOHS, Working in a sitting position (weak)
`);
  });

  it('says what to add where something is missing', () => {
    expect(text).toContain('→ Add to monitor Cues at workstation Sound: bottom 5in above desk');
  });

  it('does not say twice what the message says already', () => {
    const [, finding] = larkfield.findings;
    const message = `Too high. ${finding!.remedies[0]!.title}.`;
    const shown = formatText(
      [{ ...reading, assessment: { ...larkfield, findings: [{ ...finding!, message }] } }],
      options,
    );
    expect(shown.match(/Lower desk Right/g)).toHaveLength(1);
    expect(shown).toContain('→ No single height serves both');
  });

  it('repeats the reason of what is accepted', () => {
    expect(text).toMatch(/FAIL, accepted {2}skirt-drop(, |\n  )skirt Front\n {2}Because: hemmed on site/);
  });

  it('writes passes out when asked', () => {
    const { length } = formatText([reading], { ...options, passes: true }).match(/ {2}PASS {2}/g)!;
    expect(length).toBe(4);
  });

  it('cautions once, at the end, and only if a finding does', () => {
    expect(text.match(/planning aid/g)).toHaveLength(1);
    expect(text.trimEnd()).toMatch(/decides\.$/);
    const harmless = { ...larkfield, findings: larkfield.findings.filter(({ caution }) => !caution) };
    expect(formatText([{ ...reading, assessment: harmless }], options)).not.toContain('planning aid');
  });

  it('stays within the width', () => {
    for (const width of [60, 80, 100]) {
      const lines = formatText([reading], { ...options, width }).split('\n');
      const prose = lines.filter((line) => !line.includes('.booth:'));
      expect(Math.max(...prose.map((line) => line.length))).toBeLessThanOrEqual(width);
      expect(Math.max(...prose.map((line) => line.length))).toBeGreaterThan(width - 15);
    }
  });

  it('colours without changing a letter', () => {
    const coloured = formatText([reading], { ...options, colours: true });
    expect(coloured).not.toBe(text);
    expect(stripVTControlCharacters(coloured)).toBe(text);
  });

  it('lets no name drive the terminal', () => {
    const message = 'before\u001b[2J\u001b]0;title\u0007\u009b31m\rafter';
    const findings = [
      { ...larkfield.findings[1]!, message, subject: { kind: 'desk' as const, name: '\u001b[31mred' } },
    ];
    const shown = formatText([{ ...reading, assessment: { ...larkfield, findings } }], options);
    expect(shown.replaceAll('\n', '')).not.toMatch(/[\u0000-\u001f\u007f-\u009f]/);
    expect(shown).toContain('after');
  });

  it('sums up all files in one line', () => {
    const both = formatText([reading, reading], options);
    expect(both.match(/ failed, /g)).toHaveLength(1);
    expect(both).toContain('4 failed, 4 marginal');
    expect(both.match(/^Larkfield Hall larkfield-hall\.booth$/gm)).toHaveLength(2);
  });
});

describe('problems as text', () => {
  it('points at the text, or names the file', () => {
    const origin = larkfield.findings[1]!.origin;
    const problems = [
      { severity: 'error', message: 'A bare number is no length.', origin },
      { severity: 'warning', message: 'The import is not used.' },
    ] as const;
    expect(formatProblems([{ file: 'hall.booth', understood: false, problems }])).toMatch(
      /^\S*larkfield-hall\.booth:19:39: error: A bare number is no length\.\nhall\.booth: warning: The import is not used\.\n$/,
    );
  });
});

import type { Finding, Subject, Verdict } from '@boothwright/fit';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { arrange, matrixFindings } from './arrange.js';
import { renderReport } from './index.js';
import { finding, larkfield } from './testing/larkfield.js';

const kinds: readonly Subject['kind'][] = [
  'booth',
  'operator',
  'desk',
  'seat',
  'monitor',
  'workstation',
  'control',
  'walkway',
  'rack',
  'skirt',
];
const names = ['Sound', 'Words', 'Left', 'Right', 'Tall', 'Cues', 'Lyrics', 'Faders', 'Behind', 'Noor', 'Nobody'];
const verdicts: readonly Verdict[] = ['pass', 'marginal', 'fail', 'unknown'];

const findings = fc
  .array(
    fc.record({
      subject: fc.record({ kind: fc.constantFrom(...kinds), name: fc.constantFrom(...names) }),
      operator: fc.option(fc.constantFrom('Noor', 'Tobias', 'Volunteers', 'Nobody'), { nil: undefined }),
      posture: fc.option(fc.constantFrom('sit' as const, 'stand' as const), { nil: undefined }),
      verdict: fc.constantFrom(...verdicts),
      accepted: fc.option(fc.constant('on purpose'), { nil: undefined }),
      check: fc.constantFrom('seated-elbow', 'feet-supported', 'walkway-width'),
    }),
    { maxLength: 12 },
  )
  .map((drafts) =>
    drafts.map(({ check, subject, ...rest }, index) =>
      finding(check, subject, { ...rest, message: `Message ${index}.` }),
    ),
  );

describe('the arrangement of findings', () => {
  it('writes every finding out once, wherever it belongs', () => {
    fc.assert(
      fc.property(findings, (all: readonly Finding[]) => {
        const html = renderReport({ ...larkfield, findings: all }, { generatedBy: 'Boothwright 0.1.0', names: 'full' });
        for (const { message } of all) expect(html.split(message), message).toHaveLength(2);
      }),
    );
  });

  it('gives a piece to the workstation where the person uses it', () => {
    const subject = { kind: 'seat', name: 'Tall' } as const;
    const [noor, priya, general] = ['Noor', 'Priya', undefined].map((operator) =>
      finding('feet-supported', subject, { operator }),
    );
    const { stations, others } = arrange({ ...larkfield, findings: [noor!, priya!, general!] });
    expect(stations.get('Sound')).toEqual([noor]);
    expect(stations.get('Words')).toEqual([priya]);
    expect(others).toEqual([general]);
  });

  it('gives a piece without a person to the only workstation that uses it', () => {
    const tilt = finding('screen-turn', { kind: 'monitor', name: 'Cues' });
    expect(arrange({ ...larkfield, findings: [tilt] }).stations.get('Sound')).toEqual([tilt]);
  });

  it('shows accepted and unknown findings in the matrix too', () => {
    const accepted = finding(
      'seated-elbow',
      { kind: 'workstation', name: 'Sound' },
      { verdict: 'fail', accepted: 'on trial' },
    );
    const unknown = finding('thigh-room', { kind: 'workstation', name: 'Sound' }, { verdict: 'unknown' });
    const assessment = { ...larkfield, findings: [accepted, unknown] };
    expect(matrixFindings(assessment, 'Sound')).toEqual([accepted, unknown]);
    expect(arrange(assessment)).toMatchObject({ accepted: [accepted], unsaid: [unknown] });
  });
});

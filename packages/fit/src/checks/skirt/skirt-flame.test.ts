import { describe, expect, it } from 'vitest';
import { aBooth, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aSkirt } from '../../testing/floor.js';
import type { Booth } from '../../booth.js';

const booth = (certificate?: string, parts: Partial<Booth> = {}) =>
  aBooth({
    skirts: [aSkirt('Front', ['Left'], certificate === undefined ? {} : { flameCertificate: given(certificate) })],
    ...parts,
  });
const judge = (...args: Parameters<typeof booth>) => findingOf(booth(...args), 'skirt-flame');

describe('skirt-flame: asks, and never passes', () => {
  it('asks whether somebody has confirmed the certificate', () => {
    expect(judge()).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'flame-certificate', of: 'skirt Front' },
    });
    expect(judge('  ')).toMatchObject({ verdict: 'unknown' });
  });

  it('repeats what the file notes, and asks to keep it on site', () => {
    const finding = judge('NFPA 701, number 4471, hall file');
    expect(finding).toMatchObject({ verdict: 'marginal' });
    expect(finding.message).toContain('“NFPA 701, number 4471, hall file”');
    expect(finding.message).toContain('Keep it on site');
    expect(finding.caution).toContain('fire official decides');
  });

  it.each([undefined, '', 'yes', 'passed', 'compliant with NFPA 701', 'confirmed by the fire marshal'])(
    'does not pass whatever is written: %s',
    (text) => {
      expect(judge(text).verdict).not.toBe('pass');
    },
  );

  it('a finding that is accepted keeps its verdict and repeats the reason', () => {
    const accepted = [{ check: 'skirt-flame', reason: 'the warden saw it on 3 May', origin: nowhere }];
    expect(judge('in the hall file', { accepted })).toMatchObject({
      verdict: 'marginal',
      accepted: 'the warden saw it on 3 May',
    });
  });

  it('asks nothing where there is no cloth', () => {
    expect(findingsOf(booth(undefined, { skirts: [] }), 'skirt-flame')).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { aBooth, given, nowhere } from '../../testing/booths.js';
import { findingOf, findingsOf } from '../../testing/findings.js';
import { aSkirt } from '../../testing/floor.js';
import type { Booth } from '../../booth.js';
import { told } from '../../testing/told.js';

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

it('skirt-flame tells where to note the certificate, and where it is noted', () => {
  expect(told(booth(), 'skirt-flame')).toMatchInlineSnapshot(`
    "unknown, skirt Front
    Cannot say whether somebody has confirmed the flame certificate of Front. Add \`flame-certificate\` to skirt Front, such as \`flame-certificate "NFPA 701, in the hall file"\`.
    at skirts.Front, by IFC 2009 807.1
    ask flame-certificate of skirt Front, as flame-certificate "NFPA 701, in the hall file", at skirts.Front"
  `);
  expect(told(booth('NFPA 701, in the hall file'), 'skirt-flame')).toMatchInlineSnapshot(`
    "marginal, skirt Front
    The file notes of the flame certificate of Front: “NFPA 701, in the hall file”. Has somebody confirmed it? Keep it on site to show the fire official.
    at skirts.Front.flameCertificate, by IFC 2009 807.1"
  `);
});

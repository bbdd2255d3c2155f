import { larkfield } from '@boothwright/report/testing';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import schema from '../../schema/assessment-1.schema.json' with { type: 'json' };
import { formatJson } from './json.js';

const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);

function only(reading: Parameters<typeof formatJson>[0][number]) {
  const object = JSON.parse(formatJson([reading])) as { findings: Record<string, unknown>[]; [field: string]: unknown };
  expect(validate(object), JSON.stringify(validate.errors)).toBe(true);
  return object;
}

describe('the JSON of an assessment', () => {
  const object = only({ file: 'larkfield.booth', problems: [], understood: true, assessment: larkfield });

  it('is one object for one file and an array for several', () => {
    expect(object).toMatchObject({
      schema: 'boothwright-assessment-1',
      file: 'larkfield.booth',
      booth: 'Larkfield Hall',
    });
    const reading = { file: 'larkfield.booth', problems: [], understood: true, assessment: larkfield };
    expect(JSON.parse(formatJson([reading, reading]))).toEqual([object, object]);
  });

  it('holds every finding in the order of the assessment', () => {
    expect(object.findings.map(({ message }) => message)).toEqual(larkfield.findings.map(({ message }) => message));
  });

  it('counts lines and columns from one', () => {
    expect(object.findings[1]).toMatchObject({
      subject: 'Sound',
      subjectKind: 'workstation',
      operator: 'Noor',
      range: { start: { line: 19, column: 39 }, end: { line: 19, column: 50 } },
      remedies: [
        { changes: [{ text: '37 1/4in', range: { start: { line: 19, column: 39 } } }], safe: false },
        { changes: [] },
      ],
    });
  });

  it('writes null for what is absent', () => {
    expect(object.findings[5]).toMatchObject({
      verdict: 'unknown',
      measured: null,
      unit: null,
      share: null,
      accepted: null,
    });
  });

  it('rounds lengths to a tenth and shares to four decimals', () => {
    const walkway = object.findings.find(({ check }) => check === 'walkway-width');
    expect(walkway).toMatchObject({ measured: 1092.2, limit: 1066.8, margin: 25.4 });
    expect(object.workstations).toMatchObject([
      { served: [{}, {}, { who: 'Tobias', share: 0.4412, cover: null }, {}] },
      {},
    ]);
    expect(object.walkways).toEqual([{ name: 'Behind', clear: 1092.2 }]);
  });

  it('has no word for what is no number, and no minus zero', () => {
    const odd = { ...larkfield.findings[0]!, measured: NaN, limit: -Infinity, margin: -0.04 };
    const [finding] = only({
      file: 'odd.booth',
      problems: [],
      understood: true,
      assessment: { ...larkfield, findings: [odd] },
    }).findings;
    expect(finding).toMatchObject({ measured: null, limit: null, margin: 0 });
    expect(Object.is(finding!.margin, 0)).toBe(true);
  });

  it('says why a file was not judged', () => {
    const problem = { severity: 'error', message: 'There is no file here.' } as const;
    expect(only({ file: 'gone.booth', understood: false, problems: [problem] })).toMatchObject({
      booth: null,
      findings: [],
      problems: [{ severity: 'error', message: 'There is no file here.', code: null, range: null }],
    });
  });
});

describe('the schema', () => {
  it('refuses an object that lacks what scripts rely on', () => {
    const whole = only({ file: 'larkfield.booth', problems: [], understood: true, assessment: larkfield });
    for (const field of Object.keys(whole)) {
      const { [field]: _, ...rest } = whole;
      expect(validate(rest), field).toBe(false);
    }
    for (const field of Object.keys(whole.findings[0]!)) {
      const { [field]: _, ...rest } = whole.findings[0]!;
      expect(validate({ ...whole, findings: [rest] }), field).toBe(false);
    }
    expect(validate({ ...whole, findings: [{ ...whole.findings[0], share: 1.2 }] })).toBe(false);
  });
});

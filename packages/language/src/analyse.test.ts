import type { Finding } from '@boothwright/fit';
import { describe, expect, test } from 'vitest';
import type { Computation } from './computation.js';
import { analyseFiles, analyseText, silent } from './testing/analysis.js';
import { analyse } from './analyse.js';
import { memoryFiles, uriOf } from './testing/memory.js';

/** A computation that finds, of each desk, what is asked of it. */
function finding(...parts: Partial<Finding>[]): Computation {
  return {
    ...silent,
    assess: (booth) => {
      const [desk] = booth.desks;
      const findings = parts.map((part): Finding => ({
        check: 'skirt-drop',
        subject: { kind: 'desk', name: desk!.name },
        verdict: 'fail',
        message: 'It is so.',
        source: 'test',
        strength: 'strong',
        origin: desk!.width?.origin ?? desk!.origin,
        related: [],
        remedies: [],
        assumptions: [],
        defaults: [],
        ...part,
      }));
      return { ...silent.assess(booth), findings };
    },
  };
}

const text = 'booth "Hall" { }\ndesk Left { width 60in }\n';

describe('findings become diagnostics', () => {
  test('by their verdict', async () => {
    const { diagnostics } = await analyseText(
      text,
      finding(
        { verdict: 'fail' },
        { verdict: 'marginal' },
        { verdict: 'unknown' },
        { verdict: 'pass' },
        { check: 'overlap' },
      ),
    );
    expect(diagnostics.map(({ severity, code, kind }) => [severity, code, kind])).toEqual([
      ['warning', 'skirt-drop', 'finding'],
      ['information', 'skirt-drop', 'finding'],
      ['hint', 'skirt-drop', 'finding'],
      ['error', 'overlap', 'finding'],
    ]);
    expect(diagnostics[0]).toMatchObject({ start: { line: 1, character: 18 }, end: { line: 1, character: 22 } });
  });

  test('unless they are accepted', async () => {
    expect((await analyseText(text, finding({ accepted: 'on purpose' }))).diagnostics).toEqual([]);
  });

  test('with the caution, and what they relate to', async () => {
    const origin = {
      uri: uriOf('hall.booth').toString(),
      start: { line: 0, character: 0 },
      end: { line: 0, character: 5 },
    };
    const { diagnostics } = await analyseText(
      text,
      finding({ caution: 'A planning aid.', related: [{ origin, message: 'See' }] }),
    );
    expect(diagnostics).toMatchObject([
      { message: 'It is so. A planning aid.', related: [{ origin, message: 'See' }] },
    ]);
  });

  test('where this file uses what another declares', async () => {
    const files = {
      'hall.booth': 'import "a.booth"\nworkstation Sound { desk Left }',
      'a.booth': 'desk Left { width 60in }',
    };
    const { diagnostics } = await analyseFiles(files, finding({}));
    expect(diagnostics).toMatchObject([
      {
        uri: 'file:///hall/hall.booth',
        start: { line: 1, character: 25 },
        end: { line: 1, character: 29 },
        related: [{ origin: { uri: 'file:///hall/a.booth', start: { line: 0, character: 18 } } }],
      },
    ]);
  });

  test('but nothing is held to be missing in a text that is faulty', async () => {
    const { diagnostics, understood } = await analyseText(
      'booth "Hall" { }\ndesk Left { width 60 }\n',
      finding({ verdict: 'unknown' }, { verdict: 'fail' }),
    );
    expect(diagnostics.map(({ code }) => code)).toEqual(['no-unit', 'skirt-drop']);
    expect(understood).toBe(false);
  });
});

test('checks that break are said, and leave the faults of the text', async () => {
  const breaking: Computation = {
    ...silent,
    assess: () => {
      throw new Error('division by a chair');
    },
  };
  const { diagnostics, assessment } = await analyseText('booth "Hall" { shoe 25 }', breaking);
  expect(diagnostics.map(({ code }) => code)).toEqual(['no-unit', 'checks-stopped']);
  expect(diagnostics[1]!.message).toContain('division by a chair');
  expect(assessment).toBeUndefined();
});

test('a file that cannot be read is an error', async () => {
  await expect(analyse(uriOf('hall.booth'), { fileSystem: memoryFiles({}) })).rejects.toThrow(
    'no file:///hall/hall.booth',
  );
});

test('a file is checked by the product unless something else is asked', async () => {
  const { assessment } = await analyseText('booth "Hall" { }\nskirt Front { on Left }\ndesk Left { height 40in }');
  expect(assessment!.findings.map(({ check }) => check)).toContain('skirt-drop');
});

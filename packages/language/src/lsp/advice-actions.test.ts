import { EmptyFileSystem, TextDocument } from 'langium';
import { parseHelper } from 'langium/test';
import { advise as adviseAll, adviseStation, assess, checks, remediesOf } from '@boothwright/fit';
import type { CodeAction } from 'vscode-languageserver-types';
import { describe, expect, test, vi } from 'vitest';
import { createBoothServices } from '../module.js';

const advise = vi.fn(adviseStation);
const { booth: services } = createBoothServices({
  ...EmptyFileSystem,
  computation: {
    assess,
    remediesOf,
    advise: adviseAll,
    adviseStation: (...given) => advise(...given),
    checks: checks.map(({ id }) => id),
  },
});
const parse = parseHelper(services);

const tooHigh = `booth "Hall" { show in }
operator Noor { body female  stature 5'3"  sitting-elbow 9in  popliteal 15in  thigh-clearance 6in }
desk Left { width 60in  depth 30in  height 46in }
stool Tall { seat 26in..32in  foot-ring 15in below seat }
workstation Sound { desk Left  stool Tall  operators Noor }
`;

const document = await parse(tooHigh, { validation: true });

/** The plans that are offered with the cursor in the middle of `word` after `before`. */
async function offered(before: string, word: string, only?: string[]): Promise<CodeAction[]> {
  const { textDocument, diagnostics = [], uri } = document;
  const place = tooHigh.indexOf(before) + before.length + Math.floor(word.length / 2);
  expect(tooHigh).toContain(before + word);
  const at = textDocument.positionAt(place);
  const here = diagnostics.filter(
    ({ range: { start, end } }) => textDocument.offsetAt(start) <= place && place <= textDocument.offsetAt(end),
  );
  const actions = await services.lsp.CodeActionProvider!.getCodeActions(document, {
    textDocument: { uri: uri.toString() },
    range: { start: at, end: at },
    context: { diagnostics: here, ...(only && { only }) },
  });
  return (actions as CodeAction[]).filter(({ title }) => /^(Set|Make|Hang) .* serves /.test(title));
}

const bodyFindings = (text: string) =>
  parse(text, { validation: true }).then(({ diagnostics = [] }) =>
    diagnostics.filter(({ code }) => checks.some(({ id, rule }) => id === code && rule)).map(({ code }) => code),
  );

describe('the plans for a workstation', () => {
  test.each([
    ['workstation ', 'Sound'],
    ['below seat }\n', 'workstation'],
    ['workstation Sound { ', 'desk'],
    ['workstation Sound { desk ', 'Left'],
    ['Tall  operators ', 'Noor'],
    ['depth 30in  ', 'height'],
    ['depth 30in  height ', '46in'],
  ])('are offered after “%s” on “%s”', async (before, word) => {
    const titles = (await offered(before, word)).map(({ title }) => title);
    expect(titles[0]).toMatch(/^Set the desk Left to \d+( \d\/\d)? in: (serves 1 of 1|most likely serves Noor)$/);
  });

  test.each([
    ['desk ', 'Left {'],
    ['', 'depth'],
    ['Left  stool ', 'Tall'],
    ['operator ', 'Noor'],
    ['operators Noor ', '}'],
  ])('are not offered after “%s” on “%s”', async (before, word) => {
    expect(await offered(before, word)).toEqual([]);
  });

  test('keep what they promise', async () => {
    expect(await bodyFindings(tooHigh)).toContain('seated-elbow');
    const [first] = await offered('workstation ', 'Sound');
    const changes = first!.edit!.changes![document.uri.toString()]!;
    const after = TextDocument.applyEdits(document.textDocument, changes);
    expect(after).not.toContain('46in');
    const left = await bodyFindings(after);
    expect(left.filter((code) => first!.diagnostics?.some((cured) => cured.code === code))).toEqual([]);
    expect(left).not.toContain('seated-elbow');
  });

  test('are quick fixes where they cure what is said there, else rewrites', async () => {
    const [fix] = await offered('Tall  operators ', 'Noor');
    expect(fix!.kind).toBe('quickfix');
    expect(fix!.diagnostics!.map(({ code }) => code)).toContain('seated-elbow');
    const [rewrite] = await offered('workstation ', 'Sound');
    expect(rewrite!.kind).toBe('refactor.rewrite');
    expect(rewrite!.diagnostics).toBeUndefined();
  });

  test('are left out where something else is asked for', async () => {
    expect(await offered('workstation ', 'Sound', ['quickfix'])).toEqual([]);
    expect(await offered('workstation ', 'Sound', ['refactor'])).not.toEqual([]);
    expect(await offered('workstation ', 'Sound', ['source'])).toEqual([]);
    expect(await offered('Tall  operators ', 'Noor', ['refactor'])).toEqual([]);
    expect(await offered('Tall  operators ', 'Noor', ['quickfix'])).not.toEqual([]);
  });

  test('are computed when somebody asks, once for each version of the file', async () => {
    advise.mockClear();
    const fresh = await parse(tooHigh.replace('46in', '47in'), { validation: true });
    expect(advise).not.toHaveBeenCalled();
    expect(services.Assessments.adviceFor(fresh, 'Sound')!.plans).not.toEqual([]);
    services.Assessments.adviceFor(fresh, 'Sound');
    expect(advise).toHaveBeenCalledTimes(1);
    expect(services.Assessments.adviceFor(fresh, 'Nobody')).toBeUndefined();
  });
});

test('a file that is no booth has no plans', async () => {
  const plain = await parse('desk Left { height 46in }', { validation: true });
  expect(services.Assessments.adviceFor(plain, 'Sound')).toBeUndefined();
});

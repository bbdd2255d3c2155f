import { expect, test } from 'vitest';
import type { DocumentDiagnosticReport, Range } from 'vscode-languageserver-protocol';
import { boothOf, spotIn } from '../bench/documents.js';
import { ServerProcess, serverBundle } from '../server-process.js';

const bundle = serverBundle();

test('an editor that asks for the faults of a long text has them before anything is computed of it', async () => {
  const server = await ServerProcess.start(bundle(), { capabilities: { textDocument: { diagnostic: {} } } });
  const text = boothOf(2000);
  const { line, unit } = spotIn(text);
  const unitItself: Range = { start: { line, character: unit }, end: { line, character: unit + 2 } };
  const faults = () => server.ask<DocumentDiagnosticReport>('diagnostic');
  await server.open(text);
  expect(await faults()).toMatchObject({ kind: 'full', items: [] });
  await server.says((findings) => findings.length > 0);

  for (const [typed, code] of [
    ['xx', 'unknown-unit'],
    ['in', undefined],
    ['qq', 'unknown-unit'],
  ] as const) {
    server.last = undefined;
    void server.change(typed, unitItself);
    expect(await faults()).toMatchObject({ kind: 'full', items: code ? [{ code, range: { start: { line } } }] : [] });
    expect(server.last).toBeUndefined();
    const findings = await server.says(() => true);
    expect(findings.length).toBeGreaterThan(0);
    expect(findings.filter((each) => each.code === code)).toEqual([]);
  }
  await server.stop();
});

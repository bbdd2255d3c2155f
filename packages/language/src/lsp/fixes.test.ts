import { EmptyFileSystem, type LangiumDocument, TextDocument } from 'langium';
import { parseHelper } from 'langium/test';
import { readdirSync, readFileSync } from 'node:fs';
import { checks } from '@boothwright/fit';
import type { CodeAction, Diagnostic } from 'vscode-languageserver-types';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';
import { silent } from '../testing/analysis.js';
import type { FindingData } from '../validation/findings.js';
import type { BoothFormatter } from './formatter.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const { booth: quiet } = createBoothServices({ ...EmptyFileSystem, computation: silent });
type Services = typeof services;

async function offered(text: string, of: Services): Promise<{ actions: CodeAction[]; document: LangiumDocument }> {
  const document = await parseHelper(of)(text, { validation: true });
  const diagnostics = document.diagnostics ?? [];
  const actions: CodeAction[] = [];
  for (const diagnostic of diagnostics) {
    const own = await of.lsp.CodeActionProvider!.getCodeActions(document, {
      textDocument: { uri: document.uri.toString() },
      range: diagnostic.range,
      context: { diagnostics: [diagnostic], only: ['quickfix'] },
    });
    actions.push(...(own as CodeAction[]));
  }
  return { actions, document };
}

function after({ edit }: CodeAction, document: LangiumDocument): string {
  return TextDocument.applyEdits(document.textDocument, edit!.changes![document.uri.toString()]!);
}

async function formatted(text: string, of: Services): Promise<string> {
  const draft = await parseHelper(of)(text);
  const first = /^([ \t]+)(?![ \t]|\/\/)\S/m.exec(text)?.[1] ?? '  ';
  return (of.lsp.Formatter as BoothFormatter).formatted(draft, {
    tabSize: first.length,
    insertSpaces: !first.startsWith('\t'),
  });
}

async function diagnosticsOf(text: string, of: Services): Promise<Diagnostic[]> {
  return (await parseHelper(of)(text, { validation: true })).diagnostics ?? [];
}

const isFinding = ({ data }: Diagnostic) => typeof data === 'object' && data !== null && 'check' in data;
const faultsOf = (diagnostics: readonly Diagnostic[]) =>
  diagnostics.filter((one) => !isFinding(one) && one.severity === 1).map(({ code }) => code);

const read = (folder: string) => {
  const root = new URL(`../../../../${folder}/`, import.meta.url);
  return readdirSync(root)
    .filter((name) => name.endsWith('.booth'))
    .map((name) => [name, readFileSync(new URL(name, root), 'utf8').replace(/^import.*$/gm, '')] as const);
};

/** In order: the last test counts what the others tried. */
describe('every fix that is offered leaves the file formatted', { timeout: 120_000, shuffle: false }, () => {
  let tried = 0;

  test.each(read('examples'))('in %s', async (_, text) => {
    const { actions, document } = await offered(text, services);
    for (const text of new Set(actions.map((action) => after(action, document)))) {
      expect(await formatted(text, services)).toBe(text);
      tried++;
    }
  });

  test.each(read('tests/fixtures/language'))('and mends its fault, in %s', async (_, text) => {
    const { actions, document } = await offered(text, quiet);
    const before = document.diagnostics ?? [];
    for (const action of actions) {
      const fixed = after(action, document);
      expect(await formatted(fixed, quiet)).toBe(fixed);
      const { code, message } = action.diagnostics![0]!;
      const count = (all: readonly Diagnostic[]) => all.filter((one) => one.message === message).length;
      const now = await diagnosticsOf(fixed, quiet);
      const isOpen = code === 'missing-reason' || code === 'missing-brace';
      if (!isOpen) expect(count(now), `${action.title}: ${String(code)}`).toBeLessThan(count(before));
      tried++;
    }
  });

  test('and there were many', () => {
    expect(tried).toBeGreaterThan(150);
  });
});

describe('every fix of a finding keeps its promise', { timeout: 120_000 }, () => {
  test.each(checks.map(({ id, example }) => [id, example.fires] as const))('in the example of %s', async (_, text) => {
    const { actions, document } = await offered(text, services);
    for (const action of actions) {
      const fixed = after(action, document);
      expect(await formatted(fixed, services), action.title).toBe(fixed);
      const [diagnostic] = action.diagnostics!;
      const { check, subject, missing } = diagnostic!.data as FindingData;
      const isAcceptance = action.title.startsWith('Accept ');
      const now = await diagnosticsOf(isAcceptance ? fixed.replace('because ""', 'because "so"') : fixed, services);
      expect(faultsOf(now), action.title).toEqual([]);
      const same = now.filter((one) => one.code === check && (one.data as FindingData).subject === subject);
      if (isAcceptance) expect(same, action.title).toEqual([]);
      if (missing) {
        const asks = same.some(({ data }) => (data as FindingData).missing?.property === missing.property);
        expect(asks && !isAcceptance, action.title).toBe(false);
      }
      if (action.isPreferred) {
        const worst = (all: readonly Diagnostic[]) => Math.min(9, ...all.map(({ severity }) => severity!));
        expect(worst(same), action.title).toBeGreaterThanOrEqual(worst([diagnostic!]));
      }
    }
  });
});

import { type ChildProcess, spawn } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type AssessmentResult, assessmentRequest, type ClientOptions } from '@boothwright/language/protocol';
import esbuild from 'esbuild';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  type CodeAction,
  type CodeLens,
  type CompletionItem,
  createProtocolConnection,
  type Diagnostic,
  type Hover,
  type ProtocolConnection,
  type PublishDiagnosticsParams,
  StreamMessageReader,
  StreamMessageWriter,
} from 'vscode-languageserver-protocol/node';

const root = path.resolve(import.meta.dirname, '../..');
const scratch = mkdtempSync(path.join(tmpdir(), 'boothwright-german-'));
const program = path.join(scratch, 'dist/server.cjs');
const uri = 'file:///hall/hall.booth';
const text = `booth "Larkfield Hall" { show cm }
room { width 9m  depth 13m }
operator Noor { stature 160cm }
desk Left { width 150cm  depth 70cm  height 130cm }
workstation Sound { desk Left  operators Noor  posture stand }
place Left at 3m, 1.6m
skirt Front { on Left  drop 131cm  width 12 }
crowd Young { age 14..17 }
workstation Words { desk Left  operators Young  posture stand }
`;

/** An editor that speaks to the real server over its standard streams. */
class Editor {
  private constructor(
    private readonly child: ChildProcess,
    readonly connection: ProtocolConnection,
    readonly diagnostics: readonly Diagnostic[],
  ) {}

  static async open(tells: { readonly locale?: string; readonly initializationOptions?: ClientOptions }) {
    const child = spawn(process.execPath, [program, '--stdio'], { stdio: ['pipe', 'pipe', 'inherit'] });
    const connection = createProtocolConnection(
      new StreamMessageReader(child.stdout),
      new StreamMessageWriter(child.stdin),
    );
    connection.onRequest('workspace/configuration', ({ items }: { items: unknown[] }) => items.map(() => ({})));
    connection.onRequest('client/registerCapability', () => null);
    const published = new Promise<Diagnostic[]>((resolve) =>
      connection.onNotification('textDocument/publishDiagnostics', ({ diagnostics }: PublishDiagnosticsParams) =>
        resolve(diagnostics),
      ),
    );
    connection.listen();
    const capabilities = { textDocument: { publishDiagnostics: { relatedInformation: true } } };
    await connection.sendRequest('initialize', { processId: null, rootUri: null, capabilities, ...tells });
    await connection.sendNotification('initialized', {});
    const textDocument = { uri, languageId: 'booth', version: 1, text };
    await connection.sendNotification('textDocument/didOpen', { textDocument });
    return new Editor(child, connection, await published);
  }

  find(code: string): Diagnostic {
    return this.diagnostics.find((diagnostic) => diagnostic.code === code)!;
  }

  async close(): Promise<void> {
    await this.connection.sendRequest('shutdown');
    await this.connection.sendNotification('exit');
    this.connection.dispose();
    this.child.kill();
  }
}

beforeAll(async () => {
  await esbuild.build({
    entryPoints: [path.join(root, 'packages/language/src/node/main.ts')],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'cjs',
    target: 'node20',
    mainFields: ['module', 'main'],
    logLevel: 'error',
  });
  cpSync(path.join(root, 'packages/extension/l10n'), path.join(scratch, 'l10n'), { recursive: true });
});

afterAll(() => rmSync(scratch, { recursive: true, force: true }));

describe('an editor with the locale de-AT', () => {
  let editor: Editor;
  beforeAll(async () => {
    editor = await Editor.open({ locale: 'de-AT' });
  });
  afterAll(() => editor.close());

  test('is told of faults and findings in German, with what is related to them', () => {
    expect(editor.find('misplaced').message).toContain('hat hier keine Bedeutung, der Block ist eine Stoffblende');
    expect(editor.find('standing-work').message).toMatch(
      /^Die Arbeit liegt .* cm über dem Ellenbogen von Noor im Stehen: zu hoch für Regler und Tasten, sodass sich die Schultern heben\./,
    );
    const hem = editor.find('skirt-drop');
    expect(hem.message).toMatch(/^Front ist auf Left um 1 cm zu lang: Der Stoff schleift am Boden/);
    expect(hem.message).toContain('die örtliche Brandschutzbehörde fragen');
    expect(hem.relatedInformation!.map(({ message }) => message)).toContain('Left ist so hoch');
  });

  test('is offered fixes in German', async () => {
    const diagnostic = editor.find('skirt-drop');
    const actions = await editor.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri },
      range: diagnostic.range,
      context: { diagnostics: [diagnostic] },
    });
    const [fix] = actions;
    expect(fix!.title).toBe('Behanghöhe auf 128.1cm setzen: auf Left frei vom Boden');
    expect(actions.map(({ title }) => title)).toContain('skirt-drop von Front mit Begründung annehmen');
  });

  test('hovers, lenses and completions are German', async () => {
    const place = { textDocument: { uri }, position: { line: 2, character: 11 } };
    const hover = await editor.connection.sendRequest<Hover>('textDocument/hover', place);
    expect((hover.contents as { value: string }).value).toMatch(
      /\*\*Noor\*\*, Bedienperson[\s\S]*\| Kniekehlenhöhe \|/,
    );
    const lenses = await editor.connection.sendRequest<CodeLens[]>('textDocument/codeLens', { textDocument: { uri } });
    expect(lenses[0]!.command!.title).toMatch(/^passt für 0 von 1 · Die Arbeit liegt .* im Stehen$/);
    const { items } = await editor.connection.sendRequest<{ items: CompletionItem[] }>('textDocument/completion', {
      textDocument: { uri },
      position: { line: 3, character: 12 },
    });
    expect(items.find(({ label }) => label === 'top')).toMatchObject({ documentation: 'Die Dicke der Platte.' });
  });

  test('what a report is made of is English, since reports are', async () => {
    await editor.connection.sendNotification('textDocument/didChange', {
      textDocument: { uri, version: 2 },
      contentChanges: [{ text: text.replace('  width 12', '') }],
    });
    const { assessment } = await editor.connection.sendRequest<AssessmentResult>(assessmentRequest, {
      uri,
      advice: true,
    });
    expect(assessment.findings.find(({ check }) => check === 'skirt-drop')!.message).toContain('drags on the floor');
    expect(assessment.findings.find(({ check }) => check === 'standing-work')!.message).toContain(
      'above Noor’s standing elbow',
    );
    const [young] = assessment.findings.filter(({ check }) => check === 'crowd-served');
    expect(young!.assumptions).toEqual(['people below 18 are built like adults of their stature']);
    expect(assessment.sketch!.sides.length).toBeGreaterThan(0);
  });
});

test('the sentences that an editor sends along win over its locale', async () => {
  const sentences = { '{0} is {1} too long on {2}: it drags on the floor and people trip on it.': '{2}, {0}: −{1}' };
  const editor = await Editor.open({ locale: 'de', initializationOptions: { sentences } });
  expect(editor.find('skirt-drop').message).toMatch(/^Left, Front: −1 cm/);
  await editor.close();
});

test.each(['en-GB', 'qps', '../../etc', undefined])('the locale %s is answered in English', async (locale) => {
  const editor = await Editor.open(locale === undefined ? {} : { locale });
  expect(editor.find('skirt-drop').message).toMatch(/^Front is 1 cm too long on Left/);
  await editor.close();
});

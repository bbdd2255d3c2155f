import { afterEach, describe, expect, test } from 'vitest';
import {
  type CodeAction,
  type CodeLens,
  type CompletionList,
  type Diagnostic,
  type Hover,
  type InitializeResult,
  type InlayHint,
} from 'vscode-languageserver';
import {
  adviceRequest,
  type AdviceResult,
  assessmentRequest,
  type AssessmentResult,
  type ClientOptions,
  verdictNotification,
  type VerdictParams,
} from '../protocol.js';
import { Editor, uri } from '../testing/editor.js';
import { uriOf } from '../testing/memory.js';

let latest: Editor | undefined;
afterEach(() => latest?.connection.dispose());

async function start(): Promise<Editor> {
  latest = new Editor();
  await latest.start();
  return latest;
}

describe('an editor', () => {
  test('is told what it can ask for', async () => {
    latest = new Editor();
    const { capabilities } = await latest.start();
    expect(capabilities).toMatchObject({
      hoverProvider: true,
      codeActionProvider: { codeActionKinds: ['quickfix', 'refactor.rewrite', 'source.fixAll.boothwright'] },
      selectionRangeProvider: true,
      semanticTokensProvider: { full: {} },
      foldingRangeProvider: true,
      documentSymbolProvider: true,
      documentHighlightProvider: true,
      completionProvider: {},
      renameProvider: { prepareProvider: true },
      documentLinkProvider: {},
      codeLensProvider: {},
      inlayHintProvider: {},
      documentFormattingProvider: true,
      documentRangeFormattingProvider: true,
      documentOnTypeFormattingProvider: { firstTriggerCharacter: '}' },
    });
  });

  test('gets diagnostics when it opens and changes a file', async () => {
    const editor = await start();
    expect(await editor.open('desk A { width 60 }')).toMatchObject([{ code: 'no-unit', source: 'booth', severity: 1 }]);
    expect(await editor.change('desk A { width 60in }')).toEqual([]);
  });

  test('is told of which text diagnostics are, however fast it types', async () => {
    const editor = await start();
    await editor.open('');
    let latest = 0;
    for (let faults = 1; faults <= 12; faults++)
      latest = await editor.type(Array.from({ length: faults }, (_, n) => `desk D${n} { width 60 }`).join('\n'));
    await expect.poll(() => editor.published.at(-1)!.version).toBe(latest);
    for (const { version, diagnostics } of editor.published) expect(diagnostics).toHaveLength(version! - 1);
  });

  test('reads imported files for the server', async () => {
    const editor = await start();
    expect(await editor.open('import "furniture.booth"\nskirt Front { on Long  drop 39in }')).toEqual([]);
    expect(await editor.change('import "missing.booth"')).toMatchObject([{ code: 'import-missing' }]);
  });

  test('is not left with the diagnostics of a closed file, nor of those that it imported', async () => {
    const editor = await start();
    editor.files.files.set(uriOf('furniture.booth').toString(), 'desk Long { width 60 }');
    await editor.open('import "furniture.booth"\ndesk A { width 60 }');
    await expect.poll(() => editor.shown()).toEqual({ 'hall.booth': 1, 'furniture.booth': 1 });
    await editor.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
    await expect.poll(() => editor.shown()).toEqual({ 'hall.booth': 0, 'furniture.booth': 0 });
  });

  test('gets hovers', async () => {
    const editor = await start();
    await editor.open('desk A { width 60in }');
    const hover = await editor.connection.sendRequest<Hover>('textDocument/hover', {
      textDocument: { uri },
      position: { line: 0, character: 10 },
    });
    expect(hover.contents).toMatchObject({ value: expect.stringContaining('Along the near edge') as unknown });
  });
});

test('moving a file that is imported brings a change of the import', async () => {
  const editor = await start();
  const { capabilities } = await new Promise<InitializeResult>((resolve) => {
    const other = new Editor();
    void other.start().then((result) => {
      other.connection.dispose();
      resolve(result);
    });
  });
  expect(capabilities.workspace?.fileOperations?.willRename?.filters).toHaveLength(2);
  await editor.open('import "furniture.booth"\n');
  const edit = await editor.connection.sendRequest('workspace/willRenameFiles', {
    files: [{ oldUri: uriOf('furniture.booth').toString(), newUri: uriOf('parts/desks.booth').toString() }],
  });
  expect(edit).toEqual({
    changes: {
      [uri]: [
        {
          range: { start: { line: 0, character: 7 }, end: { line: 0, character: 24 } },
          newText: '"parts/desks.booth"',
        },
      ],
    },
  });
});

describe('completion', () => {
  const desk = async (editor: Editor) => {
    await editor.open('desk');
    const { items } = await editor.connection.sendRequest<CompletionList>('textDocument/completion', {
      textDocument: { uri },
      position: { line: 0, character: 4 },
    });
    const { insertTextFormat, textEdit } = items.find(({ label }) => label === 'desk')!;
    return [insertTextFormat, textEdit!.newText];
  };

  test('has tab stops for an editor that knows them, and plain text for any other', async () => {
    const plain = await start();
    expect(await desk(plain)).toEqual([1, 'desk Left { width 60in  depth 30in  height 41in  top 1in }']);
    plain.connection.dispose();
    latest = new Editor();
    await latest.start(undefined, { completion: { completionItem: { snippetSupport: true } } });
    expect(await desk(latest)).toEqual([
      2,
      'desk ${1:Left} { width ${2:60in}  depth ${3:30in}  height ${4:41in}  top ${5:1in} }',
    ]);
  });
});

describe('hints', () => {
  const walkway = `booth "Hall" { show in }
room { width 30ft  depth 44ft }
desk Left { width 60in  depth 30in  height 40in }
place Left at 10ft, 62in
walkway Behind { between booth and back-wall  serves 40 }
`;
  const hints = async (editor: Editor) => {
    const range = { start: { line: 0, character: 0 }, end: { line: 9, character: 0 } };
    const params = { textDocument: { uri }, range };
    return (await editor.connection.sendRequest<InlayHint[]>('textDocument/inlayHint', params)).map(
      ({ label }) => label,
    );
  };

  test('are shown or not as the settings say, from the beginning', async () => {
    latest = new Editor();
    latest.settings = { hints: { clearWidth: false } };
    await latest.start();
    await latest.open(walkway);
    expect(await hints(latest)).toEqual([]);
  });

  test('and when the settings change', async () => {
    const editor = await start();
    await editor.open(walkway);
    expect(await hints(editor)).toEqual(['62 in clear']);
    const set = (own: object) =>
      editor.connection.sendNotification('workspace/didChangeConfiguration', {
        settings: { boothwright: { hints: own } },
      });
    await set({ clearWidth: false });
    await expect.poll(() => editor.refreshed).toBe(1);
    expect(await hints(editor)).toEqual([]);
    await set({ share: false, viewingDistance: false });
    await expect.poll(() => editor.refreshed).toBe(2);
    expect(await hints(editor)).toEqual(['62 in clear']);
  });
});

describe('advice', () => {
  const tooHigh = `booth "Hall" { show in }
operator Noor { body female  stature 5'3"  sitting-elbow 9in  popliteal 15in  thigh-clearance 6in }
desk Left { width 60in  depth 30in  height 46in }
stool Tall { seat 26in..32in  foot-ring 15in below seat }
workstation Sound { desk Left  stool Tall  operators Noor }
`;
  const commands = async (editor: Editor) => {
    const lenses = await editor.connection.sendRequest<CodeLens[]>('textDocument/codeLens', { textDocument: { uri } });
    return lenses.map(({ command }) => command!.command);
  };

  test('is offered over a workstation to an editor that can show it, and to no other', async () => {
    const plain = await start();
    await plain.open(tooHigh);
    expect(await commands(plain)).toEqual(['']);
    plain.connection.dispose();
    latest = new Editor();
    await latest.start({ showsAdvice: true });
    await latest.open(tooHigh);
    expect(await commands(latest)).toEqual(['', 'boothwright.advise']);
  });

  test('and no lens at all if the settings turn lenses off', async () => {
    latest = new Editor();
    latest.settings = { codeLens: false };
    await latest.start({ showsAdvice: true });
    await latest.open(tooHigh);
    expect(await commands(latest)).toEqual([]);
    await latest.connection.sendNotification('workspace/didChangeConfiguration', {
      settings: { boothwright: { codeLens: true } },
    });
    await expect.poll(() => commands(latest!)).toEqual(['', 'boothwright.advise']);
  });

  test('is given for a workstation of a known file', async () => {
    const editor = await start();
    const ask = (workstation: string) =>
      editor.connection.sendRequest<AdviceResult | null>(adviceRequest, { uri, workstation });
    expect(await ask('Sound')).toBeNull();
    await editor.open(tooHigh);
    expect(await ask('Sound')).toMatchObject({
      workstation: 'Sound',
      plans: [{ title: expect.stringMatching(/^Set the desk Left to .* serves 1 of 1$/) as unknown }],
    });
    expect(await ask('Nobody')).toBeNull();
  });

  test('comes with the assessment where it is asked for', async () => {
    const editor = await start();
    await editor.open(tooHigh);
    const ask = (advice: boolean) =>
      editor.connection.sendRequest<AssessmentResult>(assessmentRequest, { uri, advice });
    expect((await ask(false)).advice).toBeUndefined();
    const { advice } = await ask(true);
    expect(advice!.stations.map(({ workstation }) => workstation)).toEqual(['Sound']);
    expect(advice!.shopping.map(({ item }) => item)).toContain('stool Tall');
  });
});

describe('the page behind a code', () => {
  const both = 'desk A { width 60 }\nbooth "H" { }\ndesk B { height 40in }\nskirt Front { on B  drop 45in }\n';
  const links = (diagnostics: readonly Diagnostic[]) =>
    diagnostics.map(({ code, codeDescription }) => [code, codeDescription?.href]);
  const actions = (editor: Editor, diagnostics: readonly Diagnostic[], only?: string[]) =>
    editor.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
      textDocument: { uri },
      range: diagnostics[0]!.range,
      context: { diagnostics, ...(only && { only }) },
    });

  test('is where each code leads, of a check or of the text, in an editor that opens pages', async () => {
    latest = new Editor();
    await latest.start({ opensPages: true });
    expect(links(await latest.open(both))).toEqual([
      ['no-unit', 'boothwright-page:/no-unit.md'],
      ['skirt-drop', 'boothwright-page:/skirt-drop.md'],
    ]);
  });

  test('is opened by an action, one for each code, after the fixes', async () => {
    latest = new Editor();
    await latest.start({ opensPages: true });
    const diagnostics = await latest.open(`${both}skirt Back { on B  drop 46in }\n`);
    expect(diagnostics.map(({ code }) => code)).toEqual(['no-unit', 'skirt-drop', 'skirt-drop']);
    const offered = await actions(latest, diagnostics);
    const explaining = offered.filter(({ command }) => command?.command === 'boothwright.explain');
    expect(explaining.map(({ title, command }) => [title, command!.arguments])).toEqual([
      ['Explain no-unit', [{ code: 'no-unit' }]],
      ['Explain skirt-drop', [{ code: 'skirt-drop' }]],
    ]);
    expect(offered.slice(-2)).toEqual(explaining);
    expect(explaining[1]!.diagnostics).toHaveLength(2);
    expect(await actions(latest, diagnostics, ['refactor.rewrite'])).toEqual([]);
  });

  test('is not spoken of to an editor that opens none', async () => {
    const editor = await start();
    const diagnostics = await editor.open(both);
    expect(links(diagnostics)).toEqual([
      ['no-unit', undefined],
      ['skirt-drop', undefined],
    ]);
    expect((await actions(editor, diagnostics)).filter(({ command }) => command)).toEqual([]);
  });
});

describe('the verdict', () => {
  const corner = `booth "Hall" { show in }
room { width 30ft  depth 44ft }
desk Left { width 60in  depth 30in  height 40in }
place Left at 10ft, 62in
walkway Behind { between booth and back-wall  serves 40 }
accept walkway-head because "nothing hangs there"
`;
  const verdicts = async (options: ClientOptions) => {
    latest = new Editor();
    const told: VerdictParams[] = [];
    latest.connection.onNotification(verdictNotification, (params: VerdictParams) => void told.push(params));
    await latest.start(options);
    return { editor: latest, told };
  };

  test('in numbers follows each check of an open file, with the time it took', async () => {
    const { editor, told } = await verdicts({ showsVerdict: true });
    await editor.open(corner);
    await expect.poll(() => told.at(-1)).toMatchObject({ uri, version: 1, faults: 0, counts: { accepted: 1 } });
    const { counts, took } = told.at(-1)!;
    const { findings } = (await editor.assessment())!.assessment;
    expect(counts!.fail + counts!.marginal + counts!.unknown + counts!.pass + counts!.accepted).toBe(findings.length);
    expect(counts!.pass).toBeGreaterThan(0);
    expect(took).toBeGreaterThan(0);
    await editor.change(corner.replace('30in', '30'));
    await expect.poll(() => told.at(-1)).toMatchObject({ version: 2, faults: 1 });
    await editor.change('desk Left { width 60in }');
    await expect.poll(() => told.at(-1)).toEqual({ uri, version: 3, faults: 0 });
  });

  /** How often it has been told when an assessment that was asked for after it is there. */
  const timesTold = async (options: ClientOptions) => {
    const { editor, told } = await verdicts(options);
    await editor.open(corner);
    expect(await editor.assessment()).toMatchObject({ stale: false });
    return told.length;
  };

  test('is there before an assessment that is asked for later', async () => {
    expect(await timesTold({ showsVerdict: true })).toBe(1);
  });

  test('is not told to an editor that does not show it', async () => {
    expect(await timesTold({})).toBe(0);
  });
});

describe('an assessment', () => {
  const good = 'booth "Hall" { }\ndesk A { width 60in }';

  test('is of the text as it is, or of the last that could be read', async () => {
    const editor = await start();
    await editor.open(good);
    expect(await editor.assessment()).toMatchObject({ stale: false, assessment: { booth: { name: 'Hall' } } });
    await editor.change(good.replace('60in', '60'));
    expect(await editor.assessment()).toMatchObject({
      stale: true,
      assessment: { booth: { desks: [{ width: { value: 1524 } }] } },
    });
    await editor.change(good.replace('60in', '66in'));
    expect(await editor.assessment()).toMatchObject({
      stale: false,
      assessment: { booth: { desks: [{ width: { value: 1676.4 } }] } },
    });
  });

  test('is nothing for a file that is no booth, that was never readable, or that is not known', async () => {
    const editor = await start();
    expect(await editor.assessment()).toBeNull();
    await editor.open('desk A { width 60in }');
    expect(await editor.assessment()).toBeNull();
    await editor.change(good.replace('60in', '60'));
    expect(await editor.assessment()).toBeNull();
    await editor.change(good);
    expect(await editor.assessment()).not.toBeNull();
    await editor.change('desk A { width 60in }');
    expect(await editor.assessment()).toBeNull();
  });
});

describe('findings', () => {
  const text = `booth "Hall" { show in }
desk Left { width 60in  depth 30in  height 40in }
skirt Front { on Left  drop 45in }
`;
  const drags = ({ code }: Diagnostic) => code === 'skirt-drop';
  const shown = (diagnostics: readonly Diagnostic[]) =>
    diagnostics.filter(drags).map(({ range: { start }, severity }) => [start.line, start.character, severity]);

  test('stay where they were while the text cannot be read, move with it, and are looked at anew when it can', async () => {
    const editor = await start();
    expect(shown(await editor.open(text))).toEqual([[2, 28, 2]]);
    const broken = text.replace('height 40in', 'height 4');
    expect(shown(await editor.change(broken))).toEqual([[2, 28, 2]]);
    expect(shown(await editor.change(`// a line more\n${broken}`))).toEqual([[3, 28, 2]]);
    expect(shown(await editor.change(`// a line more\n${text.replace('height 40in', 'height 46in')}`))).toEqual([]);
  });

  test('give way at once to what can be computed in spite of a fault elsewhere', async () => {
    const editor = await start();
    await editor.open(text);
    expect(shown(await editor.change(`${text.replace('45in', '39in')}desk Right { width 6 }\n`))).toEqual([]);
  });

  test('of another text do not stay, once the file was closed', async () => {
    const editor = await start();
    await editor.open(text);
    await editor.connection.sendNotification('textDocument/didClose', { textDocument: { uri } });
    expect(shown(await editor.open(text.replace('height 40in', 'height 4')))).toEqual([]);
  });

  test('stay while an imported file cannot be read', async () => {
    const editor = await start();
    const main = 'import "furniture.booth"\nbooth "Hall" { }\nskirt Front { on Long  drop 45in }\n';
    expect(shown(await editor.open(main))).toEqual([[2, 28, 2]]);
    const furniture = uriOf('furniture.booth').toString();
    const params = { uri: furniture, languageId: 'booth', version: 1, text: 'desk Long { width 60in  height 4 }' };
    const next = editor.nextDiagnostics();
    await editor.connection.sendNotification('textDocument/didOpen', { textDocument: params });
    expect(shown(await next)).toEqual([[2, 28, 2]]);
  });
});

describe('fixing all', () => {
  test('right after a keystroke waits for what the checks say of the new text', async () => {
    const editor = await start();
    const text = (drop: string) =>
      `booth "Loose" { }\ndesk Left { width 60in  depth 30in  height 40in }\nskirt Front { on Left  drop ${drop} }\n`;
    const fixes = () =>
      editor.connection.sendRequest<CodeAction[]>('textDocument/codeAction', {
        textDocument: { uri },
        range: { start: { line: 0, character: 0 }, end: { line: 4, character: 0 } },
        context: { diagnostics: [], only: ['source.fixAll'] },
      });
    await editor.open(text('39in'));
    expect(await fixes()).toEqual([]);
    const diagnostics = editor.change(text('45in'));
    expect((await fixes()).map(({ kind }) => kind)).toEqual(['source.fixAll.boothwright']);
    await diagnostics;
  });
});

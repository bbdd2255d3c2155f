import { type AssessmentResult, assessmentRequest } from '@boothwright/language/protocol';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import type {
  CodeAction,
  CodeLens,
  CompletionItem,
  Diagnostic,
  Hover,
  InitializeParams,
} from 'vscode-languageserver-protocol';
import { ServerProcess, serverBundle, uri } from '../server-process.js';

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

const bundle = serverBundle();

/** A server that has been told of the editor and has said what it finds in the text. */
async function opened(tells: Partial<InitializeParams>): Promise<ServerProcess> {
  const capabilities = { textDocument: { publishDiagnostics: { relatedInformation: true } } };
  const server = await ServerProcess.start(bundle(), { capabilities, ...tells });
  await server.open(text);
  await server.says(() => true);
  return server;
}

function find(code: string, { last }: ServerProcess): Diagnostic {
  return last!.find((diagnostic) => diagnostic.code === code)!;
}

describe('an editor with the locale de-AT', () => {
  let server: ServerProcess;
  beforeAll(async () => {
    server = await opened({ locale: 'de-AT' });
  });
  afterAll(() => server.stop());

  test('is told of faults and findings in German, with what is related to them', () => {
    expect(find('misplaced', server).message).toContain('hat hier keine Bedeutung, der Block ist eine Stoffblende');
    expect(find('standing-work', server).message).toMatch(
      /^Die Arbeit liegt .* cm über dem Ellenbogen von Noor im Stehen: zu hoch für Regler und Tasten, sodass sich die Schultern heben\./,
    );
    const hem = find('skirt-drop', server);
    expect(hem.message).toMatch(/^Front ist auf Left um 1 cm zu lang: Der Stoff schleift am Boden/);
    expect(hem.message).toContain('die örtliche Brandschutzbehörde fragen');
    expect(hem.relatedInformation!.map(({ message }) => message)).toContain('Left ist so hoch');
  });

  test('is offered fixes in German', async () => {
    const diagnostic = find('skirt-drop', server);
    const actions = await server.ask<CodeAction[]>('codeAction', {
      range: diagnostic.range,
      context: { diagnostics: [diagnostic] },
    });
    const [fix] = actions;
    expect(fix!.title).toBe('Behanghöhe auf 128.1cm setzen: auf Left frei vom Boden');
    expect(actions.map(({ title }) => title)).toContain('skirt-drop von Front mit Begründung annehmen');
  });

  test('hovers, lenses and completions are German', async () => {
    const hover = await server.ask<Hover>('hover', { position: { line: 2, character: 11 } });
    expect((hover.contents as { value: string }).value).toMatch(
      /\*\*Noor\*\*, Bedienperson[\s\S]*\| Kniekehlenhöhe \|/,
    );
    const lenses = await server.ask<CodeLens[]>('codeLens');
    expect(lenses[0]!.command!.title).toMatch(/^passt für 0 von 1 · Die Arbeit liegt .* im Stehen$/);
    const { items } = await server.ask<{ items: CompletionItem[] }>('completion', {
      position: { line: 3, character: 12 },
    });
    expect(items.find(({ label }) => label === 'top')).toMatchObject({ documentation: 'Die Dicke der Platte.' });
  });
});

test('what a report is made of is English, since reports are', async () => {
  const server = await opened({ locale: 'de-AT' });
  await server.change(text.replace('  width 12', ''));
  const { assessment } = await server.connection.sendRequest<AssessmentResult>(assessmentRequest, {
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
  await server.stop();
});

test('the sentences that an editor sends along win over its locale', async () => {
  const sentences = { '{0} is {1} too long on {2}: it drags on the floor and people trip on it.': '{2}, {0}: −{1}' };
  const server = await opened({ locale: 'de', initializationOptions: { sentences } });
  expect(find('skirt-drop', server).message).toMatch(/^Left, Front: −1 cm/);
  await server.stop();
});

test.each(['en-GB', 'qps', '../../etc', undefined])('the locale %s is answered in English', async (locale) => {
  const server = await opened(locale === undefined ? {} : { locale });
  expect(find('skirt-drop', server).message).toMatch(/^Front is 1 cm too long on Left/);
  await server.stop();
});

import { EmptyFileSystem } from 'langium';
import { parseHelper } from 'langium/test';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

const noor = 'operator Noor { body female  stature 5\'3"  sitting-elbow 9in  popliteal 15in  thigh-clearance 6in }';
const hall = (height: string, people = 'Noor', more = '') => `booth "Hall" { show in }
${noor}
crowd Volunteers { women 55%  cover 90% }
desk Left { width 60in  depth 30in  height ${height} }
stool Tall { seat 26in..32in  seat-depth 15in  seat-width 17in  foot-ring 15in below seat }
workstation Sound { desk Left  stool Tall  operators ${people} }
${more}`;

async function lensesOf(text: string) {
  const document = await parse(text, { validation: true });
  const lenses = await services.lsp.CodeLensProvider!.provideCodeLens(document, {
    textDocument: { uri: document.uri.toString() },
  });
  return lenses!.map(({ range, command }) => ({ word: document.textDocument.getText(range), title: command!.title }));
}

describe('over a workstation stands', () => {
  test.each([
    ['that all fit', hall('41 1/2in'), /^1 of 1 fit$/],
    ['what is wrong for whom', hall('46in'), /^0 of 1 fit · The work is [\d /]+ in above Noor’s seated elbow$/],
    ['of a crowd how much is served', hall('46in', 'Volunteers'), /^0 of 1 fit · Volunteers: \d+% served, 90% wanted$/],
    ['both', hall('46in', 'Noor, Volunteers'), /^0 of 2 fit · The work .* · Volunteers: /],
    ['what is missing', hall('40in').replace('  height 40in', ''), /^Cannot say who fits: add height to desk Left$/],
    ['that nobody is named', hall('40in').replace('operators Noor', ''), /^Nobody to fit: name operators$/],
  ])('%s', async (_, text, title) => {
    const [lens, ...more] = await lensesOf(text);
    expect(more).toEqual([]);
    expect(lens!.word).toBe('Sound');
    expect(lens!.title).toMatch(title);
  });

  test('what is accepted, as such', async () => {
    const accepted = 'accept seated-elbow because "short shifts"\naccept stool-drop because "short shifts"\n';
    const [lens] = await lensesOf(hall('46in', 'Noor', accepted));
    expect(lens!.title).toMatch(/elbow \(accepted\)$/);
  });

  test('two sentences at most', async () => {
    const names = ['A', 'B', 'C', 'D'];
    const more = names.map((name) => noor.replace('Noor', name)).join('\n');
    const [lens] = await lensesOf(hall('46in', names.join(', '), more));
    expect(lens!.title).toMatch(/^0 of 4 fit · [^·]*A’s[^·]* · [^·]*B’s[^·]* · and 2 more$/);
  });
});

test('a file that is no booth has no lenses', async () => {
  expect(await lensesOf('desk Left { width 60in }')).toEqual([]);
});

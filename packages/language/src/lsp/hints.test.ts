import { EmptyFileSystem } from 'langium';
import { parseHelper } from 'langium/test';
import type { InlayHint } from 'vscode-languageserver-types';
import { describe, expect, test } from 'vitest';
import { createBoothServices } from '../module.js';

const { booth: services } = createBoothServices(EmptyFileSystem);
const parse = parseHelper(services);

const hall = `booth "Hall" { show in }
room { width 30ft  depth 44ft }
operator Noor { body female  stature 5'3" }
crowd Volunteers { women 55%  cover 90% }
desk Left { width 60in  depth 30in  height 40in }
stool Tall { seat 26in..32in  foot-ring 15in below seat }
monitor Cues { diagonal 22in }
workstation Sound {
  desk Left  stool Tall  operators Noor, Volunteers
  monitor Cues { setback 26in  bottom 5in above desk }
}
place Left at 10ft, 62in
walkway Behind { between booth and back-wall  serves 40 }
`;

/** Each line that has hints, with the hints in ‹›. */
async function hintsIn(text: string, range?: { from: number; to: number }): Promise<string[]> {
  const hints = await hintsOf(text, range);
  const lines = text.split('\n');
  for (const { position, label } of [...hints].sort((a, b) => b.position.character - a.position.character)) {
    const line = lines[position.line]!;
    lines[position.line] = `${line.slice(0, position.character)}‹${label as string}›${line.slice(position.character)}`;
  }
  return lines.filter((line) => line.includes('‹')).map((line) => line.trim());
}

async function hintsOf(text: string, { from, to } = { from: 0, to: 1000 }): Promise<InlayHint[]> {
  const document = await parse(text, { validation: true });
  const hints = await services.lsp.InlayHintProvider!.getInlayHints(document, {
    textDocument: { uri: document.uri.toString() },
    range: { start: { line: from, character: 0 }, end: { line: to, character: 0 } },
  });
  return hints!;
}

describe('hints stand behind', () => {
  test('a screen, a crowd and a walkway, with the figure of the assessment', async () => {
    const [people, screen, walkway, ...more] = await hintsIn(hall);
    expect(people).toMatch(/^desk Left {2}stool Tall {2}operators Noor, Volunteers‹\d+% served›$/);
    expect(screen).toMatch(/^monitor Cues‹2[67]( \d\/\d)? to 2[678]( \d\/\d)? in from the eyes› \{/);
    expect(walkway).toBe('walkway Behind‹43 in clear› { between booth and back-wall  serves 40 }');
    expect(more).toEqual([]);
  });

  test('a crowd in each posture', async () => {
    const [people] = await hintsIn(hall.replace('stool Tall  operators', 'stool Tall  posture sit, stand  operators'));
    expect(people).toMatch(/Volunteers‹\d+% seated, \d+% standing›/);
  });

  test('what has a figure, and nothing else', async () => {
    const bare = hall
      .replace('setback 26in  ', '')
      .replace('place Left at 10ft, 62in\n', '')
      .replace(', Volunteers', '');
    expect(await hintsIn(bare)).toEqual([]);
    expect(await hintsIn('desk Left { width 60in }')).toEqual([]);
  });

  test('what is on the lines that are asked for', async () => {
    expect(await hintsIn(hall, { from: 12, to: 13 })).toEqual([expect.stringContaining('43 in clear')]);
  });

  test('their names, and tell where the figure comes from', async () => {
    const tooltips = (await hintsOf(hall)).map(({ tooltip }) => tooltip);
    expect(tooltips[0]).toMatch(/Noor seated: 2[67]( \d\/\d)? in\nVolunteers seated: 2[678]/);
    expect(tooltips[1]).toMatch(/62 in .* 19 in .*= 43 in/);
    expect(tooltips[2]).toMatch(/^Everything at Sound fits \d+% of Volunteers seated; 90% are to be served\.$/);
  });
});

test('a change in the text changes the figure', async () => {
  expect((await hintsIn(hall.replace('62in', '60in'))).join()).toContain('‹41 in clear›');
});

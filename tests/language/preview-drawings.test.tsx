import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { render } from 'preact-render-to-string';
import { afterEach, expect, test } from 'vitest';
import {
  assessmentRequest,
  type AssessmentResult,
  previewRequest,
  type PreviewResult,
} from '../../packages/language/src/protocol.js';
import { Editor, uri } from '../../packages/language/src/testing/editor.js';
import { uriOf } from '../../packages/language/src/testing/memory.js';
import { LiveDrawing, pieceKey, tellAnswer, viewsOf } from '../../packages/report/src/preview/index.js';

const examples = path.resolve(import.meta.dirname, '../../examples');
const booths = readdirSync(examples).filter((name) => name.endsWith('.booth') && name !== 'furniture.booth');

let editor: Editor;
afterEach(() => editor.connection.dispose());

test.each(booths)('what the preview is sent of %s draws what the whole assessment draws', async (name) => {
  const ask = await open(name);
  const sent = await ask<PreviewResult>(previewRequest);
  const { assessment } = await ask<AssessmentResult>(assessmentRequest);
  if (sent.is !== 'booth') throw new Error('Nothing is drawn.');
  expect(drawingsOf(sent.assessment)).toEqual(drawingsOf(assessment));
  expect(tellAnswer(sent.assessment).tally).toEqual(tellAnswer(assessment).tally);
  expect(JSON.stringify(sent.assessment).length).toBeLessThan(JSON.stringify(assessment).length * 0.8);
});

test('a screen in the section of the hall can be pointed at, as the one at its workstation', async () => {
  const ask = await open('larkfield-hall.booth');
  const { assessment } = await ask<AssessmentResult>(assessmentRequest);
  const { id, draw } = viewsOf(assessment, 760).plans.find((view) => view.id === 'hall')!;
  const html = render(<LiveDrawing assessment={assessment} drawing={draw()} id={id} lit={new Set()} zoom={1} />);
  for (const [name, workstation] of [
    ['Cues', 'Sound'],
    ['Lyrics', 'Words'],
  ])
    expect(html.replaceAll('&quot;', '"')).toContain(`data-piece="${pieceKey({ kind: 'screen', name, workstation })}"`);
});

async function open(name: string) {
  editor = new Editor();
  await editor.start();
  const text = (file: string) => readFileSync(path.join(examples, file), 'utf8');
  editor.files.files.set(uriOf('furniture.booth').toString(), text('furniture.booth'));
  await editor.open(text(name));
  return <T,>(method: string) => editor.connection.sendRequest<T>(method, { uri });
}

function drawingsOf(assessment: AssessmentResult['assessment']) {
  const { plans, stations } = viewsOf(assessment, 760);
  const all = [...plans, ...stations.flatMap(({ views }) => views)];
  expect(all.length).toBeGreaterThan(3);
  return all.map(({ id, caption, draw }) => ({ id, caption, drawing: draw() }));
}

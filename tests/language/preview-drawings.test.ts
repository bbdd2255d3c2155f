import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, expect, test } from 'vitest';
import {
  assessmentRequest,
  type AssessmentResult,
  previewRequest,
  type PreviewResult,
} from '../../packages/language/src/protocol.js';
import { Editor, uri } from '../../packages/language/src/testing/editor.js';
import { uriOf } from '../../packages/language/src/testing/memory.js';
import { tellAnswer, viewsOf } from '../../packages/report/src/preview/index.js';

const examples = path.resolve(import.meta.dirname, '../../examples');
const booths = readdirSync(examples).filter((name) => name.endsWith('.booth') && name !== 'furniture.booth');

let editor: Editor;
afterEach(() => editor.connection.dispose());

test.each(booths)('what the preview is sent of %s draws what the whole assessment draws', async (name) => {
  editor = new Editor();
  await editor.start();
  editor.files.files.set(
    uriOf('furniture.booth').toString(),
    readFileSync(path.join(examples, 'furniture.booth'), 'utf8'),
  );
  await editor.open(readFileSync(path.join(examples, name), 'utf8'));
  const ask = <T>(method: string) => editor.connection.sendRequest<T>(method, { uri });
  const sent = await ask<PreviewResult>(previewRequest);
  const { assessment } = await ask<AssessmentResult>(assessmentRequest);
  if (sent.is !== 'booth') throw new Error('Nothing is drawn.');
  expect(drawingsOf(sent.assessment)).toEqual(drawingsOf(assessment));
  expect(tellAnswer(sent.assessment).tally).toEqual(tellAnswer(assessment).tally);
  expect(JSON.stringify(sent.assessment).length).toBeLessThan(JSON.stringify(assessment).length * 0.8);
});

function drawingsOf(assessment: AssessmentResult['assessment']) {
  const { plans, stations } = viewsOf(assessment, 760);
  const all = [...plans, ...stations.flatMap(({ views }) => views)];
  expect(all.length).toBeGreaterThan(3);
  return all.map(({ id, caption, draw }) => ({ id, caption, drawing: draw() }));
}

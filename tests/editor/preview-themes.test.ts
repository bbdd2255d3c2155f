import { readFileSync } from 'node:fs';
import path from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { examine } from './harness/axe.js';
import { type Editor, openEditor } from './harness/editor.js';
import { root } from './harness/paths.js';
import { pieceIn, previewOf } from './harness/preview.js';

const example = (name: string) => readFileSync(path.join(root, 'examples', name), 'utf8');
let editor: Editor | undefined;

afterEach(() => editor?.close());

test.each([
  ['Light Modern', 'vscode-light'],
  ['Dark Modern', 'vscode-dark'],
  ['Default High Contrast', 'vscode-high-contrast'],
  ['Default High Contrast Light', 'vscode-high-contrast-light'],
])(
  'the preview is accessible in the theme %s, with its figures in lists and beside a piece',
  async (theme, kind) => {
    const files = {
      'hall.booth': example('larkfield-hall-first-plan.booth'),
      'furniture.booth': example('furniture.booth'),
    };
    editor = await openEditor(`preview-${kind}`, files, {
      'workbench.colorTheme': theme,
      'workbench.sideBar.location': 'right',
    });
    await editor.open('hall.booth');
    await editor.run('Boothwright: Show preview beside the text');
    const frame = await previewOf(editor);
    await frame.locator(`body.${kind} svg.booth-plan`).waitFor();
    await pieceIn(frame, 'booth', /^walkway/).hover();
    await frame.locator('.tip').waitFor();
    await editor.screenshot('plan');
    await frame.evaluate(() => {
      for (const details of document.querySelectorAll('details')) details.open = true;
    });
    const { passes, objections } = await examine(frame);
    expect(passes).toBeGreaterThan(15);
    expect(objections).toEqual([]);
    await frame.getByRole('slider').first().scrollIntoViewIfNeeded();
    await editor.screenshot('side');
    expect(editor.refusals()).toEqual([]);
  },
  120_000,
);

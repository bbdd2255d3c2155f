import type { Frame, Locator } from 'playwright-core';
import type { Editor } from './editor.js';

/** The page of the preview that is in view, once it has drawn something or said why not. */
export async function previewOf(editor: Editor): Promise<Frame> {
  for (const end = Date.now() + 30_000; Date.now() < end;) {
    for (const frame of editor.page.frames()) {
      const filled = await frame.evaluate(() => document.querySelector('#page > *') !== null).catch(() => false);
      if (filled) return frame;
    }
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  throw new Error('No preview came into view.');
}

/** The button that stands for a thing in a drawing: 'booth', 'room', 'hall', or 'station-1-…' of a workstation. */
export function pieceIn(frame: Frame, drawing: string, label: string | RegExp): Locator {
  return frame.locator(`[data-sheet^="${drawing}"]`).getByRole('button', { name: label }).first();
}

/** What the cursor in the text is on, by its accessible names, without repeats. */
export async function litIn(frame: Frame): Promise<string[]> {
  const labels = await frame
    .locator('[role=button][aria-current=true]')
    .evaluateAll((pieces) => pieces.map((piece) => piece.getAttribute('aria-label') ?? ''));
  return [...new Set(labels.map((label) => label.split(':')[0]!))];
}

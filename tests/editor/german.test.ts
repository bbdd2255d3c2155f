import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { corner } from './harness/booths.js';
import { type Editor, openEditor } from './harness/editor.js';

const soon = { timeout: 30_000 };

/** A desktop editor takes a display language only with a language pack from the gallery, which tests do not ask. */
describe.runIf(inject('plan').kind === 'server')('an editor whose display language is German', () => {
  let editor: Editor;

  beforeAll(async () => {
    editor = await openEditor('german', { 'corner.booth': corner }, {}, { language: 'de' });
    await editor.open('corner.booth');
  });

  afterAll(() => editor.close());

  test('tells the findings, the figures and the verdict in German', async () => {
    await expect.poll(() => editor.hover('Behind'), soon).toMatch(/Behind, Durchgang[^]*Lichte Breite 43 in/);
    await editor.screenshot('hover');
    expect(await editor.status()).toMatch(/\d+ bestanden[^]*Geprüft in/);
  });

  test('names the commands in German, and asks in German', async () => {
    expect(await editor.offered('Boothwright')).toEqual(
      expect.arrayContaining([expect.stringContaining('Passungsbericht schreiben…')]),
    );
    await editor.run('Eine Prüfung erklären…');
    await editor.page.locator('.quick-input-widget input').fill('skirt-drop');
    await editor.choose('Stoffblende und Boden');
    await expect
      .poll(() => editor.webviewText(), soon)
      .toContain('Hängt die Stoffblende frei vom Boden, aber nicht zu hoch?');
    await editor.screenshot('page');
  });
});

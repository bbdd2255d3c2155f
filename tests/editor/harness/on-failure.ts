import { afterEach } from 'vitest';
import { openEditors } from './editor.js';

/** A picture of what the editor showed when a test failed. */
afterEach(async ({ task }) => {
  if (task.result?.state !== 'fail') return;
  const title = `FAILED-${task.name.replaceAll(/\W+/g, '-').slice(0, 60)}`;
  await Promise.all([...openEditors].map((editor) => editor.screenshot(title)));
});

import { fileURLToPath } from 'node:url';

const fromRoot = (name: string) => fileURLToPath(new URL(`../../../${name}`, import.meta.url));

export const root = fromRoot('.');
/** Editors and their dependencies, kept from run to run. */
export const cacheFolder = fromRoot('.vscode-test');
/** Screenshots and logs of the last run, to be looked at. */
export const outputFolder = fromRoot('tests/editor/output');

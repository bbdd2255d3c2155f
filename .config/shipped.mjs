import esbuild from 'esbuild';
import { bundles, server, toOptions } from './bundles.mjs';
import { commandLine } from './bundling.mjs';

/** The folders of the libraries of which the bundles hold something, from the root: `node_modules/langium`. */
export async function shippedFolders() {
  const builds = [...[...bundles, server].map(toOptions), ...commandLine('dist')];
  const results = await Promise.all(
    builds.map((options) => esbuild.build({ ...options, write: false, metafile: true, logLevel: 'error' })),
  );
  const inputs = results.flatMap(({ metafile }) =>
    Object.values(metafile.outputs).flatMap((output) => Object.keys(output.inputs)),
  );
  return [...new Set(inputs.flatMap(folderOf))];
}

/** The folder of the library that a file belongs to; none for our own. */
function folderOf(input) {
  const found = /^(?:.*\/)?node_modules\/(?:@[^/]+\/)?[^/]+/.exec(input);
  return found && !found[0].includes('@boothwright/') ? [found[0]] : [];
}

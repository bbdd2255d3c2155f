import { type Analysis, analyse, createAnalyser } from '../analyse.js';
import type { Computation } from '../computation.js';
import { memoryFiles, uriOf } from './memory.js';

/** Finds nothing: for tests of the text alone. */
export const silent: Computation = {
  assess: (booth) => ({
    booth,
    findings: [],
    workstations: [],
    walkways: [],
    operators: [],
    layout: { pieces: [], occupied: [], doorSwings: [] },
  }),
  remediesOf: () => [],
  advise: () => ({ stations: [], measure: [], shopping: [] }),
  adviseStation: () => undefined,
  checks: ['skirt-drop', 'reach'],
};

/** Analyses `hall.booth` of these files. */
export function analyseFiles(files: Readonly<Record<string, string>>, computation?: Computation): Promise<Analysis> {
  return analyse(uriOf('hall.booth'), { fileSystem: memoryFiles(files), computation });
}

const noFiles = memoryFiles({});
const analysers = new Map<Computation | undefined, ReturnType<typeof createAnalyser>>();

/** Analyses one text on its own. */
export function analyseText(text: string, computation?: Computation): Promise<Analysis> {
  const analyser = analysers.get(computation) ?? createAnalyser({ fileSystem: noFiles, computation });
  analysers.set(computation, analyser);
  return analyser({ uri: uriOf('hall.booth'), text });
}

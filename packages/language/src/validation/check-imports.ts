import { say } from '@boothwright/fit';
import type { LangiumDocument } from 'langium';
import { bounds } from '../bounds.js';
import { readText } from '../syntax/texts.js';
import { partOf } from '../syntax/tree.js';
import { faultOfPath, importsOf } from '../workspace/imports.js';
import type { Context } from './context.js';

/** Paths that cannot be imported, files that are not there, circles and repetitions. */
export function checkImports(context: Context): void {
  const seen = new Set<string>();
  const byUri = new Map(context.visible.map((each) => [each.uri.toString(), each]));
  for (const { node, uri } of importsOf(context.document)) {
    const place = partOf(node, 'path');
    const path = node.path === undefined ? '' : readText(node.path).inner;
    const fault = faultOfPath(path);
    if (fault !== undefined) {
      context.say('import-path', place, fault);
      continue;
    }
    const target = uri && byUri.get(uri.toString());
    if (uri && !target && context.isBeyond(uri)) {
      const message = say`\`${path}\` is left out: a booth may come from ${bounds.files} files, and from ${bounds.characters} characters in all.`;
      context.say('too-large', place, message);
      continue;
    }
    if (!uri || !target) {
      context.say('import-missing', place, say`There is no readable file \`${path}\` beside this one.`);
      continue;
    }
    if (seen.has(uri.toString())) context.say('repeated-name', place, say`\`${path}\` is already imported.`);
    seen.add(uri.toString());
    const circle = wayTo(context.document, target, byUri);
    if (circle) {
      const names = shortened([context.document, ...circle].map((each) => context.nameOf(each)));
      context.say(
        'import-circle',
        place,
        say`This import goes round in a circle: ${names.join(' → ')}. Remove one of these imports.`,
      );
    }
  }
}

/** The shortest way from `from` to `goal` along imports, both included. */
function wayTo(
  goal: LangiumDocument,
  from: LangiumDocument,
  byUri: ReadonlyMap<string, LangiumDocument>,
): readonly LangiumDocument[] | undefined {
  const before = new Map<LangiumDocument, LangiumDocument | undefined>([[from, undefined]]);
  for (const [each] of before) {
    if (each === goal) return backFrom(goal, before);
    for (const { uri } of importsOf(each)) {
      const next = uri && byUri.get(uri.toString());
      if (next && !before.has(next)) before.set(next, each);
    }
  }
  return undefined;
}

function backFrom(
  goal: LangiumDocument,
  before: ReadonlyMap<LangiumDocument, LangiumDocument | undefined>,
): LangiumDocument[] {
  const way: LangiumDocument[] = [];
  for (let each: LangiumDocument | undefined = goal; each; each = before.get(each)) way.unshift(each);
  return way;
}

/** The names of a long way without its middle. */
function shortened(names: readonly string[]): readonly string[] {
  return names.length <= SHOWN ? names : [...names.slice(0, SHOWN - 2), '…', names.at(-1)!];
}

const SHOWN = 8;

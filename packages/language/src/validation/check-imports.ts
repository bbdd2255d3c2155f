import { say } from '@boothwright/fit';
import type { LangiumDocument } from 'langium';
import { readText } from '../syntax/texts.js';
import { partOf } from '../syntax/tree.js';
import { faultOfPath, importsOf } from '../workspace/imports.js';
import type { Context } from './context.js';

/** Paths that cannot be imported, files that are not there, circles and repetitions. */
export function checkImports(context: Context): void {
  const seen = new Set<string>();
  for (const { node, uri } of importsOf(context.document)) {
    const place = partOf(node, 'path');
    const path = node.path === undefined ? '' : readText(node.path).inner;
    const fault = faultOfPath(path);
    if (fault !== undefined) {
      context.say('import-path', place, fault);
      continue;
    }
    const target = uri && context.visible.find((each) => each.uri.toString() === uri.toString());
    if (!uri || !target) {
      context.say('import-missing', place, say`There is no readable file \`${path}\` beside this one.`);
      continue;
    }
    if (seen.has(uri.toString())) context.say('repeated-name', place, say`\`${path}\` is already imported.`);
    seen.add(uri.toString());
    const circle = wayTo(context.document, target, context.visible);
    if (circle) {
      const names = [context.document, ...circle].map((each) => context.nameOf(each));
      context.say(
        'import-circle',
        place,
        say`This import goes round in a circle: ${names.join(' → ')}. Remove one of these imports.`,
      );
    }
  }
}

/** The files from `from` to `goal` along imports. */
function wayTo(
  goal: LangiumDocument,
  from: LangiumDocument,
  visible: readonly LangiumDocument[],
  passed: readonly LangiumDocument[] = [],
): readonly LangiumDocument[] | undefined {
  if (from === goal) return [...passed, goal];
  if (passed.includes(from)) return undefined;
  for (const { uri } of importsOf(from)) {
    const next = uri && visible.find((each) => each.uri.toString() === uri.toString());
    const way = next && wayTo(goal, next, visible, [...passed, from]);
    if (way) return way;
  }
  return undefined;
}

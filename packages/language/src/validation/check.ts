import { say } from '@boothwright/fit';
import type { LangiumDocument } from 'langium';
import { isDocument } from '../generated/ast.js';
import { showOf } from '../reading/reader.js';
import { bounds } from '../bounds.js';
import { checkBlocks } from './check-blocks.js';
import { checkCharacters } from './check-characters.js';
import { checkImports } from './check-imports.js';
import { checkSyntax } from './check-syntax.js';
import { Context } from './context.js';
import type { Issue } from './issue.js';

/**
 * All that is wrong with a text as a text, in the order of the text. `visible` is the document and all that it imports; the document
 * must be linked. `checks` are the ids that `accept` and `limit` may name.
 */
export function checkDocument(
  document: LangiumDocument,
  visible: readonly LangiumDocument[],
  checks: Context['checks'],
  isBeyond: Context['isBeyond'],
): Issue[] {
  const issues: Issue[] = [];
  const report = (issue: Issue) => void issues.push(issue);
  checkSyntax(document, report);
  checkCharacters(document, report);
  const root = document.parseResult.value;
  if (isDocument(root)) {
    const context = new Context(document, root, visible, showOf(document), checks, isBeyond, report);
    checkImports(context);
    checkBlocks(context);
  }
  return firstOf(
    issues.sort(({ range: { start: a } }, { range: { start: b } }) => a.line - b.line || a.character - b.character),
  );
}

/** No more than anybody reads, and a last one that says how many there are. */
function firstOf(issues: Issue[]): Issue[] {
  if (issues.length <= bounds.faults) return issues;
  const { range } = issues[bounds.faults]!;
  const message = say`There are ${issues.length - bounds.faults} more faults in this file; they are not shown.`;
  return [...issues.slice(0, bounds.faults), { code: 'more-faults', message, range }];
}

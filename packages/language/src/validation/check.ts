import type { LangiumDocument } from 'langium';
import { isDocument } from '../generated/ast.js';
import { showOf } from '../reading/reader.js';
import { checkBlocks } from './check-blocks.js';
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
): Issue[] {
  const issues: Issue[] = [];
  const report = (issue: Issue) => void issues.push(issue);
  checkSyntax(document, report);
  const root = document.parseResult.value;
  if (isDocument(root)) {
    const context = new Context(document, root, visible, showOf(document), checks, report);
    checkImports(context);
    checkBlocks(context);
  }
  return issues.sort(
    ({ range: { start: a } }, { range: { start: b } }) => a.line - b.line || a.character - b.character,
  );
}

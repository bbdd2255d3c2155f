import { AstUtils, type AstNode, CstUtils, type LangiumDocument } from 'langium';
import { checks, type Plan } from '@boothwright/fit';
import type { CodeAction, Diagnostic, Position } from 'vscode-languageserver-types';
import { isBlock, isNames, isProperty } from '../generated/ast.js';
import type { BoothServices } from '../services.js';
import type { FindingData } from '../validation/findings.js';
import { editOfChanges } from './edits.js';

const bodyChecks = new Set(checks.filter(({ rule }) => rule).map(({ id }) => id));

/**
 * The plans for the workstation at the cursor: on its keyword or name, on the desk or the people it names, or on the height
 * of a desk that it uses. A plan is a quick fix where it puts right what is said at the cursor, else a way to write the file anew.
 */
export function adviceActions(
  document: LangiumDocument,
  position: Position,
  diagnostics: readonly Diagnostic[],
  { Assessments }: BoothServices,
): CodeAction[] {
  const booth = Assessments.safelyOf(document)?.booth;
  const meant = booth && subjectAt(document, position);
  if (!meant) return [];
  const names =
    'workstation' in meant
      ? [meant.workstation]
      : booth.workstations.filter(({ desk }) => desk?.name === meant.desk).map(({ name }) => name);
  const plans = names.flatMap((name) => Assessments.adviceFor(document, name)?.plans ?? []);
  const byTitle = new Map(plans.filter(({ changes }) => changes.length > 0).map((plan) => [plan.title, plan]));
  return [...byTitle.values()].map((plan) => actionOf(plan, diagnostics));
}

type Meant = { readonly workstation: string } | { readonly desk: string };

function subjectAt(document: LangiumDocument, position: Position): Meant | undefined {
  const root = document.parseResult.value.$cstNode;
  const offset = document.textDocument.offsetAt(position);
  const leaf = root && CstUtils.findDeclarationNodeAtOffset(root, offset, /[\p{L}\p{N}_"'’″-]/u);
  if (!leaf) return undefined;
  const node: AstNode = leaf.astNode;
  if (isBlock(node) && node.kind === 'workstation' && node.name !== undefined && leaf.text !== '}')
    return { workstation: node.name };
  const block = AstUtils.getContainerOfType(node, isBlock);
  if (block?.name === undefined) return undefined;
  if (isNames(node) && block.kind === 'workstation')
    return node.key === 'stool' || node.key === 'chair' ? undefined : { workstation: block.name };
  const property = AstUtils.getContainerOfType(node, isProperty);
  return property?.key === 'height' && block.kind === 'desk' ? { desk: block.name } : undefined;
}

function actionOf(plan: Plan, diagnostics: readonly Diagnostic[]): CodeAction {
  const cured = diagnostics.filter((diagnostic) => cures(plan, diagnostic));
  return {
    title: plan.title,
    kind: cured.length > 0 ? 'quickfix' : 'refactor.rewrite',
    ...(cured.length > 0 && { diagnostics: cured }),
    edit: editOfChanges(plan.changes),
  };
}

/** Whether a diagnostic is of a check that the plan leaves nobody out by. */
function cures({ leftOut }: Plan, { data }: Diagnostic): boolean {
  const { check, missing } = (data ?? {}) as Partial<FindingData>;
  return check !== undefined && !missing && bodyChecks.has(check) && leftOut.every((one) => one.check !== check);
}

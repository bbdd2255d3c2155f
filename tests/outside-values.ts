import ts from 'typescript';

/** Values that a test takes from one place outside the project. */
export interface OutsideValues {
  readonly source: string;
  readonly values: readonly string[];
}

/**
 * The values that a test file declares with `outside(source, value …)`, in the order of the file, those of one source together. An error
 * names a declaration that is no title of a test, or is not plain text: it would be listed without being held.
 */
export function outsideValuesIn(name: string, text: string): OutsideValues[] {
  const file = ts.createSourceFile(name, text, ts.ScriptTarget.Latest, true);
  const bySource = new Map<string, string[]>();
  const visit = (node: ts.Node): void => {
    if (ts.isCallExpression(node) && node.expression.getText(file) === 'outside') {
      if (!isTitle(node)) throw new Error(`${placeOf(node, file)}: outside(…) stands where no test takes its title`);
      const [source, ...values] = node.arguments.map((argument) => textOf(argument, file));
      bySource.set(source!, [...(bySource.get(source!) ?? []), ...values]);
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return [...bySource].map(([source, values]) => ({ source, values }));
}

/** The first of a test's arguments, or of a row of `it.each`. */
function isTitle(node: ts.CallExpression): boolean {
  const { parent } = node;
  if (ts.isCallExpression(parent)) return parent.arguments[0] === node && /^it\b/.test(parent.expression.getText());
  if (!ts.isArrayLiteralExpression(parent) || parent.elements[0] !== node) return false;
  let table: ts.Node = parent.parent;
  while (ts.isArrayLiteralExpression(table) || ts.isAsExpression(table)) table = table.parent;
  return ts.isCallExpression(table) && /^it\.each\b/.test(table.expression.getText());
}

/** A text, or a constant of the file that is one. */
function textOf(node: ts.Expression, file: ts.SourceFile): string {
  if (ts.isStringLiteralLike(node)) return node.text;
  const declared = file.statements
    .filter(ts.isVariableStatement)
    .flatMap(({ declarationList }) => [...declarationList.declarations])
    .find((declaration) => ts.isIdentifier(node) && declaration.name.getText(file) === node.text)?.initializer;
  if (declared && ts.isStringLiteralLike(declared)) return declared.text;
  throw new Error(`${placeOf(node, file)}: outside(…) takes plain texts`);
}

function placeOf(node: ts.Node, file: ts.SourceFile): string {
  return `${file.fileName}:${file.getLineAndCharacterOfPosition(node.getStart(file)).line + 1}`;
}

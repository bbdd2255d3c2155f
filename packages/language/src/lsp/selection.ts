import { type CstNode, CstUtils, type LangiumDocument } from 'langium';
import type { Position, Range, SelectionRange } from 'vscode-languageserver-types';

/** For each position, the word there and what it belongs to, wider and wider: a value, its property, its block, the file. */
export function selectionRangesOf(document: LangiumDocument, positions: readonly Position[]): SelectionRange[] {
  const { textDocument, parseResult } = document;
  const root = parseResult.value.$cstNode;
  const whole: Range = {
    start: textDocument.positionAt(0),
    end: textDocument.positionAt(textDocument.getText().length),
  };
  return positions.map((position) => {
    const offset = textDocument.offsetAt(position);
    const leaf =
      root && (CstUtils.findDeclarationNodeAtOffset(root, offset) ?? CstUtils.findLeafNodeBeforeOffset(root, offset));
    const steps: CstNode[] = [];
    for (let node: CstNode | undefined = leaf; node; node = node.container)
      if (node.offset <= offset && offset <= node.end && node.length > (steps.at(-1)?.length ?? 0)) steps.push(node);
    return steps.reduceRight<SelectionRange>(
      (parent, { range }) => (isSame(range, parent.range) ? parent : { range, parent }),
      { range: whole },
    );
  });
}

function isSame(a: Range, b: Range): boolean {
  return (
    a.start.line === b.start.line &&
    a.start.character === b.start.character &&
    a.end.line === b.end.line &&
    a.end.character === b.end.character
  );
}

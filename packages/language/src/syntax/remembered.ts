import type { AstNode } from 'langium';
import { isBlock } from '../generated/ast.js';
import { referencesIn } from '../references/linker.js';

/**
 * What was made of a declaration, for as long as it is the same, stands in the same place and refers to things of the same
 * kinds. The document must be linked.
 */
export class Remembered<Value> {
  private readonly known = new WeakMap<AstNode, { readonly stamp: readonly unknown[]; readonly value: Value }>();

  /** `rest` is what else the value depends on, compared by identity; a value that `keeps` refuses is made anew each time. */
  of(
    declaration: AstNode,
    make: () => Value,
    rest: readonly unknown[] = [],
    keeps: (value: Value) => boolean = () => true,
  ): Value {
    const stamp = [...stampOf(declaration), ...rest];
    const known = this.known.get(declaration);
    if (known?.stamp.length === stamp.length && known.stamp.every((part, index) => part === stamp[index]))
      return known.value;
    const value = make();
    if (keeps(value)) this.known.set(declaration, { stamp, value });
    else this.known.delete(declaration);
    return value;
  }
}

function stampOf(declaration: AstNode): unknown[] {
  const start = declaration.$cstNode?.range.start;
  return [start?.line, start?.character, ...referencesIn(declaration).map(({ reference }) => kindOf(reference))];
}

function kindOf(reference: object): unknown {
  const target = 'ref' in reference ? (reference.ref as AstNode | undefined) : undefined;
  return isBlock(target) ? target.kind : undefined;
}

/** Whether every name in a declaration is one of something. */
export function isResolved(declaration: AstNode): boolean {
  return referencesIn(declaration).every(({ reference }) => kindOf(reference) !== undefined);
}

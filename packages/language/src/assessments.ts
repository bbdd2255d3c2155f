import type { AstNode, LangiumDocument } from 'langium';
import type { Assessment, Booth } from '@boothwright/fit';
import { isBooth, readBooth } from './reading/reader.js';
import type { BoothServices } from './services.js';

/** What was read and computed from a file. */
export interface Assessed {
  readonly booth: Booth;
  readonly assessment: Assessment;
}

/** Reads and assesses each file once per version of it and of the files that it imports. */
export class Assessments {
  private readonly known = new WeakMap<AstNode, { readonly roots: readonly AstNode[]; readonly assessed: Assessed }>();

  constructor(private readonly services: BoothServices) {}

  /** As `of`; nothing also if the checks break on the file, which its diagnostics say. */
  safelyOf(document: LangiumDocument): Assessed | undefined {
    try {
      return this.of(document);
    } catch {
      return undefined;
    }
  }

  /** Nothing for a file that is no booth. The document must be linked. */
  of(document: LangiumDocument): Assessed | undefined {
    if (!isBooth(document)) return undefined;
    const visible = this.services.workspace.Imports.visibleFrom(document);
    const roots = visible.map(({ parseResult }) => parseResult.value);
    const known = this.known.get(document.parseResult.value);
    if (known?.roots.length === roots.length && known.roots.every((root, index) => root === roots[index]))
      return known.assessed;
    const booth = readBooth(document, visible);
    const assessed = { booth, assessment: this.services.Computation.assess(booth) };
    this.known.set(document.parseResult.value, { roots, assessed });
    return assessed;
  }
}

import type { AstNode, LangiumDocument } from 'langium';
import type { Assessment, Booth, StationAdvice } from '@boothwright/fit';
import { isBooth, readBooth } from './reading/reader.js';
import type { Computation } from './computation.js';
import type { Imports } from './workspace/imports.js';

/** What was read and computed from a file. */
export interface Assessed {
  readonly booth: Booth;
  readonly assessment: Assessment;
  /** How long both took, in milliseconds. */
  readonly took: number;
}

interface Known {
  readonly roots: readonly AstNode[];
  readonly assessed: Assessed;
  /** By workstation, as far as somebody has asked. */
  readonly advice: Map<string, StationAdvice | undefined>;
}

/** Reads and assesses each file once per version of it and of the files that it imports. */
export class Assessments {
  private readonly known = new WeakMap<AstNode, Known>();

  constructor(
    private readonly services: {
      readonly Computation: Computation;
      readonly workspace: { readonly Imports: Imports };
    },
  ) {}

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
    return this.lookUp(document)?.assessed;
  }

  /** What would fit at a workstation of a file. Computed when it is asked for; nothing if there is no such workstation. */
  adviceFor(document: LangiumDocument, workstation: string): StationAdvice | undefined {
    const known = this.lookUp(document);
    if (!known) return undefined;
    const { advice, assessed } = known;
    if (!advice.has(workstation))
      advice.set(workstation, this.services.Computation.adviseStation(assessed.booth, workstation));
    return advice.get(workstation);
  }

  private lookUp(document: LangiumDocument): Known | undefined {
    if (!isBooth(document)) return undefined;
    const visible = this.services.workspace.Imports.visibleFrom(document);
    const roots = visible.map(({ parseResult }) => parseResult.value);
    const known = this.known.get(document.parseResult.value);
    if (known?.roots.length === roots.length && known.roots.every((root, index) => root === roots[index])) return known;
    const start = performance.now();
    const booth = readBooth(document, visible);
    const assessment = this.services.Computation.assess(booth);
    const assessed = { booth, assessment, took: performance.now() - start };
    const fresh = { roots, assessed, advice: new Map<string, StationAdvice | undefined>() };
    this.known.set(document.parseResult.value, fresh);
    return fresh;
  }
}

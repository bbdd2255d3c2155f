import { type AstNode, type Cancellation, interruptAndCheck, type LangiumDocument } from 'langium';
import type { Assessment, Booth, StationAdvice, Steps } from '@boothwright/fit';
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

  /**
   * Assesses a document step by step, so that a change of it does not have to wait until all is known: then this is cancelled. What breaks
   * breaks again where the answer is asked for, which says so.
   */
  async prepare(document: LangiumDocument, token: Cancellation.CancellationToken): Promise<void> {
    const { Computation, workspace } = this.services;
    if (!isBooth(document) || !Computation.assessing) return;
    const visible = workspace.Imports.visibleFrom(document);
    if (this.stillKnown(document, visible)) return;
    const start = performance.now();
    const steps = assessedIn(document, visible, Computation.assessing.bind(Computation));
    const next = () => {
      try {
        return steps.next();
      } catch {
        return undefined;
      }
    };
    let step = next();
    while (step && !step.done) {
      await interruptAndCheck(token);
      step = next();
    }
    if (step) this.keep(document, visible, { ...step.value, took: performance.now() - start });
  }

  private lookUp(document: LangiumDocument): Known | undefined {
    if (!isBooth(document)) return undefined;
    const visible = this.services.workspace.Imports.visibleFrom(document);
    const known = this.stillKnown(document, visible);
    if (known) return known;
    const start = performance.now();
    const booth = readBooth(document, visible);
    const assessment = this.services.Computation.assess(booth);
    return this.keep(document, visible, { booth, assessment, took: performance.now() - start });
  }

  private stillKnown(document: LangiumDocument, visible: readonly LangiumDocument[]): Known | undefined {
    const known = this.known.get(document.parseResult.value);
    const isSame = visible.every(({ parseResult }, index) => parseResult.value === known?.roots[index]);
    return isSame && known?.roots.length === visible.length ? known : undefined;
  }

  private keep(document: LangiumDocument, visible: readonly LangiumDocument[], assessed: Assessed): Known {
    const roots = visible.map(({ parseResult }) => parseResult.value);
    const fresh = { roots, assessed, advice: new Map<string, StationAdvice | undefined>() };
    this.known.set(document.parseResult.value, fresh);
    return fresh;
  }
}

/** Reading the booth belongs to the first step. */
function* assessedIn(
  document: LangiumDocument,
  visible: readonly LangiumDocument[],
  assessing: (booth: Booth) => Steps<Assessment>,
): Steps<Omit<Assessed, 'took'>> {
  const booth = readBooth(document, visible);
  return { booth, assessment: yield* assessing(booth) };
}

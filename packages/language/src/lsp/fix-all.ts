import { type LangiumDocument, TextDocument } from 'langium';
import { type Assessment, type Remedy, type Verdict, say } from '@boothwright/fit';
import type { CodeAction, TextEdit } from 'vscode-languageserver-types';
import type { BoothServices } from '../services.js';
import type { FindingData } from '../validation/findings.js';
import { formattedEdit } from './tidy.js';

export const fixAllKind = 'source.fixAll.boothwright';

/**
 * The changes of this file that put a finding right and make no other worse, in one, with the file formatted. Their checks
 * call each of them safe; whether they are so together is tried, and what spoils something is left out. Where two would change the same text the first is
 * taken; what would change another file is left to the quick fixes. Nothing if there is no such change, or if the text cannot be read.
 */
export async function fixAll(document: LangiumDocument, services: BoothServices): Promise<CodeAction | undefined> {
  const { uri, parseResult } = document;
  if (parseResult.lexerErrors.length > 0 || parseResult.parserErrors.length > 0) return undefined;
  const chosen = (await harmless(document, safeChanges(document), services)).flat();
  if (chosen.length === 0) return undefined;
  return {
    title:
      chosen.length === 1
        ? say`Put right what is safe to change: 1 value`
        : say`Put right what is safe to change: ${chosen.length} values`,
    kind: fixAllKind,
    edit: { changes: { [uri.toString()]: [formattedEdit(document, chosen, services)] } },
  };
}

/** For each finding the first safe remedy that is free to take: the edits of each. */
function safeChanges({ textDocument, diagnostics = [], uri }: LangiumDocument): TextEdit[][] {
  const chosen: TextEdit[][] = [];
  const isFree = (edits: readonly TextEdit[]) =>
    !edits.some((edit) => chosen.flat().some((one) => overlaps(one, edit, textDocument)));
  for (const { data } of diagnostics) {
    const { remedies = [] } = (data ?? {}) as Partial<FindingData>;
    const edits = remedies.filter(({ safe }) => safe).map((remedy) => ownEdits(remedy, uri.toString()));
    const free = edits.find((some) => some.length > 0 && isFree(some));
    if (free) chosen.push(free);
  }
  return chosen;
}

/** All of the changes if they make nothing worse together, else those that make nothing worse one after another. */
async function harmless(
  document: LangiumDocument,
  changes: TextEdit[][],
  { Assessments, Trial }: BoothServices,
): Promise<TextEdit[][]> {
  const now = Assessments.safelyOf(document)?.assessment;
  if (!now || changes.length === 0) return [];
  const isHarmless = async (some: readonly TextEdit[][]) => {
    const then = await Trial.assess(document, TextDocument.applyEdits(document.textDocument, some.flat()));
    return then !== undefined && !isWorse(then, now);
  };
  if (await isHarmless(changes)) return changes;
  const kept: TextEdit[][] = [];
  for (const change of changes) if (await isHarmless([...kept, change])) kept.push(change);
  return kept;
}

const ranks: readonly Verdict[] = ['pass', 'unknown', 'marginal', 'fail'];

function isWorse(then: Assessment, now: Assessment): boolean {
  const before = worstByTopic(now);
  return [...worstByTopic(then)].some(([topic, rank]) => rank > (before.get(topic) ?? 0));
}

/** The worst rank of what each check says of each thing and person. */
function worstByTopic({ findings }: Assessment): Map<string, number> {
  const worst = new Map<string, number>();
  for (const { check, subject, operator, posture, verdict } of findings) {
    const topic = JSON.stringify([check, subject, operator, posture]);
    worst.set(topic, Math.max(worst.get(topic) ?? 0, ranks.indexOf(verdict)));
  }
  return worst;
}

/** The edits of a remedy; none if it changes another file too. */
function ownEdits({ changes }: Remedy, uri: string): TextEdit[] {
  if (changes.some(({ origin }) => origin.uri !== uri)) return [];
  return changes.map(({ origin: { start, end }, text }) => ({ range: { start, end }, newText: text }));
}

function overlaps({ range: a }: TextEdit, { range: b }: TextEdit, textDocument: TextDocument): boolean {
  const at = (place: TextEdit['range']['start']) => textDocument.offsetAt(place);
  return at(a.start) <= at(b.end) && at(b.start) <= at(a.end);
}

import type { Assessment, Finding, Millimetres, Posture, Share, Subject, Verdict } from '@boothwright/fit';
import { worst } from '../words.js';
import type { Layout } from './named.js';

/** Two or more layouts side by side. Every list runs in the order of the layouts. */
export interface Comparison {
  readonly layouts: readonly LayoutSummary[];
  /** Results that are not the same in all layouts, in the order of the first that has them. */
  readonly results: readonly ComparedResult[];
  /** Everything at once, for each person, place and posture. */
  readonly served: readonly ComparedServed[];
  readonly walkways: readonly ComparedWalkway[];
  /** What each layout but the first does better and worse than the first. */
  readonly changes: readonly LayoutChange[];
}

export interface LayoutSummary {
  /** As it is called here: the booth's name, with its file's where two booths have one name. */
  readonly label: string;
  /** How many results of each verdict are open. */
  readonly open: Readonly<Record<Verdict, number>>;
  readonly accepted: number;
}

/** What one layout says of a subject; absent where it has no such thing. */
export interface Outcome {
  readonly verdict: Verdict;
  readonly accepted: boolean;
  /** The sentence of the finding that decides. */
  readonly message: string;
}

export interface ComparedResult {
  readonly check: string;
  readonly subject: Subject;
  readonly operator?: string;
  readonly posture?: Posture;
  readonly outcomes: readonly (Outcome | undefined)[];
}

export interface ComparedServed {
  readonly workstation: string;
  readonly who: string;
  readonly posture: Posture;
  readonly outcomes: readonly ({ readonly share: Share; readonly verdict: Verdict } | undefined)[];
}

export interface ComparedWalkway {
  readonly name: string;
  /** Undefined where the layout has no such walkway, or its width cannot be said. */
  readonly clear: readonly (Millimetres | undefined)[];
}

/** A layout against the first. */
export interface LayoutChange {
  readonly layout: number;
  readonly gains: readonly ComparedResult[];
  readonly losses: readonly ComparedResult[];
  /** What the first does not pass, and this layout has no more: a posture or a piece that was given up. */
  readonly dropped: readonly ComparedResult[];
  /** What this layout does not pass, and the first has not. */
  readonly added: readonly ComparedResult[];
}

/** @throws RangeError with fewer than two layouts. */
export function compareLayouts(layouts: readonly Layout[]): Comparison {
  if (layouts.length < 2) throw new RangeError('A comparison needs two layouts.');
  const assessments = layouts.map(({ assessment }) => assessment);
  const results = matched(
    assessments.map(({ findings }) => findings),
    keyOf,
  ).map(({ each }) => resultOf(each));
  return {
    layouts: layouts.map(({ label, assessment }) => ({ label, ...tallyOf(assessment.findings) })),
    results: results.filter(({ outcomes }) => outcomes.some((outcome) => !isSame(outcome, outcomes[0]))),
    served: servedOf(assessments),
    walkways: matched(
      assessments.map(({ walkways }) => walkways),
      ({ name }) => name,
    ).map(({ key, each }) => ({ name: key, clear: each.map(([walkway]) => walkway?.clear) })),
    changes: layouts.slice(1).map((_, index) => changeOf(results, index + 1)),
  };
}

function changeOf(results: readonly ComparedResult[], layout: number): LayoutChange {
  const both = results.flatMap((result) => {
    const [before, after] = [result.outcomes[0], result.outcomes[layout]];
    return before && after ? [{ result, step: rank(after) - rank(before) }] : [];
  });
  const onlyIn = (has: number, lacks: number) =>
    results.filter(({ outcomes }) => outcomes[has] && !outcomes[lacks] && outcomes[has].verdict !== 'pass');
  return {
    layout,
    gains: both.filter(({ step }) => step < 0).map(({ result }) => result),
    losses: both.filter(({ step }) => step > 0).map(({ result }) => result),
    dropped: onlyIn(0, layout),
    added: onlyIn(layout, 0),
  };
}

/** What has one key in any layout: of each layout all that has it. */
function matched<T>(lists: readonly (readonly T[])[], key: (item: T) => string) {
  const keys = [...new Set(lists.flatMap((items) => items.map(key)))];
  return keys.map((one) => ({ key: one, each: lists.map((items) => items.filter((item) => key(item) === one)) }));
}

/** A layout has one booth and one room, whatever they are called. */
function keyOf({ check, subject: { kind, name }, operator, posture }: Finding): string {
  return JSON.stringify([check, kind, kind === 'booth' || kind === 'room' ? '' : name, operator, posture]);
}

function resultOf(each: readonly (readonly Finding[])[]): ComparedResult {
  const { check, subject, operator, posture } = each.flat()[0]!;
  return {
    check,
    subject,
    ...(operator !== undefined && { operator }),
    ...(posture && { posture }),
    outcomes: each.map(outcomeOf),
  };
}

/** What is open decides before what is accepted. */
function outcomeOf(findings: readonly Finding[]): Outcome | undefined {
  if (findings.length === 0) return undefined;
  const open = findings.filter(({ accepted }) => accepted === undefined);
  const own = open.length > 0 ? open : findings;
  const verdict = worst(own.map((finding) => finding.verdict));
  const { message } = own.find((finding) => finding.verdict === verdict)!;
  return { verdict, accepted: open.length === 0, message };
}

function servedOf(assessments: readonly Assessment[]): readonly ComparedServed[] {
  const lists = assessments.map(({ workstations }) =>
    workstations.flatMap(({ name, served }) => served.map((person) => ({ workstation: name, ...person }))),
  );
  return matched(lists, ({ workstation, who, posture }) => JSON.stringify([workstation, who, posture])).map(
    ({ each }) => {
      const { workstation, who, posture } = each.flat()[0]!;
      const outcomes = each.map(([person]) => person && { share: person.share, verdict: person.verdict });
      return { workstation, who, posture, outcomes };
    },
  );
}

function tallyOf(findings: readonly Finding[]): Pick<LayoutSummary, 'open' | 'accepted'> {
  const open = findings.filter(({ accepted }) => accepted === undefined);
  const of = (verdict: Verdict) => open.filter((finding) => finding.verdict === verdict).length;
  return {
    open: { fail: of('fail'), marginal: of('marginal'), unknown: of('unknown'), pass: of('pass') },
    accepted: findings.length - open.length,
  };
}

function isSame(a: Outcome | undefined, b: Outcome | undefined): boolean {
  return a?.verdict === b?.verdict && a?.accepted === b?.accepted;
}

/** From good to bad: what passes, what is accepted, what is not known, what is marginal, what fails. */
function rank({ verdict, accepted }: Outcome): number {
  if (verdict === 'pass') return 0;
  return accepted ? 1 : { unknown: 2, marginal: 3, fail: 4 }[verdict];
}

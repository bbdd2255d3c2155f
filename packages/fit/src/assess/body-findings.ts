import type { Remedy, Served, Verdict, WorkstationFigures } from '../assessment.js';
import { sdOf } from '../bodies/body.js';
import type { DimensionName } from '../bodies/dimensions.js';
import type { Posture } from '../booth.js';
import { cannotSay } from '../checks/cannot-say.js';
import type { Reading } from '../checks/body-rule.js';
import type { Check, FindingDraft } from '../checks/check.js';
import { formatShare, possessive, formatPercent } from '../format.js';
import type { Scene, StationRule } from '../scene/scene.js';
import { verdictOf } from '../scene/verdict.js';
import { marginIn, valueOf, type Band, type Demand } from '../stations/demand.js';
import { settingOf, type Heights } from '../stations/rules.js';
import { sharesOf, type RuleShares } from '../stations/shares.js';
import { heightsOf, openHeights, whereNamed, type Person, type Station } from '../stations/station.js';
import type { Share } from '../units.js';
import { dimensionWords } from '../bodies/words.js';
import { remediesFor } from './remedies.js';
import { lowered, said, say } from '../words/say.js';

/** Findings of every seat and stand check at one station, and the joint shares behind them. */
export interface BodyAssessment {
  readonly findings: ReadonlyMap<Check, readonly FindingDraft[]>;
  readonly figures: WorkstationFigures;
}

export function assessBodies(scene: Scene, station: Station, checks: readonly Check[]): BodyAssessment {
  const findings = new Map<Check, FindingDraft[]>(checks.map((check) => [check, []]));
  const served: Served[] = [];
  for (const posture of station.workstation.postures.value) {
    for (const check of checks) findings.get(check)!.push(...unanswered(station, posture, check));
    const heights = heightsOf(station, posture);
    const rules = scene.rules(station, posture);
    if (rules.length === 0) continue;
    for (const person of station.people) {
      const outcome = outcomeOf(rules, openHeights(station, posture), person);
      if (heights) served.push(servedBy(person, posture, outcome));
      rules.forEach((rule, index) => {
        const check = checks.find(({ id }) => id === rule.check)!;
        findings.get(check)!.push(draftOf(scene, station, posture, person, rule, index, outcome));
      });
    }
  }
  return { findings, figures: { name: station.name, origin: station.workstation.origin, served } };
}

interface Outcome {
  readonly heights: Heights;
  readonly preferred: RuleShares;
  readonly outer: RuleShares;
  /** The setting of the mean body. */
  readonly setting: { readonly seat: number; readonly desk: number };
}

function outcomeOf(rules: readonly StationRule[], heights: Heights, person: Person): Outcome {
  return {
    heights,
    preferred: sharesOf(rules, 'preferred', heights, person),
    outer: sharesOf(rules, 'outer', heights, person),
    setting: settingOf(rules, heights, person.dimensions),
  };
}

function servedBy(person: Person, posture: Posture, { preferred, outer }: Outcome): Served {
  return {
    who: person.name,
    posture,
    share: preferred.joint,
    shareAtLimit: outer.joint,
    ...(person.kind === 'crowd' && { cover: person.wanted }),
    verdict: verdictOf(preferred.joint, outer.joint, person.wanted),
  };
}

function unanswered(station: Station, posture: Posture, check: Check): FindingDraft[] {
  const { rule } = check;
  if (rule!.posture !== posture || !(rule!.applies?.(station) ?? true)) return [];
  const subject = { kind: 'workstation', name: station.name } as const;
  const lack = rule!.lacks(station);
  const cannot = say`Cannot say anything of ${lowered(said(check.title))} at ${station.name}.`;
  return lack ? [cannotSay(subject, cannot, lack, station.workstation.origin, posture)] : [];
}

function draftOf(
  scene: Scene,
  station: Station,
  posture: Posture,
  person: Person,
  rule: StationRule,
  index: number,
  outcome: Outcome,
): FindingDraft {
  const share = outcome.preferred.byRule[index]!;
  const shareAtLimit = outcome.outer.byRule[index]!;
  const verdict = verdictOf(share, shareAtLimit, person.wanted);
  const { reading, band } = readingOf(scene, station, person, rule, outcome, verdict);
  const nearest = nearestBound(band, reading.value);
  const remedies = verdict === 'pass' ? [] : remediesFor(scene, station, posture, person, rule);
  return {
    subject: { kind: 'workstation', name: station.name },
    operator: person.name,
    posture,
    verdict,
    measured: reading.value,
    limit: nearest,
    margin: marginIn(band, reading.value),
    share,
    shareAtLimit,
    message: messageOf(person, rule, reading, verdict, { share, shareAtLimit }, remedies),
    origin: whereNamed(station, person),
    related: relatedOf(station, person),
    remedies,
    assumptions: [...(rule.body.assumes?.(station) ?? []), ...person.assumes()],
  };
}

/** The demand with the least margin at the mean body's own setting. */
function readingOf(
  scene: Scene,
  station: Station,
  person: Person,
  rule: StationRule,
  outcome: Outcome,
  verdict: Verdict,
) {
  const { seat, desk } = outcome.setting;
  const level = verdict === 'fail' ? 'outer' : 'preferred';
  const values = rule.demands.map((demand) => valueOf(demand.form, person.dimensions, seat, desk));
  const margins = rule.demands.map((demand, index) => marginIn(demand[level], values[index]!));
  const demand = margins.indexOf(Math.min(...margins));
  const value = values[demand]!;
  const wanted = rule.demands[demand]!.preferred;
  const side = value < wanted.min - 1 ? 'below' : value > wanted.max + 1 ? 'above' : undefined;
  const reading: Reading = {
    station,
    who: person.name,
    demand,
    value,
    ...(side && { side }),
    by: Math.abs(marginIn(wanted, value)),
    length: (length) => scene.length(length),
  };
  return { reading, band: rule.demands[demand]![level] };
}

function nearestBound(band: Band, value: number): number {
  if (!Number.isFinite(band.min)) return band.max;
  if (!Number.isFinite(band.max)) return band.min;
  return value - band.min < band.max - value ? band.min : band.max;
}

interface Shares {
  readonly share: Share;
  readonly shareAtLimit: Share;
}

/** What is so, how sure that is, what would settle it, and what to change. */
function messageOf(
  person: Person,
  rule: StationRule,
  reading: Reading,
  verdict: Verdict,
  shares: Shares,
  remedies: readonly Remedy[],
): string {
  const says = isCounted(person, rule, reading) ? ofCrowd(person, rule, shares) : rule.body.says(reading);
  if (verdict === 'pass') return says;
  const [first] = remedies;
  return [
    says,
    ...(isDoubtful(person, shares) ? doubt(person, rule.demands[reading.demand]!, shares) : []),
    ...(first ? [`${first.title}.`] : []),
  ].join(' ');
}

/** Of a crowd a share is told; but what is wrong whoever comes is told as it is. */
function isCounted(person: Person, rule: StationRule, { demand, side }: Reading): boolean {
  const { body } = rule.demands[demand]!.form;
  return person.kind === 'crowd' && (Object.keys(body).length > 0 || side === undefined);
}

function ofCrowd(person: Person, rule: StationRule, { share, shareAtLimit }: Shares): string {
  return say`${said(rule.title)}: ${formatPercent(share)} of ${person.name} meet the preferred band (${formatPercent(person.wanted)} wanted), ${formatPercent(shareAtLimit)} the outer limit.`;
}

/** A person's body answers for certain if all of it that matters is measured, or if any body would do, or none. */
function isDoubtful({ kind }: Person, { share, shareAtLimit }: Shares): boolean {
  const isCertain = (value: Share) => value < 1e-9 || value > 1 - 1e-9;
  return kind === 'operator' && !(isCertain(share) && isCertain(shareAtLimit));
}

/** How likely the person is inside, and the one measurement that would settle it, when one would. */
function doubt(person: Person, { form }: Demand, { share, shareAtLimit }: Shares): string[] {
  const open = (Object.keys(form.body) as DimensionName[]).filter((name) => sdOf(person.body, name) > 0.5);
  return [
    say`Of people like ${person.name}, ${formatShare(share)} are inside the preferred band and ${formatShare(shareAtLimit)} inside the outer limit.`,
    ...(open.length === 1
      ? [say`Measure ${possessive(person.name)} ${said(dimensionWords[open[0]!])} to settle it.`]
      : []),
  ];
}

function relatedOf(station: Station, person: Person) {
  return [
    ...(station.desk
      ? [{ origin: station.desk.height?.origin ?? station.desk.origin, message: say`the desk ${station.desk.name}` }]
      : []),
    ...(station.seat
      ? [
          {
            origin: station.seat.seat?.origin ?? station.seat.origin,
            message:
              station.seat.kind === 'stool' ? say`the stool ${station.seat.name}` : say`the chair ${station.seat.name}`,
          },
        ]
      : []),
    { origin: person.origin, message: say`what is known of ${person.name}` },
  ];
}

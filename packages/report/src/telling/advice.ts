import {
  listOf,
  type Advice,
  type Assessment,
  type Booth,
  type HeightBands,
  type LeftOut,
  type MeasureNext,
  type PersonBand,
  type Range,
} from '@boothwright/fit';
import { dimensionTitle, titleOf } from '../titles.js';
import { count, percent, unitsOf, type Units } from '../words.js';
import { byPerson } from './places.js';

/** What the advice on one workstation says, in words that any face can set. */
export interface StationTold {
  readonly workstation: string;
  /** Best first. */
  readonly plans: readonly PlanTold[];
  /** Why there is no plan; absent if there is one. */
  readonly noPlan?: string;
  readonly notes: readonly string[];
  readonly bands: readonly BandsTold[];
}

export interface PlanTold {
  readonly title: string;
  readonly facts: readonly { readonly label: string; readonly text: string }[];
}

/** Which heights of one part suit whom. */
export interface BandsTold {
  /** 'Desk Left'. */
  readonly part: string;
  /** What the file says. */
  readonly now: string;
  readonly rows: readonly { readonly who: string; readonly height: string }[];
}

export const advisedMean =
  'Heights to set together, best first. Each plan was tried: put into the booth, and everything checked anew.';

export const bandsMean =
  'Everything else left as it is. ‘About’ marks the average body of what is known; of people not known yet, the heights serve as many as the file asks for.';

/** A seat that several workstations use is told of at the first. */
export function tellStations({ stations }: Advice, assessment: Assessment): readonly StationTold[] {
  const units = unitsOf(assessment.booth.show);
  const told = new Set<string>();
  const isNew = ({ part, of }: HeightBands) => {
    if (part === 'screen') return true;
    const key = JSON.stringify([part, of]);
    return !told.has(key) && told.add(key);
  };
  return stations.map(({ workstation, plans, notes, bands }) => ({
    workstation,
    plans: plans.map(({ title, serves, likely, leftOut }) => ({
      title,
      facts: [
        ...(serves.length > 0 ? [{ label: 'Suits', text: listOf(serves) }] : []),
        ...(likely.length > 0 ? [{ label: 'Most likely suits', text: `${listOf(likely)}; measure to be sure` }] : []),
        ...tellLeftOut(leftOut, assessment, units).map((text) => ({ label: 'Leaves out', text })),
      ],
    })),
    ...(plans.length === 0 && { noPlan: whyNoPlan(assessment, workstation) }),
    notes,
    bands: bands.filter(isNew).map((each) => tellBands(each, workstation, assessment, units)),
  }));
}

/** 'Popliteal height of Noor', how to take it, and what for. */
export function tellMeasure({ operator, dimension, settles, how }: MeasureNext): { title: string; text: string } {
  return {
    title: `${operator}: ${dimensionTitle(dimension)}`,
    text: `${how} It settles ${count(settles, 'result')}.`,
  };
}

function whyNoPlan({ workstations }: Assessment, name: string): string {
  const served = workstations.find((station) => station.name === name)?.served ?? [];
  if (served.length === 0) return 'The file does not say enough yet: see what to add.';
  if (served.every(({ verdict }) => verdict === 'pass')) return 'The heights in the file suit everybody here.';
  return 'No other heights were found that serve more people than those in the file and leave out nobody instead.';
}

/** Who is left out, and by what. */
function tellLeftOut(leftOut: readonly LeftOut[], { booth }: Assessment, units: Units): readonly string[] {
  const by = new Map<string, LeftOut[]>();
  for (const one of leftOut) {
    const key = JSON.stringify([one.who, one.posture, one.workstation]);
    by.set(key, [...(by.get(key) ?? []), one]);
  }
  const places = [...by.values()].map((of) => ({ ...of[0]!, text: tellLacks(of, booth, units) }));
  return byPerson(places).map(({ share, person, text }) =>
    share === undefined ? `${person}: ${text}` : `${percent(1 - share)} of ${person} ${text}`,
  );
}

function tellLacks(of: readonly LeftOut[], { crowds }: Booth, { length }: Units): string {
  const { who, check, share } = of[0]!;
  if (share !== undefined) {
    const cover = crowds.find(({ name }) => name === who)?.cover.value;
    const wanted = cover === undefined ? '' : `, ${percent(cover)} wanted`;
    return `(${percent(share)} served${wanted}): first ‘${titleOf(check)}’`;
  }
  const misses = of.map(({ check: missed, by }) =>
    by === undefined ? `‘${titleOf(missed)}’` : `‘${titleOf(missed)}’ misses by ${length(by)}`,
  );
  return listOf(misses);
}

function tellBands(
  { part, of, each, all }: HeightBands,
  workstation: string,
  { booth }: Assessment,
  { range, length }: Units,
): BandsTold {
  const named = each.filter(({ basis }) => basis !== 'share').length;
  const heightOf = ({ band, basis, blockedBy }: PersonBand) =>
    band
      ? `${basis === 'average' ? 'about ' : ''}${range(band)}`
      : blockedBy === undefined
        ? 'none suits all checks'
        : `none: ‘${titleOf(blockedBy)}’ ${basis === 'share' ? 'leaves out too many' : 'fails at any height'}`;
  const rows = byPerson(each.map((one) => ({ ...one, text: heightOf(one) }))).map(({ person, text }) => ({
    who: person,
    height: text,
  }));
  const everyone = { who: 'Everyone named', height: all ? range(all) : 'no one height' };
  return {
    ...givenOf(part, of, workstation, booth, range, length),
    rows: named > 1 ? [...rows, everyone] : rows,
  };
}

/** What a band is of, and what the file says of it. */
function givenOf(
  part: HeightBands['part'],
  of: string,
  workstation: string,
  { desks, seats, workstations }: Booth,
  range: Units['range'],
  length: Units['length'],
): Pick<BandsTold, 'part' | 'now'> {
  const seat = seats.find(({ name }) => name === of);
  const said = (value: Range | undefined) => (value ? range(value) : 'not said');
  switch (part) {
    case 'desk':
      return { part: `Desk ${of}`, now: said(desks.find(({ name }) => name === of)?.height?.value) };
    case 'seat':
      return { part: `Seat of ${of}`, now: said(seat?.seat?.value) };
    case 'ring':
      return {
        part: `Foot ring of ${of}, below the seat`,
        now: seat?.footRing ? length(seat.footRing.distance.value) : 'not said',
      };
    case 'screen': {
      const { screens } = workstations.find(({ name }) => name === workstation)!;
      const { line, over, distance } = screens.find(({ monitor }) => monitor.name === of)!.height!;
      const edge = { bottom: 'Bottom edge', centre: 'Middle', top: 'Top edge' }[line];
      return { part: `${edge} of ${of}, above the ${over}`, now: range(distance.value) };
    }
  }
}

import type { LimitProfile } from '../booth.js';
import type { Millimetres } from '../units.js';

/** A published figure and where it stands. */
export interface Figure {
  /** Millimetres, or a bare number where the name says so. */
  readonly value: number;
  /** Document, edition and section, as a finding cites it. */
  readonly source: string;
  /** What a reader must know of its use here. */
  readonly note?: string;
}

/** A least width by how many people it serves. */
export interface WidthRow extends Figure {
  /** It holds up to this many people. */
  readonly upTo: number;
  /** It holds only where audience seats line both sides. */
  readonly bothSides?: boolean;
}

/** The published minimums that a file chooses with `limits`. Lengths are millimetres. */
export interface Profile {
  readonly walkway: {
    /** The first row that fits holds. Beyond the last, `capacity` alone decides. */
    readonly widths: readonly WidthRow[];
    /** The widths cannot be told without a number of people. */
    readonly needsPeople: boolean;
    /** Where wheelchair users are likely. */
    readonly wheelchair?: Figure;
    readonly operatorsOnly: Figure;
    /** Width for each person. */
    readonly perPerson: Figure;
    /** Width for each person with sprinklers and a voice alarm. */
    readonly perPersonReduced?: Figure;
    /** Each person counts only beyond this many: up to it, the widths hold. */
    readonly perPersonBeyond: number;
  };
  readonly turn: {
    /** The rule is for turns round something narrower than this. */
    readonly narrower: Figure;
    readonly lane: Figure;
    readonly end: Figure;
    /** With this width at the end, the lanes may be as wide as any other. */
    readonly wideEnd: Figure;
  };
  readonly pinch: {
    readonly width: Figure;
    readonly length: Figure;
    readonly apart: Figure;
    /** Wider than this it is no pinch. */
    readonly route: Figure;
  };
  readonly headroom: Figure;
  readonly projection: { readonly reach: Figure; readonly above: Figure; readonly below: Figure };
  /** What a door that is fully open may take of the least width. */
  readonly door: Figure;
  readonly cable: {
    readonly bare: Figure;
    readonly bevelled: Figure;
    /** Run for each unit of rise. */
    readonly slope: Figure;
  };
  readonly platform: {
    readonly guardAbove: Figure;
    readonly guard: Figure;
    readonly leastRiser: Figure;
    readonly mostRiser: Figure;
    readonly tread: Figure;
    /** Tread of a flight of one or two risers. */
    readonly treadOfFew: Figure;
    /** Run for each unit of rise. */
    readonly slope: Figure;
    readonly rampWidth: Figure;
  };
}

const INCH: Millimetres = 25.4;
const inches = (value: number, source: string, note?: string): Figure => ({
  value: value * INCH,
  source,
  ...(note !== undefined && { note }),
});

const ADA_ROUTE = '2010 ADA Standards 403.5.1';
const ADA_TURN = '2010 ADA Standards 403.5.2';
const ADA_LEVELS = '2010 ADA Standards 303.2-303.4';
const ADA_PROTRUDING = '2010 ADA Standards 307.2';
const AISLE = 'IBC 2021 1030.9.1 and 2010 ADA Standards 403.5.1';
const CAPACITY = 'IBC 2018/2021 1005.3.2';
const GUARD = 'IBC 2018 1015.2 and 1015.3';
const STEPS = 'IBC 2018 1011.5.2';
const FEW_STEPS = 'IBC 2012 1003.5 exception 2';

const us: Profile = {
  walkway: {
    widths: [
      { ...inches(36, 'IBC 2021 1030.9.1 item 4, exception for fewer than 50 seats'), upTo: 49, bothSides: true },
      { ...inches(42, 'IBC 2021 1030.9.1 item 4'), upTo: Infinity, bothSides: true },
      { ...inches(36, AISLE), upTo: 50 },
      {
        ...inches(42, 'IBC 2021 1030.9.1 item 4 (seats on both sides), used here for over 50 people too'),
        upTo: Infinity,
      },
    ],
    needsPeople: false,
    operatorsOnly: inches(28, 'OSHA 29 CFR 1910.36(g)(2)'),
    perPerson: inches(0.2, CAPACITY),
    perPersonReduced: inches(0.15, `${CAPACITY}, exception for sprinklers and voice alarm`),
    perPersonBeyond: 0,
  },
  turn: {
    narrower: inches(48, ADA_TURN),
    lane: inches(42, ADA_TURN),
    end: inches(48, ADA_TURN),
    wideEnd: inches(60, `${ADA_TURN}, exception`),
  },
  pinch: {
    width: inches(32, `${ADA_ROUTE}, exception`),
    length: inches(24, `${ADA_ROUTE}, exception`),
    apart: inches(48, `${ADA_ROUTE}, exception`),
    route: inches(36, ADA_ROUTE),
  },
  headroom: inches(80, 'IBC 2015 1003.3.1, 2010 ADA Standards 307.4 and OSHA 29 CFR 1910.36(g)(1)'),
  door: inches(7, 'IBC 2015 1005.7.1'),
  projection: {
    reach: inches(4, ADA_PROTRUDING),
    above: inches(27, ADA_PROTRUDING),
    below: inches(80, ADA_PROTRUDING),
  },
  cable: {
    bare: inches(0.25, ADA_LEVELS),
    bevelled: inches(0.5, ADA_LEVELS),
    slope: { value: 12, source: '2010 ADA Standards 303.4 and 405.2' },
  },
  platform: {
    guardAbove: inches(30, GUARD),
    guard: inches(42, GUARD),
    leastRiser: inches(4, STEPS),
    mostRiser: inches(7, STEPS),
    tread: inches(11, STEPS),
    treadOfFew: inches(13, FEW_STEPS),
    slope: { value: 12, source: '2010 ADA Standards 405.2' },
    rampWidth: inches(36, '2010 ADA Standards 405.5'),
  },
};

const ADB = 'Approved Document B vol. 2 (England), table of exit widths';

const BORROWED = 'no UK figure was read for this: the US figure stands in';

const uk: Profile = {
  ...borrowed(us),
  walkway: {
    widths: [
      { value: 750, source: ADB, upTo: 60 },
      { value: 850, source: ADB, upTo: 110 },
      { value: 1050, source: ADB, upTo: 220 },
    ],
    needsPeople: true,
    wheelchair: {
      value: 900,
      source: 'HM Government guide to fire safety in places of assembly, escape route widths',
    },
    operatorsOnly: borrowed(us.walkway.operatorsOnly),
    perPerson: { value: 5, source: ADB },
    perPersonBeyond: 220,
  },
};

/** `generic` names no law: it takes the figures that the most documents share. */
export const profiles: Readonly<Record<LimitProfile, Profile>> = { us, uk, generic: us };

/** The same figures, each with a word that it comes from elsewhere. */
function borrowed<T extends object>(part: T): T {
  if ('value' in part && 'source' in part) return { ...part, note: BORROWED };
  return Object.fromEntries(
    Object.entries(part).map(([key, value]) => [key, isGroup(value) ? borrowed(value) : (value as unknown)]),
  ) as T;
}

function isGroup(value: unknown): value is object {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

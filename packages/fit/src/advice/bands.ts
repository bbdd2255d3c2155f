import type { Curve, HeightBands, PersonBand } from '../assessment.js';
import type { Choice, Place } from '../assess/choices.js';
import { sdOf } from '../bodies/body.js';
import type { DimensionName } from '../bodies/dimensions.js';
import { bodyPart } from '../stations/demand.js';
import { allSettings, narrow, type Settings } from '../stations/settings.js';
import type { Heights, Rule } from '../stations/rules.js';
import { sharesOf } from '../stations/shares.js';
import type { Person } from '../stations/station.js';
import { tolerant } from '../stations/demand.js';
import type { Millimetres, Range } from '../units.js';

/** Curves are drawn in steps that a person would notice. */
const CURVE_STEP: Millimetres = 10;

/** For which values of a height each person is served, and the values that serve every named operator. */
export function bandsOf(choice: Choice): HeightBands {
  const each = choice.places.map((place) => bandOf(choice, place));
  const named = each.filter((_, index) => choice.places[index]!.person.kind === 'operator');
  const all = named.length > 0 ? meetAll(named.map(({ band }) => band)) : undefined;
  return { part: choice.kind, of: choice.of, each, ...(all && { all }) };
}

/** Share served against a height. */
export function curveOf(choice: Choice, place: Place): Curve {
  const points = gridOf(choice.within).map((height) => {
    const { rules, heights } = choice.at(place, height);
    const { person } = place;
    return {
      height,
      share: sharesOf(rules, 'preferred', heights, person).joint,
      shareAtLimit: sharesOf(rules, 'outer', heights, person).joint,
    };
  });
  return { part: choice.kind, of: choice.of, who: place.person.name, posture: place.posture, points };
}

function bandOf(choice: Choice, place: Place): PersonBand {
  const { person, posture, station } = place;
  const about = { who: person.name, posture, workstation: station.name };
  if (person.kind === 'crowd') {
    const served = gridOf(choice.within).filter((height) => {
      const { rules, heights } = choice.at(place, height);
      return sharesOf(rules, 'preferred', heights, person).joint >= person.wanted;
    });
    const band = served.length > 0 ? { min: served[0]!, max: served[served.length - 1]! } : undefined;
    return { ...about, basis: 'share', ...(band ? { band } : blocked(weakestOf(choice, place))) };
  }
  const band = exactBand(choice, place);
  const basis = isMeasured(place.setup.rules, person) ? 'measured' : 'average';
  return { ...about, basis, ...(band ? { band } : blocked(unmetOf(choice, place))) };
}

function blocked(check: string | undefined): Pick<PersonBand, 'blockedBy'> {
  return check === undefined ? {} : { blockedBy: check };
}

/** The first check that no value meets by itself; undefined if only all together are too much. */
function unmetOf(choice: Choice, place: Place): string | undefined {
  const alone = (check: string): Choice => ({
    ...choice,
    at(other, value) {
      const setup = choice.at(other, value);
      return { ...setup, rules: setup.rules.filter((rule) => rule.check === check) };
    },
  });
  return place.setup.rules.find(({ check }) => {
    const rules = place.setup.rules.filter((rule) => rule.check === check);
    return !exactBand(alone(check), { ...place, setup: { ...place.setup, rules } });
  })?.check;
}

/** The check that keeps most of a crowd from being served where most of it is. */
function weakestOf(choice: Choice, place: Place): string | undefined {
  const { person } = place;
  const tried = gridOf(choice.within).map((height) => {
    const { rules, heights } = choice.at(place, height);
    return { rules, shares: sharesOf(rules, 'preferred', heights, person) };
  });
  const best = tried.reduce((a, b) => (b.shares.joint > a.shares.joint ? b : a));
  return best.rules[best.shares.byRule.indexOf(Math.min(...best.shares.byRule))]?.check;
}

/** Interval arithmetic on the rules: exact for a desk or a seat; a ring changes the rules, so its steps are tried. */
export function exactBand(choice: Choice, place: Place): Range | undefined {
  if (choice.kind === 'ring') {
    const served = gridOf(choice.within, 1).filter((value) => {
      const { rules, heights } = choice.at(place, value);
      return openSettings(rules, heights, place.person) !== undefined;
    });
    return served.length > 0 ? { min: served[0]!, max: served[served.length - 1]! } : undefined;
  }
  const { seat, desk } = place.setup.heights;
  const heights = choice.kind === 'desk' ? { seat, desk: choice.within } : { seat: choice.within, desk };
  const open = openSettings(place.setup.rules, heights, place.person);
  return open && (choice.kind === 'desk' ? deskSpan(open) : seatSpan(open));
}

/** The settings at which a person's average body meets every preferred band; undefined if there are none. */
export function openSettings(rules: readonly Rule[], heights: Heights, person: Person): Settings | undefined {
  const settings = allSettings(heights.seat, heights.desk);
  const met = rules
    .flatMap((rule) => rule.demands)
    .every(({ form, preferred }) => narrow(settings, form, bodyPart(form, person.dimensions), tolerant(preferred)));
  return met ? settings : undefined;
}

export function seatSpan(s: Settings): Range {
  return { min: Math.max(s.seatMin, s.deskMin - s.gapMax), max: Math.min(s.seatMax, s.deskMax - s.gapMin) };
}

function deskSpan(s: Settings): Range {
  return { min: Math.max(s.deskMin, s.seatMin + s.gapMin), max: Math.min(s.deskMax, s.seatMax + s.gapMax) };
}

function isMeasured(rules: readonly Rule[], person: Person): boolean {
  const names = rules.flatMap(({ demands }) =>
    demands.flatMap(({ form }) => Object.keys(form.body) as DimensionName[]),
  );
  return names.every((name) => sdOf(person.body, name) < 0.5);
}

/** What lies in every band; nothing if one of them is none. */
export function meetAll(bands: readonly (Range | undefined)[]): Range | undefined {
  const known = bands.flatMap((band) => band ?? []);
  if (known.length < bands.length) return undefined;
  const min = Math.max(...known.map((band) => band.min));
  const max = Math.min(...known.map((band) => band.max));
  return min <= max ? { min, max } : undefined;
}

function gridOf({ min, max }: Range, step = CURVE_STEP): Millimetres[] {
  return Array.from({ length: Math.floor((max - min) / step) + 1 }, (_, index) => min + index * step);
}

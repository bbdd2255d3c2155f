import { type LangiumDocument, TextDocument } from 'langium';
import {
  type Booth,
  type ChosenProperty,
  exampleIn,
  type HeightPart,
  type Origin,
  type Plan,
  typeLength,
} from '@boothwright/fit';
import type { Range } from 'vscode-languageserver-types';
import type { Computation } from '../computation.js';
import type { BoothServices } from '../services.js';
import type { Kind, PropertyEntry } from '../vocabulary/entries.js';
import type { Item } from './items.js';
import { itemKind } from './items.js';
import { firstOf, type Writing } from './snippets.js';

/** The part of a text that a value would replace, in characters from its beginning. */
export interface Slot {
  readonly start: number;
  readonly end: number;
}

/**
 * Values worth choosing for a property, each with the reason: what the checks would ask for if another value stood there, and the
 * heights that serve the people of a workstation. Tried on a copy of the text; nothing if nobody can say.
 */
export async function worthChoosing(
  document: LangiumDocument,
  { kind, name, entry }: { readonly kind: Kind; readonly name: string | undefined; readonly entry: PropertyEntry },
  slot: Slot,
  writing: Writing,
  services: BoothServices,
): Promise<Item[]> {
  const part = partOf(kind, entry.key);
  const property = part ?? services.Computation.chosen?.find((each) => each === `${kind} ${entry.key}`);
  if (!property) return [];
  const text = document.textDocument.getText();
  const start = slot.start + 1;
  const seed = seedOf(entry, part, writing);
  const tried = `${text.slice(0, slot.start)} ${seed} ${text.slice(slot.end)}`;
  const booth = await services.Trial.boothOf(document, tried);
  if (!booth) return [];
  const draft = TextDocument.create(document.uri.toString(), 'booth', 0, tried);
  const items = new Map<string, Item>();
  for (const { title, changes } of proposalsFor(booth, property, name, services)) {
    const [change] = changes;
    if (!change || changes.length > 1 || change.origin.uri !== draft.uri) continue;
    const place = { start: draft.offsetAt(change.origin.start), end: draft.offsetAt(change.origin.end) };
    if (place.start !== start || items.has(change.text)) continue;
    const end = Math.max(slot.end, place.end - tried.length + text.length);
    const range: Range = {
      start: document.textDocument.positionAt(slot.start),
      end: document.textDocument.positionAt(end),
    };
    items.set(change.text, { label: change.text, kind: itemKind.value, detail: effectOf(title, change.text), range });
  }
  return [...items.values()];
}

interface Proposal {
  readonly title: string;
  readonly changes: readonly { readonly origin: Origin; readonly text: string }[];
}

/**
 * Nothing also if the checks break on the booth, which its diagnostics say. One height of a desk that serves everyone is enough: the checks
 * are asked only where there is none.
 */
function proposalsFor(
  booth: Booth,
  property: HeightPart | ChosenProperty,
  name: string | undefined,
  { Computation }: BoothServices,
): readonly Proposal[] {
  try {
    if (property !== 'desk' && property !== 'seat' && property !== 'ring')
      return Computation.remediesOf(booth, property);
    const plans = plansFor(booth, property, name, Computation);
    const isEnough = ({ leftOut, settings: [setting] }: Plan) =>
      setting!.part === 'desk' && setting!.value.min === setting!.value.max && leftOut.length === 0;
    return plans.some(isEnough) ? plans : [...plans, ...Computation.remediesOf(booth, property)];
  } catch {
    return [];
  }
}

/** Those that change nothing else. One of a desk is for all who work at it, whichever of their workstations is asked. */
function plansFor(booth: Booth, part: HeightPart, name: string | undefined, computation: Computation): readonly Plan[] {
  const stations = booth.workstations.filter(({ desk, seat }) => (part === 'desk' ? desk : seat)?.name === name);
  return stations
    .flatMap((station) => computation.adviseStation(booth, station.name)?.plans ?? [])
    .filter(({ settings }) => settings.length === 1 && settings[0]!.part === part);
}

function partOf(kind: Kind, key: string): HeightPart | undefined {
  if (kind === 'desk') return key === 'height' ? 'desk' : undefined;
  if (kind !== 'stool' && kind !== 'chair') return undefined;
  return key === 'seat' ? 'seat' : key === 'foot-ring' ? 'ring' : undefined;
}

/** Desk, seat and screen start from as low as can be, where they serve nobody, so that what serves people stands out. */
function seedOf({ shape, example }: PropertyEntry, part: HeightPart | undefined, { show }: Writing): string {
  const isHeight = shape.is === 'length' && (part === 'desk' || part === 'seat' || shape.from?.includes('desk'));
  if (isHeight && part !== 'ring') return typeLength(Math.max(shape.min, 1), show);
  return firstOf(exampleIn(example, show));
}

/** What a title promises: 'Set the desk Left to 41 1/4 in: suits Noor' promises that it suits Noor. */
function effectOf(title: string, value: string): string {
  const effect = title.slice(title.indexOf(': ') + 1).trim();
  return effect.includes(value) ? title : effect;
}

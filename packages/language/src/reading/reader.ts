import { type LangiumDocument, UriUtils } from 'langium';
import type {
  Acceptance,
  Booth,
  DisplayUnit,
  LimitOverride,
  LimitProfile,
  Named,
  Placement,
  Room,
  Seat,
  Workstation,
} from '@boothwright/fit';
import { bounds } from '../bounds.js';
import {
  type Accept,
  type Block,
  type Document,
  isAccept,
  isBlock,
  isDocument,
  isLimit,
  type Limit,
} from '../generated/ast.js';
import { parseQuantity } from '../quantity/quantity.js';
import type { Instead } from '../syntax/patch.js';
import { Remembered } from '../syntax/remembered.js';
import { readText } from '../syntax/texts.js';
import { originOf, partOf } from '../syntax/tree.js';
import { rootsOf } from '../workspace/imports.js';
import { readCable, readPlacement, readPlatform, readRack, readSkirt, readWalkway } from './floor.js';
import { readDesk, readMonitor, readSeat } from './furniture.js';
import { readCrowd, readOperator } from './people.js';
import { eachNamed, readRoom } from './room.js';
import { Sheet } from './sheet.js';
import { readWorkstation } from './stations.js';
import { usedBlocks } from './used.js';

/**
 * The Booth that a file describes, together with the files that it imports. `visible` is the file itself and then those. Of
 * imported furniture, screens and people only those that are used count. What is faulty is left out, not guessed.
 * `instead` is a block to read in place of one of the file.
 */
export function readBooth(document: LangiumDocument, visible: readonly LangiumDocument[], instead?: Instead): Booth {
  const roots = rootsOf(visible);
  const counted = (block: Block) => (block === instead?.of ? instead.block : block);
  const own = roots[0]?.blocks ?? [];
  const booth = own.find(({ kind }) => kind === 'booth');
  const show = showOf(document);
  const blocks = usedBlocks(roots).map(counted);
  const byKind = new Map<Block['kind'], Block[]>();
  for (const block of blocks) {
    const same = byKind.get(block.kind);
    if (same) same.push(block);
    else byKind.set(block.kind, [block]);
  }
  const each = <T>(kind: Block['kind'], read: (sheet: Sheet, named: Named) => T) =>
    (byKind.get(kind) ?? []).flatMap((block) => readings.of(block, () => eachNamed([new Sheet(block)], read)) as T[]);
  const room = byKind.get('room')?.[0];
  return {
    name: nameOf(document, booth),
    ...(booth ? frames.of(booth, () => readFrame(booth)) : readFrame(undefined)),
    show,
    accepted: roots.flatMap((root) => acceptsOf(root, counted)),
    room: room && (readings.of(room, () => readRoom(new Sheet(room))) as Room),
    operators: each('operator', readOperator),
    crowds: each('crowd', readCrowd),
    desks: each('desk', readDesk),
    seats: blocks
      .filter(({ kind }) => kind === 'stool' || kind === 'chair')
      .flatMap((block) => readings.of(block, () => eachNamed([new Sheet(block)], readSeat)) as Seat[]),
    monitors: each('monitor', readMonitor),
    workstations: withinBounds(each('workstation', readWorkstation)),
    walkways: each('walkway', readWalkway),
    racks: each('rack', readRack),
    skirts: each('skirt', readSkirt),
    platforms: each('platform', readPlatform),
    cables: each('cable', readCable),
    placements: placedWithinBounds(
      roots
        .flatMap((root) => root.placements)
        .flatMap(
          (node) => (readings.of(node, () => readPlacement(node, new Sheet(node))) as Placement | undefined) ?? [],
        ),
    ),
  };
}

/** What was read of each declaration. The same object as last time tells the computation that nothing of it changed. */
const readings = new Remembered<unknown>();
const frames = new Remembered<ReturnType<typeof readFrame>>();

function readFrame(booth: Block | undefined): Pick<Booth, 'origin' | 'limits' | 'shoe' | 'slump' | 'overrides'> {
  const frame = new Sheet(booth ?? emptyBooth);
  return {
    origin: booth && originOf(partOf(booth, booth.title ? 'title' : 'kind')),
    limits: frame.wordOr<LimitProfile>('limits').value,
    shoe: frame.lengthOr('shoe'),
    slump: frame.lengthOr('slump'),
    overrides: (booth?.items ?? []).filter(isLimit).flatMap(readOverride),
  };
}

/** As many people as are computed; a workstation that keeps all of its own stays the same object. */
function withinBounds(workstations: readonly Workstation[]): Workstation[] {
  let places = 0;
  return workstations.map((station) => {
    const people = station.people.slice(0, Math.min(bounds.people, bounds.places - places));
    places += people.length;
    return people.length === station.people.length ? station : { ...station, people };
  });
}

/** As many placed pieces as are computed. */
function placedWithinBounds(placements: readonly Placement[]): Placement[] {
  let count = 0;
  return placements.filter(({ pieces }) => (count += pieces.length) <= bounds.pieces);
}

/** A file is a booth, to be assessed, if it has a booth or a workstation; else it holds furniture for others. */
export function isBooth(document: LangiumDocument): boolean {
  const root = document.parseResult.value;
  return isDocument(root) && root.blocks.some(({ kind }) => kind === 'booth' || kind === 'workstation');
}

/** The unit that a file shows lengths in. */
export function showOf(document: LangiumDocument): DisplayUnit {
  const root = document.parseResult.value;
  const booth = isDocument(root) ? root.blocks.find(({ kind }) => kind === 'booth') : undefined;
  return new Sheet(booth ?? emptyBooth).wordOr<DisplayUnit>('show').value;
}

/** Stands in for the booth block of a file without one: all defaults. */
const emptyBooth = { $type: 'Block', kind: 'booth', items: [] } as unknown as Block;

/** Outside of blocks first, then block by block. */
function acceptsOf(root: Document, counted: (block: Block) => Block): readonly Acceptance[] {
  return [
    ...root.accepts.flatMap((node) => acceptances.of(node, () => readAcceptance(node))),
    ...root.blocks
      .map(counted)
      .filter((block) => acceptsIn(block).length > 0)
      .flatMap((block) => acceptances.of(block, () => acceptsIn(block).flatMap(readAcceptance))),
  ];
}

const acceptances = new Remembered<readonly Acceptance[]>();

/** Those of the block itself, then of the blocks in it. */
function acceptsIn({ items }: Block): readonly Accept[] {
  return [...items.filter(isAccept), ...items.filter(isBlock).flatMap((nested) => nested.items.filter(isAccept))];
}

function nameOf(document: LangiumDocument, booth: Block | undefined): string {
  const title = booth?.title === undefined ? '' : readText(booth.title).value;
  return title === '' ? UriUtils.basename(document.uri).replace(/\.booth$/, '') : title;
}

function readOverride({ check, value, reason, $cstNode }: Limit): LimitOverride[] {
  const quantity = value && !value.range ? parseQuantity(value.text) : undefined;
  if (!check || !reason || quantity?.is !== 'length') return [];
  return [{ check, value: quantity.value, reason: readText(reason).value, origin: originOf($cstNode) }];
}

function readAcceptance(node: Accept): Acceptance[] {
  const { check, reason, subject, $container } = node;
  const text = reason && readText(reason).value;
  if (!check || !text || (node.on && !subject?.ref)) return [];
  const own = isBlock($container) ? subjectOf($container) : undefined;
  return [{ check, subject: subject?.$refText ?? own, reason: text, origin: originOf(node.$cstNode) }];
}

/** Acceptances inside a block are for that block; a nested block without a name stands for the one that holds it. */
function subjectOf(block: Block): string | undefined {
  return block.name ?? (isBlock(block.$container) ? subjectOf(block.$container) : undefined);
}

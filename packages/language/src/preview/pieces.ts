import { AstUtils, type AstNode, CstUtils, type LangiumDocument } from 'langium';
import type { Booth, Origin, PieceKind, PieceRef, TextPosition } from '@boothwright/fit';
import { type Block, isBlock, isDocument, isPlacement, isScreen } from '../generated/ast.js';

/** What a block of the text stands for; blocks of other kinds stand for the block that holds them. */
const kindsOfBlocks: Partial<Record<Block['kind'], PieceKind>> = {
  room: 'room',
  stage: 'stage',
  seating: 'seating',
  balcony: 'balcony',
  door: 'door',
  column: 'column',
  'wheelchair-space': 'wheelchair-space',
  watchers: 'watchers',
  operator: 'operator',
  crowd: 'crowd',
  desk: 'desk',
  stool: 'seat',
  chair: 'seat',
  rack: 'rack',
  platform: 'platform',
  skirt: 'skirt',
  walkway: 'walkway',
  workstation: 'workstation',
  control: 'control',
};

/**
 * What a place in a text speaks of: what is named there, else what the block around it describes. A monitor is every screen that
 * shows it; a placement is all that it places.
 */
export function piecesAt(document: LangiumDocument, position: TextPosition, booth: Booth): readonly PieceRef[] {
  const root = document.parseResult.value;
  if (!isDocument(root)) return [];
  const offset = document.textDocument.offsetAt(position);
  const around = nodesAround(root, offset);
  const named = referenceAt(root, offset);
  return (named && piecesOf(named, booth)) ?? firstOf(around, (node) => piecesOf(node, booth)) ?? [];
}

/** Where a thing of a booth is declared; nothing if the booth has no such thing. */
export function sourceOf({ kind, name, workstation }: PieceRef, booth: Booth): Origin | undefined {
  const { room } = booth;
  const named = (list: readonly { readonly name: string; readonly origin: Origin }[] = []) =>
    list.find((each) => each.name === name)?.origin;
  const station = booth.workstations.find((each) => each.name === workstation);
  switch (kind) {
    case 'room':
      return room?.origin;
    case 'stage':
    case 'seating':
    case 'balcony':
      return room?.[kind]?.origin;
    case 'door':
      return named(room?.doors);
    case 'column':
      return named(room?.columns);
    case 'wheelchair-space':
      return named(room?.wheelchairSpaces);
    case 'watchers':
      return named(room?.watchers);
    case 'operator':
      return named(booth.operators);
    case 'crowd':
      return named(booth.crowds);
    case 'desk':
      return named(booth.desks);
    case 'seat':
      return named(booth.seats);
    case 'rack':
      return named(booth.racks);
    case 'platform':
      return named(booth.platforms);
    case 'skirt':
      return named(booth.skirts);
    case 'walkway':
      return named(booth.walkways);
    case 'workstation':
      return named(booth.workstations);
    case 'screen':
      return station?.screens.find(({ monitor }) => monitor.name === name)?.monitor.origin ?? named(booth.monitors);
    case 'control':
      return named(station?.controls);
  }
}

/** The block that is declared at a place; where a workstation names a monitor, the monitor's. */
export function blockAt(document: LangiumDocument, place: TextPosition): Block | undefined {
  const root = document.parseResult.value;
  const around = nodesAround(root, document.textDocument.offsetAt(place));
  return firstOf(around, (node) => (isScreen(node) ? node.monitor?.ref : isBlock(node) ? node : undefined));
}

/** The blocks and placements around an offset, the innermost first. */
function nodesAround(root: AstNode, offset: number): readonly AstNode[] {
  const inside = AstUtils.streamContents(root).find(
    ({ $cstNode }) => $cstNode && $cstNode.offset <= offset && offset <= $cstNode.end,
  );
  return inside ? [...nodesAround(inside, offset), inside] : [];
}

/** The block that the name at an offset refers to. */
function referenceAt(root: AstNode, offset: number): Block | undefined {
  const leaf = root.$cstNode && CstUtils.findDeclarationNodeAtOffset(root.$cstNode, offset, /[\p{L}\p{N}_-]/u);
  if (!leaf || isScreen(leaf.astNode)) return undefined;
  const found = AstUtils.streamReferences(leaf.astNode).find(
    ({ reference }) => reference.$refNode?.offset === leaf.offset,
  );
  const target = found && 'ref' in found.reference ? found.reference.ref : undefined;
  return isBlock(target) ? target : undefined;
}

function piecesOf(node: AstNode, booth: Booth): readonly PieceRef[] | undefined {
  if (isPlacement(node)) return node.pieces.flatMap(({ ref }) => (ref && piecesOf(ref, booth)) ?? []);
  if (isScreen(node)) return screens(node.monitor?.$refText, booth, stationAround(node));
  if (!isBlock(node)) return undefined;
  if (node.kind === 'monitor') return screens(node.name, booth);
  const kind = kindsOfBlocks[node.kind];
  if (!kind) return undefined;
  const workstation = kind === 'control' ? stationAround(node) : undefined;
  return [{ kind, ...(node.name !== undefined && { name: node.name }), ...(workstation && { workstation }) }];
}

/** The screens of a booth that show a monitor. */
function screens(monitor: string | undefined, { workstations }: Booth, station?: string): readonly PieceRef[] {
  return workstations
    .filter(({ name }) => station === undefined || name === station)
    .filter((each) => each.screens.some((screen) => screen.monitor.name === monitor))
    .map(({ name: workstation }) => ({ kind: 'screen', name: monitor!, workstation }));
}

function stationAround(node: AstNode): string | undefined {
  const station = AstUtils.getContainerOfType(node.$container, isBlock);
  return station?.kind === 'workstation' ? station.name : undefined;
}

function firstOf<T, R>(items: readonly T[], pick: (item: T) => R | undefined): R | undefined {
  for (const item of items) {
    const picked = pick(item);
    if (picked !== undefined) return picked;
  }
  return undefined;
}

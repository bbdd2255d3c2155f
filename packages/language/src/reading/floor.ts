import type { Cable, Named, Placement, Platform, Rack, Side, Skirt, Walkway } from '@boothwright/fit';
import type { Placement as PlacementNode, Side as SideNode } from '../generated/ast.js';
import { originOf } from '../syntax/tree.js';
import { pieceKinds } from '../vocabulary/entries.js';
import { propertyOf } from '../vocabulary/vocabulary.js';
import { referenceOf, type Sheet } from './sheet.js';

export function readWalkway(sheet: Sheet, named: Named): Walkway {
  const [one, other] = (sheet.between()?.sides ?? []).map(readSide);
  return {
    ...named,
    between: one && other && [one, other],
    serves: sheet.number('serves'),
    users: sheet.wordOr('users'),
    seats: sheet.wordOr('seats'),
    turns: sheet.flag('turns'),
    atTurn: sheet.length('at-turn'),
    afterTurn: sheet.length('after-turn'),
    headroom: sheet.length('headroom'),
    pinches: sheet.blocks('pinch').map((pinch) => ({
      origin: pinch.headOrigin,
      at: pinch.length('at'),
      width: pinch.length('width'),
      length: pinch.length('length'),
    })),
    projections: sheet.blocks('projection').map((projection) => ({
      origin: projection.headOrigin,
      height: projection.length('height'),
      reach: projection.length('reach'),
    })),
  };
}

function readSide(node: SideNode): Side | undefined {
  const origin = originOf(node.$cstNode);
  if (node.landmark) return { kind: 'landmark', name: node.landmark, origin };
  const piece = node.piece?.ref;
  return piece && pieceKinds.includes(piece.kind) ? { kind: 'piece', name: node.piece!.$refText, origin } : undefined;
}

export function readRack(sheet: Sheet, named: Named): Rack {
  const desk = sheet.references('under')[0];
  return {
    ...named,
    units: sheet.number('units'),
    width: sheet.length('width'),
    depth: sheet.length('depth'),
    frame: sheet.lengthOr('frame'),
    plugs: sheet.lengthOr('plugs'),
    under: desk && { desk, at: sheet.lengthOr('at'), setback: sheet.lengthOr('setback') },
    weight: sheet.number('weight'),
  };
}

export function readSkirt(sheet: Sheet, named: Named): Skirt {
  type Sides = Skirt['sides']['value'];
  const usual = propertyOf('skirt', 'sides')!.default as Sides[number];
  return {
    ...named,
    on: sheet.references('on'),
    sides: sheet.words<Sides[number]>('sides') ?? { value: [usual], isDefault: true },
    drop: sheet.length('drop'),
    length: sheet.length('length'),
    clips: sheet.length('clips'),
    flameCertificate: sheet.text('flame-certificate'),
  };
}

export function readPlatform(sheet: Sheet, named: Named): Platform {
  const [steps] = sheet.blocks('steps');
  const [ramp] = sheet.blocks('ramp');
  return {
    ...named,
    at: sheet.point('at'),
    width: sheet.length('width'),
    depth: sheet.length('depth'),
    height: sheet.length('height'),
    guard: sheet.length('guard'),
    steps: steps && {
      origin: steps.headOrigin,
      risers: steps.number('risers'),
      tread: steps.length('tread'),
      handrail: steps.flag('handrail'),
    },
    ramp: ramp && { origin: ramp.headOrigin, length: ramp.length('length'), width: ramp.length('width') },
  };
}

export function readCable(sheet: Sheet, named: Named): Cable {
  return {
    ...named,
    across: sheet.references('across')[0],
    height: sheet.length('height'),
    cover: sheet.wordOr('cover'),
    slope: sheet.length('slope'),
  };
}

export function readPlacement(node: PlacementNode, sheet: Sheet): Placement | undefined {
  const at = sheet.point('at');
  const pieces = node.pieces.filter(({ ref }) => ref?.kind === 'desk' || ref?.kind === 'rack').map(referenceOf);
  if (!at || pieces.length === 0 || pieces.length < node.pieces.length) return undefined;
  return { pieces, origin: originOf(node.$cstNode), at, turn: sheet.numberOr('turn') };
}

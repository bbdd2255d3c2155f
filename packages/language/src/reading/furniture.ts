import type { Desk, FootRing, Hanging, Legs, Monitor, Named, Seat, ToeSpace } from '@boothwright/fit';
import { parseQuantity } from '../quantity/quantity.js';
import { kindOf } from '../syntax/tree.js';
import { propertyOf } from '../vocabulary/vocabulary.js';
import type { Sheet } from './sheet.js';

const hangingKinds = ['tray', 'apron', 'drawer'] as const;

export function readDesk(sheet: Sheet, named: Named): Desk {
  const [legs] = sheet.blocks('legs');
  const [toeSpace] = sheet.blocks('toe-space');
  return {
    ...named,
    width: sheet.length('width'),
    depth: sheet.length('depth'),
    height: sheet.range('height'),
    top: sheet.lengthOr('top'),
    hanging: hangingKinds.flatMap((kind) => sheet.blocks(kind).map((each) => readHanging(kind, each))),
    legs: legs && readLegs(legs),
    closed: sheet.flag('closed'),
    toeSpace: toeSpace && readToeSpace(toeSpace),
    rating: sheet.number('rating'),
  };
}

function readHanging(kind: Hanging['kind'], sheet: Sheet): Hanging {
  return {
    kind,
    origin: sheet.headOrigin,
    drop: sheet.length('drop'),
    fromEdge: sheet.lengthOr('from-edge'),
    depth: sheet.length('depth'),
  };
}

function readLegs(sheet: Sheet): Legs {
  return {
    origin: sheet.headOrigin,
    width: sheet.length('width'),
    depth: sheet.length('depth'),
    thickness: sheet.length('thickness'),
    inset: sheet.lengthOr('inset'),
  };
}

function readToeSpace(sheet: Sheet): ToeSpace {
  return { origin: sheet.headOrigin, depth: sheet.length('depth'), height: sheet.length('height') };
}

export function readSeat(sheet: Sheet, named: Named): Seat {
  return {
    ...named,
    kind: kindOf(sheet.holder) === 'stool' ? 'stool' : 'chair',
    seat: sheet.range('seat'),
    depth: sheet.length('seat-depth'),
    width: sheet.length('seat-width'),
    base: sheet.length('base'),
    footRing: readFootRing(sheet),
  };
}

function readFootRing(sheet: Sheet): FootRing | undefined {
  const distance = sheet.length('foot-ring');
  const meaning = sheet.meaning('foot-ring')?.meaning;
  if (!distance || meaning?.is !== 'length') return undefined;
  return { from: meaning.from === 'seat' ? 'seat' : 'floor', distance };
}

export function readMonitor(sheet: Sheet, named: Named): Monitor {
  const usual = parseQuantity(propertyOf('monitor', 'aspect')!.default!);
  if (usual.is !== 'ratio') throw new Error('The default aspect is no ratio.');
  return {
    ...named,
    diagonal: sheet.length('diagonal'),
    aspect: sheet.pair('aspect') ?? { value: { across: usual.across, down: usual.down }, isDefault: true },
    pixels: sheet.pair('pixels'),
    text: sheet.given('text', (meaning) => (meaning.is === 'text size' ? meaning.size : undefined)),
    weight: sheet.number('weight'),
  };
}

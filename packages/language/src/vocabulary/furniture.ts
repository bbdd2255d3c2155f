import { type BlockEntry, flag, length, type PropertyEntry, weight } from './entries.js';

const hanging: readonly PropertyEntry[] = [
  { key: 'drop', shape: length(5, 900), says: 'How far it reaches below the underside of the top.', example: '4in' },
  {
    key: 'from-edge',
    shape: length(0, 2000),
    says: 'From the near edge of the desk to its near side.',
    example: '2in',
    default: '0mm',
  },
  {
    key: 'depth',
    shape: length(5, 2000),
    says: 'From its near side to its far side. Without it, it reaches to the far edge of the desk.',
    example: '12in',
  },
];
const heavy: PropertyEntry = { key: 'weight', shape: weight(500), says: 'What it weighs.', example: '12lb' };
const seat: readonly PropertyEntry[] = [
  {
    key: 'seat',
    shape: length(200, 1100, { range: 'allowed' }),
    says: 'The top of the seat above the floor, with a person on it. A range means adjustable.',
    example: '28in..32in',
  },
  { key: 'seat-depth', shape: length(150, 700), says: 'The seat from front to back.', example: '16in' },
  { key: 'seat-width', shape: length(150, 900), says: 'The seat from side to side.', example: '17in' },
  { key: 'base', shape: length(150, 1000), says: 'The diameter of its base on the floor.', example: '20in' },
  {
    key: 'foot-ring',
    shape: length(20, 900, { from: ['floor', 'seat'] }),
    says: 'The height of the foot ring above the floor, or how far below the seat it hangs.',
    example: '18in below seat',
  },
];
const within = { within: 'desk', naming: 'none' } as const;

export const furnitureEntries: readonly BlockEntry[] = [
  {
    kind: 'desk',
    word: 'desk',
    within: 'file',
    naming: 'name',
    says: 'A desk, table or counter. Its near edge is the one that its operator faces it from.',
    example: 'desk Left { width 60in  depth 30in  height 41in  top 1in }',
    properties: [
      { key: 'width', shape: length(200, 8000), says: 'Along the near edge.', example: '60in' },
      { key: 'depth', shape: length(150, 3000), says: 'From the near edge to the far edge.', example: '30in' },
      {
        key: 'height',
        shape: length(250, 1600, { range: 'allowed' }),
        says: 'The top of the work surface above the floor that the operator stands on. A range means adjustable.',
        example: '41in',
      },
      { key: 'top', shape: length(3, 300), says: 'The thickness of the top.', example: '1in', default: '25mm' },
      { key: 'rating', shape: weight(2000, 1), says: 'What the maker lets it carry.', example: '150lb' },
      {
        key: 'closed',
        shape: flag,
        says: 'A panel closes the front below the top, seen from the operator.',
        example: '',
      },
    ],
  },
  {
    ...within,
    kind: 'tray',
    word: 'tray',
    says: 'A tray under the top, for a keyboard or for cables.',
    example: 'tray { drop 4in  from-edge 17in }',
    properties: hanging,
  },
  {
    ...within,
    kind: 'apron',
    word: 'apron',
    says: 'A board or rail under the top.',
    example: 'apron { drop 3in  depth 1in }',
    properties: hanging,
  },
  {
    ...within,
    kind: 'drawer',
    word: 'drawer',
    says: 'A drawer under the top.',
    example: 'drawer { drop 5in  depth 18in }',
    properties: hanging,
  },
  {
    ...within,
    kind: 'legs',
    word: 'legs',
    once: true,
    says: 'The leg frame: what stands under the top, measured over its outer sides.',
    example: 'legs { width 56in  depth 26in  thickness 2in }',
    properties: [
      { key: 'width', shape: length(50, 8000), says: 'Over the outer sides, along the near edge.', example: '56in' },
      { key: 'depth', shape: length(20, 3000), says: 'From near side to far side.', example: '26in' },
      { key: 'thickness', shape: length(5, 600), says: 'One leg, along the near edge.', example: '2in' },
      { key: 'inset', shape: length(0, 2000), says: 'From the near edge to the legs.', example: '2in', default: '0mm' },
    ],
  },
  {
    ...within,
    kind: 'toe-space',
    word: 'toe-space',
    once: true,
    says: 'Room for the feet at the foot of a closed front.',
    example: 'toe-space { depth 4in  height 4in }',
    properties: [
      { key: 'depth', shape: length(5, 1000), says: 'How far it reaches in.', example: '4in' },
      { key: 'height', shape: length(5, 1000), says: 'Its height above the floor.', example: '4in' },
    ],
  },
  {
    kind: 'stool',
    word: 'stool',
    within: 'file',
    naming: 'name',
    says: 'A high seat, mostly with a ring for the feet.',
    example: 'stool Tall { seat 26in..34in  foot-ring 18in below seat }',
    properties: seat,
  },
  {
    kind: 'chair',
    word: 'chair',
    within: 'file',
    naming: 'name',
    says: 'A seat low enough for feet on the floor.',
    example: 'chair Office { seat 16in..21in  seat-depth 17in }',
    properties: seat,
  },
  {
    kind: 'monitor',
    word: 'monitor',
    within: 'file',
    naming: 'name',
    says: 'A screen. Where it stands is said at each workstation that watches it.',
    example: 'monitor Lyrics { diagonal 24in  pixels 1920 x 1080 }',
    properties: [
      { key: 'diagonal', shape: length(70, 3000), says: 'The picture from corner to corner.', example: '24in' },
      {
        key: 'aspect',
        shape: { is: 'aspect' },
        says: 'Width to height of the picture.',
        example: '16:10',
        default: '16:9',
      },
      { key: 'pixels', shape: { is: 'pixels' }, says: 'Pixels across and down.', example: '1920 x 1080' },
      {
        key: 'text',
        shape: { is: 'text size' },
        says: 'The smallest text that must be read: a font size in px, or the height of a capital letter as a length.',
        example: '14px',
      },
      heavy,
    ],
  },
];

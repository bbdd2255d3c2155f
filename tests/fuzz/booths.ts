import { checks } from '@boothwright/fit';
import type {
  BlockEntry,
  Kind,
  LengthShape,
  PropertyEntry,
  Shape,
} from '../../packages/language/src/vocabulary/entries.js';
import { landmarks } from '../../packages/language/src/vocabulary/floor.js';
import { walls } from '../../packages/language/src/vocabulary/room.js';
import { entryOf, nestedBlocks, topLevel } from '../../packages/language/src/vocabulary/vocabulary.js';
import type { Random } from './random.js';

const names = [
  'Noor',
  'Tall',
  'Left',
  'Right',
  'Cues',
  'Sound',
  'Behind',
  'Ünal',
  '__proto__',
  'constructor',
  'toString',
];
const pieces: readonly Kind[] = [
  'desk',
  'stool',
  'chair',
  'monitor',
  'operator',
  'crowd',
  'rack',
  'platform',
  'walkway',
];
const millimetres: Record<string, number> = { mm: 1, cm: 10, m: 1000, in: 25.4, '"': 25.4, ft: 304.8, "'": 304.8 };

/** Writes booth files from the vocabulary's own tables: what may be said, mostly where it may be said. */
export class BoothWriter {
  private readonly known: { readonly kind: Kind; readonly name: string }[] = [];

  constructor(
    private readonly random: Random,
    /** How often a value keeps within the bounds that its table gives. */
    private readonly sanity: number,
  ) {}

  booth(): string {
    const { random } = this;
    const declared = pieces.flatMap((kind) =>
      random.times(0, kind === 'desk' || kind === 'operator' ? 2 : 1, () => {
        const name = random.chance(0.9) ? `${kind[0]!.toUpperCase()}${random.whole(1, 3)}` : random.pick(names);
        this.known.push({ kind, name });
        return { kind, name };
      }),
    );
    const blocks = declared.map(({ kind, name }) => this.block(entryOf(kind), name));
    const others = random.some(
      topLevel.filter(({ kind }) => !pieces.includes(kind) && kind !== 'place'),
      0.6,
    );
    const rest = others.map((entry) =>
      this.block(entry, entry.naming === 'name' ? this.freshName(entry.kind) : undefined),
    );
    const placed = random.times(0, 2, () => this.placement());
    const said = random.times(0, 1, () => this.statement());
    const lines = [...rest, ...blocks, ...placed, ...said];
    if (random.chance(0.1)) lines.unshift('import "furniture.booth"');
    if (random.chance(0.2)) lines.push(random.pick(['// a remark', '/* over\n two lines */', '']));
    return lines.sort(() => random.next() - 0.5).join(random.pick(['\n', '\n', '\r\n', '\n\n', ' ']));
  }

  private freshName(kind: Kind): string {
    const name = `${kind[0]!.toUpperCase()}${this.random.whole(1, 4)}`;
    this.known.push({ kind, name });
    return name;
  }

  private block(entry: BlockEntry, name: string | undefined): string {
    const { random } = this;
    const head = {
      title: () => random.pick([`"Hall ${random.whole(1, 9)}"`, '"A \\"b\\" & <c>"', '""', '']),
      name: () => name ?? this.freshName(entry.kind),
      none: () => '',
      reference: () => this.nameOf(['monitor']),
    }[entry.naming]();
    const items = [
      ...random.some(entry.properties, random.pick([0.3, 0.7, 0.95])).map((property) => this.property(property)),
      ...nestedBlocks(entry.kind).flatMap((nested) => random.times(0, 1, () => this.block(nested, undefined))),
    ];
    if (random.chance(0.1)) items.push(this.property(random.pick(entry.properties)));
    const gap = random.pick(['  ', '  ', '\n  ', ' ', ' // why\n']);
    return [entry.word, head, '{', items.join(gap), '}'].filter(Boolean).join(' ');
  }

  private property(property: PropertyEntry): string {
    const key = this.random.pick([property.key, ...(property.aliases ?? [])]);
    const value = this.random.chance(0.15) ? property.example : this.value(property.shape);
    return `${key} ${value}`.trim();
  }

  private placement(): string {
    const { random } = this;
    const what = random.times(1, 2, () => this.nameOf(['desk', 'rack'])).join(', ');
    const row = random.chance(0.3) ? ' in a row' : '';
    const turn = random.chance(0.3)
      ? ` turn ${this.value({ is: 'angle', max: 360, directions: ['right', 'left'] })}`
      : '';
    return `place ${what}${row} at ${this.value({ is: 'point', max: 20_000 })}${turn}`;
  }

  private statement(): string {
    const { random } = this;
    const check = random.pick(checks).id;
    return random.chance(0.5)
      ? `accept ${check}${random.chance(0.5) ? ` on ${this.nameOf(pieces)}` : ''} because "it is so"`
      : `limit ${check} ${this.length({ is: 'length', min: 0, max: 3000 })} because "the house says so"`;
  }

  private nameOf(kinds: readonly Kind[]): string {
    const fitting = this.known.filter(({ kind }) => kinds.includes(kind));
    return fitting.length > 0 && this.random.chance(0.95) ? this.random.pick(fitting).name : this.random.pick(names);
  }

  private value(shape: Shape): string {
    const { random } = this;
    const several = (make: () => string) => random.times(1, 3, make).join(', ');
    switch (shape.is) {
      case 'length':
        return this.length(shape);
      case 'point':
        return `${this.size(0, Math.min(shape.max, 15_000))}, ${this.size(0, Math.min(shape.max, 15_000))}`;
      case 'angle':
        return `${this.number(0, shape.max, 1)}${random.pick(['deg', '°'])}${this.word(['', ...shape.directions])}`;
      case 'share':
        return `${this.number(0, 100, 0)}%`;
      case 'weight':
        return `${this.number(shape.min, shape.max, 1)}${random.pick(['kg', 'lb', ' kg'])}`;
      case 'count':
        return this.number(shape.min, Math.min(shape.max, 500), 0);
      case 'ages':
        return `${random.whole(shape.min, shape.max)}${random.pick(['', '..'])}`.replace(/\.\.$/, `..${shape.max}`);
      case 'text size':
        return random.chance(0.5) ? `${this.number(1, 80, 0)}px` : this.size(1, 60);
      case 'aspect':
        return `${random.whole(1, 32)}:${random.whole(1, 18)}`;
      case 'pixels':
        return `${this.number(1, 8000, 0)} x ${this.number(1, 5000, 0)}`;
      case 'words':
        return shape.many ? several(() => random.pick(shape.words)) : random.pick(shape.words);
      case 'names':
        return shape.many ? several(() => this.nameOf(shape.kinds)) : this.nameOf(shape.kinds);
      case 'wall':
        return random.pick(walls);
      case 'sides':
        return `${this.side()} and ${this.side()}`;
      case 'flag':
        return '';
      case 'text':
        return random.pick(['"in the hall file"', '""', '"<b>&amp;"']);
    }
  }

  private side(): string {
    return this.random.chance(0.7) ? this.random.pick(landmarks) : this.nameOf(['desk', 'rack', 'platform']);
  }

  private length({ min, max, range, directions, from, reported }: LengthShape): string {
    const { random } = this;
    const size =
      range && random.chance(0.5)
        ? `${this.size(min, (min + max) / 2)}..${this.size((min + max) / 2, max)}`
        : this.size(min, max);
    const relation = from && random.chance(0.7) ? this.word(['above', 'below']) + this.word(from) : '';
    return `${size}${this.word(['', ...(directions ?? [])])}${relation}${reported && random.chance(0.2) ? ' reported' : ''}`;
  }

  private word(words: readonly string[]): string {
    const word = this.random.pick(words);
    return word && ` ${word}`;
  }

  private size(min: number, max: number): string {
    const unit = this.random.pick(Object.keys(millimetres));
    const scale = millimetres[unit]!;
    if (unit === 'in' && this.random.chance(0.2))
      return `${Math.ceil(min / scale)} ${this.random.pick(['1/2', '3/4', '7/8'])}in`;
    return `${this.number(min / scale, max / scale, unit === 'mm' ? 0 : 2)}${unit}`;
  }

  /** Mostly within the bounds, at times exactly on one, now and then far out. */
  private number(min: number, max: number, digits: number): string {
    const { random } = this;
    if (!random.chance(this.sanity))
      return random.pick([
        '0',
        '-1',
        '1e400',
        '0.0000001',
        '99999999999999999999',
        '1/0',
        '-0',
        '1000000',
        '000',
        '.5',
        '5.',
        '1e3',
      ]);
    const at = random.pick([0, 1, ...random.times(8, 8, () => random.next())]);
    return Number((min + at * (max - min)).toFixed(digits)).toString();
  }
}

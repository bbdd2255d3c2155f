import { assess, INCH, type Assessment, type Booth } from '@boothwright/fit';
import fc from 'fast-check';
import { render } from 'preact-render-to-string';
import { describe, expect, it } from 'vitest';
import { drawings } from '../content/drawings.js';
import { BlockList } from '../content/html.js';
import { renderReport } from '../index.js';
import { larkfieldBooth } from '../testing/larkfield-booth.js';
import { exactly, named, said } from '../testing/given.js';
import { boothPlan } from './booth-plan.js';
import type { Drawing, Point } from './drawing.js';
import { hallSection } from './hall-section.js';
import { roomPlan } from './room-plan.js';
import { sideView } from './side-view.js';
import { DrawingSvg } from './svg.js';
import { readDrawing, type DrawnPiece } from './testing/read-drawing.js';

const [sound, words] = larkfieldBooth.workstations as [Booth['workstations'][0], Booth['workstations'][0]];
const height = { line: 'bottom', over: 'desk', distance: exactly(4 * INCH) } as const;

/** Larkfield Hall with its screens at a height, a stage of a width and a wall behind that is too near. */
const booth: Booth = {
  ...larkfieldBooth,
  accepted: [],
  room: {
    ...larkfieldBooth.room!,
    seating: { ...larkfieldBooth.room!.seating!, pitch: said(36 * INCH), rows: said(12) },
  },
  walkways: [
    {
      ...larkfieldBooth.walkways[0]!,
      between: [
        { kind: 'landmark', name: 'booth', origin: larkfieldBooth.origin! },
        { kind: 'landmark', name: 'back-wall', origin: larkfieldBooth.origin! },
      ],
    },
  ],
  placements: [{ ...larkfieldBooth.placements[0]!, at: said({ x: 168 * INCH, y: 50 * INCH }) }],
  workstations: [
    { ...sound, screens: [{ ...sound.screens[0]!, height }] },
    { ...words, screens: [{ ...words.screens[0]!, height }] },
  ],
};
const assessment = assess(booth);
const sketch = assessment.sketch!;

function read(drawing: Drawing | undefined) {
  if (!drawing) throw new Error('Nothing is drawn.');
  return readDrawing(render(<DrawingSvg drawing={drawing} id="d" />));
}

/** Coordinates are written to a tenth of a unit; a point may be half of that off in each direction. */
function expectAt(point: { x: number; y: number }, x: number, y: number, scale: number) {
  expect(Math.abs(point.x - x)).toBeLessThanOrEqual(0.06 * scale + 0.1);
  expect(Math.abs(point.y - y)).toBeLessThanOrEqual(0.06 * scale + 0.1);
}

function only(pieces: readonly DrawnPiece[], kind: string, name?: string): DrawnPiece {
  const found = pieces.filter((piece) => piece.kind === kind && piece.name === name && piece.texts.length === 0);
  expect(found, `${kind} ${name}`).toHaveLength(1);
  return found[0]!;
}

describe.each([760, 380])('the plans, read back from paper %i wide', (width) => {
  const { pieces, scale } = read(boothPlan(assessment, width));

  it('have every desk and rack where the layout has it', () => {
    expect(assessment.layout.pieces.map(({ name }) => name)).toEqual(['Left', 'Right', 'Power']);
    for (const { kind, name, outline } of assessment.layout.pieces) {
      const [drawn] = only(pieces, kind, name).paths;
      outline.forEach((corner, index) => expectAt(drawn![index]!, corner.x, corner.y, scale));
    }
  });

  it('have walkways from end to end, screens and occupied floor', () => {
    const [walkway] = sketch.plan.walkways;
    const [line] = only(pieces, 'walkway', 'Behind').paths;
    walkway!.across.forEach((end, index) => expectAt(line![index]!, end.x, end.y, scale));
    for (const { screens } of sketch.plan.places) {
      for (const { name, face } of screens) {
        const [drawn] = only(pieces, 'monitor', name).paths;
        face.forEach((end, index) => expectAt(drawn![index]!, end.x, end.y, scale));
      }
    }
    for (const { workstation, outline } of assessment.layout.occupied) {
      const [drawn] = only(pieces, 'occupied', workstation).paths;
      outline.forEach((corner, index) => expectAt(drawn![index]!, corner.x, corner.y, scale));
    }
  });

  it('have stage, rows and sight lines where the room has them', () => {
    const room = read(roomPlan(assessment, 380));
    const [stage] = only(room.pieces, 'stage').paths;
    sketch.plan.stage!.outline.forEach((corner, index) => expectAt(stage![index]!, corner.x, corner.y, room.scale));
    const rows = room.pieces.filter(({ kind, texts }) => kind === 'row' && texts.length === 0);
    expect(rows).toHaveLength(12);
    rows.forEach(({ paths }, index) => {
      const [p, q] = sketch.plan.rows[index]!;
      expectAt(paths[0]![0]!, p.x, p.y, room.scale);
      expectAt(paths[0]![1]!, q.x, q.y, room.scale);
    });
  });
});

describe('the sizes on the plan of the booth, read back', () => {
  const { pieces, scale } = read(boothPlan(assessment, 760));
  const within = 0.15 * scale;
  const drawn = (kind: string, name: string) => {
    const { paths, texts } = pieces
      .filter((piece) => piece.kind === kind && piece.name === name)
      .reduce((a, b) => ({ ...a, ...b, paths: [...a.paths, ...b.paths], texts: [...a.texts, ...b.texts] }));
    const [from, to] = paths[0]!;
    return { length: Math.hypot(from!.x - to!.x, from!.y - to!.y), texts };
  };

  it.each(booth.desks.map(({ name, width, depth }) => [name, width!.value, depth!.value] as const))(
    'measure %s from edge to edge: %d by %d mm',
    (name, width, depth) => {
      for (const [kind, size] of [
        ['desk-width', width],
        ['desk-depth', depth],
      ] as const) {
        const { length, texts } = drawn(kind, name);
        expect(Math.abs(length - size)).toBeLessThan(within);
        expect(texts).toEqual([`${Math.round(size / INCH)}\u00a0in`]);
      }
    },
  );

  it('measure the floor that seats take', () => {
    expect(assessment.layout.occupied.length).toBeGreaterThan(0);
    for (const { workstation, outline } of assessment.layout.occupied) {
      const [near, , , far] = outline as unknown as readonly Point[];
      const { length } = drawn('occupied-depth', workstation);
      expect(Math.abs(length - Math.hypot(near!.x - far!.x, near!.y - far!.y))).toBeLessThan(within);
    }
  });
});

describe('side views, read back', () => {
  it.each(sketch.sides.map((side) => [`${side.who}, ${side.posture}`, side] as const))('%s', (_, side) => {
    const { pieces, scale } = read(sideView(assessment, side));
    for (const { name, top, bottom } of side.screens) {
      const [face] = only(pieces, 'monitor', name).paths;
      expectAt(face![0]!, bottom.x, bottom.z, scale);
      expectAt(face![1]!, top.x, top.z, scale);
    }
    const { name, depth, height: high, top } = side.desk;
    const board = only(pieces, 'desk', name).paths.at(-1)!;
    expectAt(board[0]!, 0, high - top, scale);
    expectAt(board[2]!, depth!, high, scale);
    const [eye] = only(pieces, 'eye').circles;
    expectAt(eye!, side.body.eye.x, side.body.eye.z, scale);
    if (side.thighRoom) {
      const [gap] = only(pieces, 'thigh-room').paths;
      const { x, thigh, least } = side.thighRoom;
      expectAt(gap![0]!, x, least?.seat ?? thigh, scale);
      expectAt(gap![1]!, side.thighRoom.x, side.thighRoom.underside, scale);
    }
    const [bar] = only(pieces, 'eye-level').paths;
    if (side.eye.high - side.eye.low > 5) {
      expect(Math.abs(bar![0]!.y - side.eye.low)).toBeLessThanOrEqual(0.06 * scale);
      expect(Math.abs(bar![2]!.y - side.eye.high)).toBeLessThanOrEqual(0.06 * scale);
    }
  });

  it('draw a figure from its soles to the top of its head', () => {
    for (const side of sketch.sides) {
      const { pieces, scale } = read(sideView(assessment, side));
      const ys = only(pieces, 'person', side.who)
        .paths.flat()
        .map(({ y }) => y);
      expect(Math.abs(Math.max(...ys) - side.body.crown.z)).toBeLessThan(0.06 * scale + 1);
      expect(Math.abs(Math.min(...ys) - side.body.toe.z)).toBeLessThan(0.06 * scale + 1);
    }
  });
});

describe('the section, read back', () => {
  const { pieces, scale } = read(hallSection(assessment, 760));

  it('has the stage, the rows and the lines of sight', () => {
    const [stage] = only(pieces, 'stage').paths;
    expectAt(stage![3]!, sketch.hall.stage!.edge, sketch.hall.stage!.height!, scale);
    const rows = pieces.filter(({ kind, texts }) => kind === 'row' && texts.length === 0);
    expect(rows).toHaveLength(sketch.hall.rows.length);
    const lines = pieces.filter(({ kind, texts }) => kind === 'sight' && texts.length === 0);
    expect(lines).toHaveLength(2);
    for (const { name, paths } of lines) {
      const [from] = paths[0]!;
      const eyes = sketch.sights.filter(({ workstation }) => workstation === name);
      const worst = eyes.reduce((most, one) => (one.above > most.above ? one : most));
      expectAt(from!, worst.eye.y, worst.eye.z, scale);
    }
  });
});

describe('what a drawing says', () => {
  const drawings = [
    boothPlan(assessment, 760)!,
    boothPlan(assessment, 380)!,
    roomPlan(assessment, 380)!,
    hallSection(assessment, 760)!,
    hallSection(assessment, 380)!,
    ...sketch.sides.map((side) => sideView(assessment, side)),
  ];

  it.each(drawings.map((drawing) => [drawing.title, drawing] as const))(
    '%s: title, description, figures',
    (_, drawing) => {
      const svg = render(<DrawingSvg drawing={drawing} id="d" />);
      expect(svg).toContain(`<title id="d-title">${drawing.title}</title>`);
      expect(svg).toMatch(/<desc id="d-desc">[^<]{40,}<\/desc>/);
      expect(drawing.facts.length).toBeGreaterThan(3);
      expect(drawing.omitted).toEqual([]);
      expect(svg).not.toMatch(/NaN|undefined|Infinity/);
      expect(svg).toMatch(/data-kind="scale-bar"/);
    },
  );

  it('marks what fails by shape and words, and says the least', () => {
    const svg = render(<DrawingSvg drawing={boothPlan(assessment, 760)!} id="d" />);
    const walkway = svg.slice(svg.lastIndexOf('data-kind="walkway"'));
    expect(walkway).toMatch(/^data-kind="walkway" data-name="Behind" data-verdict="fail"/);
    expect(walkway).toMatch(/class="mark fail"/);
    expect(walkway).toContain('31\u00a0in clear, least 42\u00a0in');
  });

  it('gives the spread of eye and elbow as figures', () => {
    const side = sketch.sides.find(({ who }) => who === 'Volunteers')!;
    const [eye] = sideView(assessment, side).facts;
    expect(eye!.value).toMatch(/^[\d /\u00a0]+in, nine in ten from [\d /\u00a0]+in to [\d /\u00a0]+in$/);
  });

  it('speaks of what the file accepts as accepted', () => {
    const accepted = [{ check: 'feet-supported', reason: 'a loose rest', origin: booth.origin! }];
    const tolerant = assess({ ...booth, accepted });
    const side = tolerant.sketch!.sides.find(({ who }) => who === 'Noor')!;
    const feet = sideView(tolerant, side).facts.find(({ what }) => what === 'Feet')!;
    expect(feet.value).toMatch(/^hang .*, accepted$/);
    expect(feet.verdict).not.toBe('pass');
  });
});

describe('in the report', () => {
  it('stand between the answer and the workstations, with letters for names where asked', () => {
    const html = renderReport(assessment, { generatedBy: 'Boothwright 0.1.0', names: 'full' });
    const order = ['Does it fit?', '<h2>Drawings</h2>', '<h2>Workstations</h2>'].map((text) => html.indexOf(text));
    expect(Math.min(...order)).toBeGreaterThan(0);
    expect([...order].sort((a, b) => a - b)).toEqual(order);
    const ids = [...html.matchAll(/ id="([^"]+)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    const letters = renderReport(assessment, { generatedBy: 'Boothwright 0.1.0', names: 'letters' });
    expect(letters).toContain('Person A, sitting at Sound');
    expect(letters).not.toMatch(/Noor|Tobias|Priya/);
  });

  it('are left out where nothing can be drawn', () => {
    const bare = assess({ ...booth, room: undefined, placements: [], workstations: [] });
    expect(render(<BlockList blocks={drawings(bare)} />)).toBe('');
    expect(render(<BlockList blocks={drawings({ ...assessment, sketch: undefined })} />)).toBe('');
  });

  it('need nothing but heights to draw people', () => {
    const unplaced = render(<BlockList blocks={drawings(assess({ ...booth, room: undefined, placements: [] }))} />);
    expect(unplaced).toContain('Noor, sitting at Sound');
    expect(unplaced).not.toContain('The booth from above');
  });
});

describe('names from a booth file', () => {
  const known =
    /^(section|h2|h3|div|figure|figcaption|ul|li|p|details|summary|span|svg|use|title|desc|g|path|circle|text)$/;

  it('never become markup', () => {
    const hostile = fc.oneof(
      fc.constantFrom('</svg><script>', '"><svg onload=x>', '<!--', '&lt;b&gt;', "' x='"),
      fc.string({ unit: fc.constantFrom('<', '>', '"', "'", '&', '/', '=', 'a', ' ') }),
    );
    fc.assert(
      fc.property(hostile, (text) => {
        const html = render(<BlockList blocks={drawings(assess(renamed(booth, `x${text}x`)))} />);
        for (const [, tag] of html.matchAll(/<\/?([^\s/>]*)/g)) expect(tag).toMatch(known);
        expect(html.match(/<svg/g)!.length).toBeGreaterThan(4);
      }),
      { numRuns: 40 },
    );
  });
});

/** Every desk, screen, workstation, person and walkway with one name of its own that ends in a text. */
function renamed(original: Booth, text: string): Booth {
  const name = <T extends { readonly name: string }>(thing: T): T => ({ ...thing, name: thing.name + text });
  const all = <T extends { readonly name: string }>(things: readonly T[]): T[] => things.map(name);
  return {
    ...original,
    name: text,
    operators: all(original.operators),
    crowds: all(original.crowds),
    desks: all(original.desks),
    seats: all(original.seats),
    monitors: all(original.monitors),
    walkways: all(original.walkways),
    racks: original.racks.map((rack) => ({ ...name(rack), under: { ...rack.under!, desk: name(rack.under!.desk) } })),
    skirts: original.skirts.map((skirt) => ({ ...name(skirt), on: all(skirt.on) })),
    placements: original.placements.map((placement) => ({ ...placement, pieces: all(placement.pieces) })),
    workstations: original.workstations.map((station) => ({
      ...name(station),
      desk: name(station.desk!),
      seat: name(station.seat!),
      people: all(station.people),
      screens: station.screens.map((screen) => ({ ...screen, monitor: name(screen.monitor) })),
      controls: all(station.controls),
    })),
  };
}

describe('many people at one place', () => {
  it('are drawn by the lowest and the highest eyes, the rest named', () => {
    const heights = [1500, 1580, 1660, 1740, 1900];
    const operators = heights.map((stature, index) => ({
      ...larkfieldBooth.operators[2]!,
      name: `P${index + 1}`,
      measured: { stature: said(stature) },
    }));
    const station = { ...words, people: operators.map(({ name }) => named(name)) };
    const desks = booth.desks.map((desk) => ({ ...desk, height: exactly(1000) }));
    const html = render(
      <BlockList blocks={drawings(assess({ ...booth, operators, desks, workstations: [station] }))} />,
    );
    const drawn = ['P1', 'P2', 'P3', 'P4', 'P5'].filter((name) =>
      html.includes(`<figcaption>${name}, sitting at Words`),
    );
    expect(drawn).toEqual(['P1', 'P5']);
    expect(html).toContain('Between the lowest and the highest eyes that are drawn at Words: P2, P3 and P4.');
  });
});

it('draws the same assessment the same way', () => {
  const once = (from: Assessment) => render(<BlockList blocks={drawings(from)} />);
  expect(once(assess(booth))).toBe(once(assess(booth)));
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/**
 * The worked examples that published sources print, or that follow from a printed rule, for walkways, platforms, skirts, racks and
 * sight lines: which test holds each, or why no check asks its question.
 */
interface WorkedExample {
  readonly id: string;
  readonly what: string;
  /** Test files, from packages/fit/src. */
  readonly heldBy?: readonly string[];
  readonly noCheck?: string;
}

const width = 'checks/walkway/walkway-width.test.ts';
const capacity = 'checks/walkway/walkway-capacity.test.ts';
const sight = 'scene/sight.test.ts';
const rack = 'checks/furniture/rack-fits.test.ts';
const accessible = 'checks/access/accessible-station.test.ts';

const audienceTables =
  'ways between tables of an audience: the booth’s own desks leave walkways, which are held to aisles';
const audienceRows = 'rows of audience seats: the file says where the nearest row is, not how its seats are spaced';
const floorArea = 'occupant load from floor area: the file states how many people a walkway serves';
const power = 'circuits and cables between devices are not in a booth file';

const examples: readonly WorkedExample[] = [
  { id: 'W1', what: 'two tables with chairs beside an accessway of 12 in', heldBy: [width] },
  { id: 'W2', what: 'desk edge to wall for aisles of 36, 42 and 44 in', heldBy: [width] },
  { id: 'W3', what: 'a table accessway of 6 ft for 4 people has no least width', noCheck: audienceTables },
  { id: 'W4', what: 'table accessways of 12 to 30 ft', noCheck: audienceTables },
  { id: 'W5', what: 'a table accessway of 12.2 ft', noCheck: audienceTables },
  { id: 'W6', what: 'a row of 24 seats, aisles at both ends', noCheck: audienceRows },
  { id: 'W7', what: 'a row of 12 seats, an aisle at one end', noCheck: audienceRows },
  { id: 'W8', what: 'least width of aisles by number of seats', heldBy: [width] },
  { id: 'W9', what: 'corridor width for 100 people', heldBy: [capacity] },
  { id: 'W10', what: 'exit width for 300 people, with and without sprinklers and voice alarm', heldBy: [capacity] },
  { id: 'W11', what: 'people that 36 and 44 in serve', heldBy: [capacity] },
  { id: 'W12', what: 'people in a classroom of 1120 ft²', noCheck: floorArea },
  { id: 'W13', what: 'people in an assembly space of 950 ft²', noCheck: floorArea },
  { id: 'W14', what: 'people in 985 ft², rounded up or down', noCheck: floorArea },
  { id: 'W15', what: 'people that exits of 1000, 1100 and 1200 mm serve in England', heldBy: [capacity] },
  { id: 'W16', what: 'an exit for 165 people in England', heldBy: [capacity] },
  { id: 'W17', what: 'BS 9999 door capacity', noCheck: 'BS 9999 is not among the limits that a file can choose' },
  {
    id: 'W18',
    what: 'exits by units of width',
    noCheck: 'the old guide of exit units is not among the limits that a file can choose',
  },
  { id: 'W19', what: 'C values, focal point at 25 ft, eye 1200', heldBy: [sight] },
  { id: 'W20', what: 'C values, focal point at 25 ft, eye 1600', heldBy: [sight] },
  { id: 'W21', what: 'C values, focal point at 10 ft, eye 1200', heldBy: [sight] },
  { id: 'W22', what: 'C values, focal point at 10 ft, eye 1600', heldBy: [sight] },
  { id: 'W23', what: 'the riser for a C value', heldBy: [sight] },
  { id: 'W24', what: 'a C value on a flat floor', heldBy: [sight] },
  { id: 'W25', what: 'cables in a tray', noCheck: power },
  { id: 'W26', what: 'continuous load of 15 and 20 A circuits', noCheck: power },
  { id: 'W27', what: 'the circuit for 16 A continuous', noCheck: power },
  { id: 'W28', what: 'racks of 1, 4 and 10 units', heldBy: [rack] },
  { id: 'W29', what: 'racks of 12 to 42 units', heldBy: [rack] },
  {
    id: 'W30',
    what: 'skirts on tables of 6 and 8 ft, three sides; on four sides or round cannot be said',
    heldBy: ['checks/skirt/skirt-run.test.ts'],
  },
  { id: 'W31', what: 'a cloth that hangs 30 in on a 30 in table', heldBy: ['checks/skirt/skirt-drop.test.ts'] },
  { id: 'W32', what: 'pinch points', heldBy: ['checks/walkway/walkway-pinch.test.ts'] },
  { id: 'W33', what: 'a turn round a counter 40 in wide', heldBy: ['checks/walkway/walkway-turn.test.ts'] },
  { id: 'W34', what: 'what a wheelchair takes behind a table', heldBy: [accessible] },
  { id: 'W35', what: 'the depth of knees by height', heldBy: [accessible] },
  { id: 'W36', what: 'the length of a USB 2 cable', noCheck: power },
  {
    id: 'W37',
    what: 'how many wheelchair spaces a hall keeps',
    noCheck: 'the file declares the spaces; how many a hall owes is not asked',
  },
  {
    id: 'W38',
    what: 'a riser of 14 in in two steps',
    heldBy: ['checks/platform/platform-step.test.ts', 'checks/platform/platform-edge.test.ts'],
  },
];

const textOf = (file: string) => readFileSync(new URL(`../${file}`, import.meta.url), 'utf8');
const named = (text: string, id: string) => new RegExp(`\\b${id}\\b`).test(text);

describe('worked examples of walkways', () => {
  it('are all accounted for', () => {
    expect(examples.map(({ id }) => id)).toEqual(Array.from({ length: 38 }, (_, index) => `W${index + 1}`));
  });

  it.each(examples.filter(({ heldBy }) => heldBy))('$id, $what, is held by a test', ({ id, heldBy, noCheck }) => {
    expect(noCheck).toBeUndefined();
    for (const file of heldBy!) expect(named(textOf(file), id), `${file} does not name ${id}`).toBe(true);
  });

  it.each(examples.filter(({ heldBy }) => !heldBy))('$id, $what, is asked by no check: $noCheck', ({ id, noCheck }) => {
    expect(noCheck!.length).toBeGreaterThan(20);
    const files = new Set(examples.flatMap(({ heldBy }) => heldBy ?? []));
    for (const file of files) expect(named(textOf(file), id), `${file} names ${id}`).toBe(false);
  });
});

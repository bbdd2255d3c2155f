import { assess, type Booth, type Finding, type Given, type PlanPoint } from '@boothwright/fit';
import { describe, expect, it } from 'vitest';
import { frameAt, pointIn } from '../../packages/fit/src/layout/polygon.js';
import { someBooths } from './booths.js';

const booths = await someBooths(6, 40);

/** Of two that are too near each other, either may be told. */
const ofTwo = ['overlap', 'elbow-room', 'screens-fit-desk'];

/** What a finding says, in figures. Of texts, those that name the sides of things differ in a mirror. */
function figuresOf({ check, verdict, subject, operator, posture, ...finding }: Finding): string {
  const { measured, limit, margin, share, shareAtLimit, remedies, accepted } = finding;
  const rounded = [measured, limit, margin, share, shareAtLimit].map((each) =>
    each === undefined ? undefined : Math.round(each * 1000) / 1000 + 0,
  );
  const safe = remedies.map((remedy) => remedy.safe);
  return JSON.stringify([
    check,
    ofTwo.includes(check) ? 'one of two' : subject.name,
    operator,
    posture,
    verdict,
    rounded,
    safe,
    accepted,
  ]);
}

const figures = (booth: Booth) => assess(booth).findings.map(figuresOf).sort();

/** Of two declarations with one name the first counts, of two places of one piece the last. */
function isPlain(booth: Booth): boolean {
  const { operators, crowds, desks, seats, monitors, workstations, racks, platforms, placements } = booth;
  const names = [operators, crowds, desks, seats, monitors, workstations, racks, platforms].flat();
  const placed = [...placements.flatMap(({ pieces }) => pieces), ...racks.filter(({ under }) => under)];
  return [names, placed].every((all) => new Set(all.map(({ name }) => name)).size === all.length);
}

function backwards(booth: Booth): Booth {
  const back = <T>(list: readonly T[]) => [...list].reverse();
  return {
    ...booth,
    operators: back(booth.operators),
    crowds: back(booth.crowds),
    desks: back(booth.desks),
    seats: back(booth.seats),
    monitors: back(booth.monitors),
    workstations: back(booth.workstations).map((station) => ({
      ...station,
      people: back(station.people),
      screens: back(station.screens),
      controls: back(station.controls),
    })),
    walkways: back(booth.walkways),
    racks: back(booth.racks),
    skirts: back(booth.skirts),
    platforms: back(booth.platforms),
    cables: back(booth.cables),
    placements: back(booth.placements),
    ...(booth.room && {
      room: {
        ...booth.room,
        doors: back(booth.room.doors),
        columns: back(booth.room.columns),
        wheelchairSpaces: back(booth.room.wheelchairSpaces),
        watchers: back(booth.room.watchers),
      },
    }),
  };
}

const otherSide = {
  'left-wall': 'right-wall',
  'right-wall': 'left-wall',
  'left-end': 'right-end',
  'right-end': 'left-end',
  left: 'right',
  right: 'left',
} as const;
const swapped = <T extends string>(word: T): T => ((otherSide as Partial<Record<string, string>>)[word] ?? word) as T;

function changed<T>(given: Given<T>, change: (value: T) => T): Given<T>;
function changed<T>(given: Given<T> | undefined, change: (value: T) => T): Given<T> | undefined;
function changed<T>(given: Given<T> | undefined, change: (value: T) => T): Given<T> | undefined {
  return given && { ...given, value: change(given.value) };
}

/** The hall as a mirror shows it. Of a room of unknown width only the left wall is known: it has no mirrored one. */
function mirrored(booth: Booth): Booth {
  const across = booth.room?.width?.value ?? 0;
  const sized = [...booth.desks, ...booth.racks];
  const widthOf = (name: string | undefined) => sized.find((each) => each.name === name)?.width?.value ?? 0;
  const flip = (point: PlanPoint, width = 0): PlanPoint => ({ x: across - point.x - width, y: point.y });
  const along = (desk: string | undefined) => (at: number) => widthOf(desk) - at;
  return {
    ...booth,
    ...(booth.room && {
      room: {
        ...booth.room,
        doors: booth.room.doors.map((door) => ({
          ...door,
          wall: changed(door.wall, swapped),
          hinge: changed(door.hinge, swapped),
          at: door.wall?.value.match(/left|right/)
            ? door.at
            : changed(door.at, (at) => across - at - (door.width?.value ?? 0)),
        })),
        columns: booth.room.columns.map((column) => ({
          ...column,
          at: changed(column.at, (at) => flip(at, column.width?.value)),
        })),
        wheelchairSpaces: booth.room.wheelchairSpaces.map((space) => ({
          ...space,
          at: changed(space.at, (at) => flip(at, space.width.value)),
        })),
        watchers: booth.room.watchers.map((watcher) => ({ ...watcher, at: changed(watcher.at, (at) => flip(at)) })),
      },
    }),
    platforms: booth.platforms.map((platform) => ({
      ...platform,
      at: changed(platform.at, (at) => flip(at, platform.width?.value)),
    })),
    placements: booth.placements.map((placement) => {
      const length = placement.pieces.reduce((sum, { name }) => sum + widthOf(name), 0);
      const end = pointIn(frameAt(placement.at.value, placement.turn.value), length, 0);
      return {
        ...placement,
        pieces: [...placement.pieces].reverse(),
        at: changed(placement.at, () => flip(end)),
        turn: changed(placement.turn, (turn) => -turn),
      };
    }),
    racks: booth.racks.map((rack) => ({
      ...rack,
      ...(rack.under && {
        under: {
          ...rack.under,
          at: changed(rack.under.at, (at) => along(rack.under!.desk.name)(at) - (rack.width?.value ?? 0)),
        },
      }),
    })),
    skirts: booth.skirts.map((skirt) => ({ ...skirt, sides: changed(skirt.sides, (sides) => sides.map(swapped)) })),
    walkways: booth.walkways.map((walkway) => ({
      ...walkway,
      ...(walkway.between && {
        between: walkway.between.map((side) => ({
          ...side,
          name: swapped(side.name),
        })) as unknown as typeof walkway.between,
      }),
    })),
    workstations: booth.workstations.map((station) => ({
      ...station,
      at: changed(station.at, along(station.desk?.name)),
      screens: station.screens.map((use) => ({
        ...use,
        at: changed(use.at, along(station.desk?.name)),
        turn: changed(use.turn, (turn) => -turn),
      })),
      controls: station.controls.map((control) => ({ ...control, at: changed(control.at, along(station.desk?.name)) })),
    })),
  };
}

/** Every name of something declared, written in another way wherever it stands. */
function renamed(booth: Booth): Booth {
  const names = new Set(
    [
      booth.operators,
      booth.crowds,
      booth.desks,
      booth.seats,
      booth.monitors,
      booth.workstations,
      booth.racks,
      booth.platforms,
    ]
      .flat()
      .map(({ name }) => name),
  );
  const other = (value: unknown): unknown => {
    if (typeof value === 'string') return names.has(value) ? `${value}z` : value;
    if (Array.isArray(value)) return value.map(other);
    if (typeof value !== 'object' || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, other(each)]));
  };
  return { ...(other(booth) as Booth), name: booth.name };
}

const plain = booths.filter(({ booth }) => isPlain(booth));

describe('no figure depends on', () => {
  it('the order in which a file declares things', () => {
    expect(plain.length).toBeGreaterThan(70);
    for (const { booth, text } of plain) expect(figures(backwards(booth)), text).toEqual(figures(booth));
  });

  it('which side of the hall is called left', () => {
    const sided = plain.filter(({ booth: { room } }) => room?.width);
    expect(sided.length).toBeGreaterThan(50);
    for (const { booth, text } of sided) expect(figures(mirrored(booth)), text).toEqual(figures(booth));
  });

  it('what things are called', () => {
    const named = (booth: Booth) =>
      figures(renamed(booth))
        .map((line) => line.replace(/(\w)z"/g, '$1"'))
        .sort();
    for (const { booth, text } of booths) expect(named(booth), text).toEqual(figures(booth));
  });
});

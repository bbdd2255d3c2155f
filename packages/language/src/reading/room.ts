import type { Balcony, Door, FloorArea, Column, Named, Room, Seating, Stage, Watchers } from '@boothwright/fit';
import { isNames } from '../generated/ast.js';
import { originOf, partOf } from '../syntax/tree.js';
import { namedOf, type Sheet } from './sheet.js';

export function readRoom(sheet: Sheet): Room {
  const [stage] = sheet.blocks('stage');
  const [seating] = sheet.blocks('seating');
  const [balcony] = sheet.blocks('balcony');
  return {
    origin: sheet.headOrigin,
    width: sheet.length('width'),
    depth: sheet.length('depth'),
    height: sheet.length('height'),
    occupants: sheet.number('occupants'),
    sprinklers: sheet.flag('sprinklers'),
    voiceAlarm: sheet.flag('voice-alarm'),
    stage: stage && readStage(stage),
    seating: seating && readSeating(seating),
    balcony: balcony && readBalcony(balcony),
    doors: eachNamed(sheet.blocks('door'), readDoor),
    columns: eachNamed(sheet.blocks('column'), readColumn),
    wheelchairSpaces: eachNamed(sheet.blocks('wheelchair-space'), readSpace),
    watchers: eachNamed(sheet.blocks('watchers'), readWatchers),
  };
}

/** Reads the blocks that have a name; those without are a fault that is reported elsewhere. */
export function eachNamed<T>(sheets: readonly Sheet[], read: (sheet: Sheet, named: Named) => T): T[] {
  return sheets.flatMap((sheet) => {
    const named = namedOf(sheet);
    return named ? [read(sheet, named)] : [];
  });
}

function readStage(sheet: Sheet): Stage {
  return {
    origin: sheet.headOrigin,
    edge: sheet.length('edge'),
    height: sheet.length('height'),
    width: sheet.length('width'),
  };
}

function readSeating(sheet: Sheet): Seating {
  return {
    origin: sheet.headOrigin,
    first: sheet.length('first'),
    pitch: sheet.length('pitch'),
    rows: sheet.number('rows'),
    standing: sheet.flag('standing'),
  };
}

function readBalcony(sheet: Sheet): Balcony {
  return { origin: sheet.headOrigin, edge: sheet.length('edge'), height: sheet.length('height') };
}

function readDoor(sheet: Sheet, named: Named): Door {
  const [on] = sheet.nodesOf('on', isNames);
  const wall = on?.walls[0];
  return {
    ...named,
    wall: wall && { value: wall, origin: originOf(partOf(on, 'walls', 0)), isDefault: false },
    at: sheet.length('at'),
    width: sheet.length('width'),
    opens: sheet.wordOr('opens'),
    hinge: sheet.wordOr('hinge'),
  };
}

function readColumn(sheet: Sheet, named: Named): Column {
  return { ...named, at: sheet.point('at'), width: sheet.length('width'), depth: sheet.length('depth') };
}

function readSpace(sheet: Sheet, named: Named): FloorArea {
  return { ...named, at: sheet.point('at'), width: sheet.lengthOr('width'), depth: sheet.lengthOr('depth') };
}

function readWatchers(sheet: Sheet, named: Named): Watchers {
  return { ...named, at: sheet.point('at'), posture: sheet.wordOr('posture') };
}

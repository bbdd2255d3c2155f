import type { Control, Given, Named, Posture, ScreenHeight, ScreenUse, Workstation } from '@boothwright/fit';
import type { Screen } from '../generated/ast.js';
import { eachNamed } from './room.js';
import { referenceOf, type Sheet } from './sheet.js';

export function readWorkstation(sheet: Sheet, named: Named): Workstation {
  const seat = sheet.references('stool', 'chair')[0];
  const usual: readonly Posture[] = seat ? ['sit'] : ['stand'];
  const lean = sheet.lengthOr('lean');
  const leans = sheet.meaning('lean')?.meaning;
  return {
    ...named,
    desk: sheet.references('desk')[0],
    seat,
    people: sheet.references('operators', 'crowd'),
    postures: sheet.words<Posture>('posture') ?? { value: usual, isDefault: true },
    task: sheet.wordOr('task'),
    at: sheet.length('at'),
    working: sheet.lengthOr('working'),
    lean: leans?.is === 'length' && leans.direction === 'back' ? { ...lean, value: -lean.value } : lean,
    screens: readScreens(sheet),
    controls: eachNamed(sheet.blocks('control'), readControl),
  };
}

function readScreens(sheet: Sheet): ScreenUse[] {
  const screens = sheet.screens().filter(({ holder }) => holder.monitor?.ref?.kind === 'monitor');
  const isMarked = screens.some((screen) => screen.flag('main'));
  return screens.map((screen, index) => {
    const origin = screen.flagOrigin('main');
    const main: Given<boolean> = origin
      ? { value: true, origin, isDefault: false }
      : { value: !isMarked && index === 0, isDefault: true };
    return readScreen(screen, main);
  });
}

function readScreen(sheet: Sheet & { readonly holder: Screen }, main: Given<boolean>): ScreenUse {
  return {
    monitor: referenceOf(sheet.holder.monitor!),
    origin: sheet.headOrigin,
    setback: sheet.length('setback'),
    at: sheet.length('at'),
    height: readHeight(sheet),
    turn: sheet.number('turn'),
    tilt: sheet.numberOr('tilt'),
    main,
    rating: sheet.number('arm'),
  };
}

function readHeight(sheet: Sheet): ScreenHeight | undefined {
  for (const line of ['bottom', 'centre', 'top'] as const) {
    const distance = sheet.range(line);
    const meaning = sheet.meaning(line)?.meaning;
    if (distance && meaning?.is === 'length')
      return { line, over: meaning.from === 'floor' ? 'floor' : 'desk', distance };
  }
  return undefined;
}

function readControl(sheet: Sheet, named: Named): Control {
  return {
    ...named,
    at: sheet.length('at'),
    setback: sheet.length('setback'),
    depth: sheet.lengthOr('depth'),
    width: sheet.lengthOr('width'),
    height: sheet.lengthOr('height'),
    use: readUse(sheet),
    weight: sheet.number('weight'),
  };
}

function readUse(sheet: Sheet): Control['use'] {
  for (const value of ['constant', 'occasional'] as const) {
    const origin = sheet.flagOrigin(value);
    if (origin) return { value, origin, isDefault: false };
  }
  return { value: 'constant', isDefault: true };
}

import type { Monitor, ScreenHeight, ScreenUse } from '../booth.js';
import type { Range } from '../units.js';
import { byDefault, fixed, given, nowhere } from './booths.js';

/** A monitor of 4:3, so that a diagonal of 500 is 400 wide and 300 high. */
export function aMonitor(name: string, diagonal = 500, parts: Partial<Monitor> = {}): Monitor {
  return {
    name,
    origin: nowhere,
    diagonal: given(diagonal),
    aspect: byDefault({ across: 4, down: 3 }),
    ...parts,
  };
}

/** A monitor as it stands: its face `setback` from the near edge, one line of it so high, or on an arm between two heights. */
export function aScreen(
  monitor: string,
  setback: number,
  line: ScreenHeight['line'],
  height: number | Range,
  parts: Partial<ScreenUse> = {},
): ScreenUse {
  return {
    monitor: { name: monitor, origin: nowhere },
    origin: nowhere,
    setback: given(setback),
    height: {
      line,
      over: 'floor',
      distance: typeof height === 'number' ? fixed(height) : given(height),
    },
    tilt: byDefault(0),
    main: byDefault(true),
    ...parts,
  };
}

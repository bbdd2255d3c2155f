import type { ScreenHeight } from '../booth.js';
import { say } from '../words/say.js';

/** Where a line of a screen is, or between what heights an arm sets it. */
export function placeOfScreen(line: ScreenHeight['line'], over: ScreenHeight['over'], height: string): string {
  switch (line) {
    case 'bottom':
      return over === 'desk' ? say`bottom ${height} above the desk` : say`bottom ${height} above the floor`;
    case 'centre':
      return over === 'desk' ? say`centre ${height} above the desk` : say`centre ${height} above the floor`;
    case 'top':
      return over === 'desk' ? say`top ${height} above the desk` : say`top ${height} above the floor`;
  }
}

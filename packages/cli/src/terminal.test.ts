import { describe, expect, it } from 'vitest';
import { wantsColours } from './terminal.js';

describe('colours', () => {
  it.each([
    [{}, true, true],
    [{}, false, false],
    [{ NO_COLOR: '1' }, true, false],
    [{ NO_COLOR: '' }, true, true],
    [{ NO_COLOR: '1', FORCE_COLOR: '1' }, true, false],
    [{ FORCE_COLOR: '1' }, false, true],
    [{ FORCE_COLOR: '0' }, true, false],
    [{ TERM: 'dumb' }, true, false],
    [{ CI: 'true' }, false, false],
  ])('%o, terminal %s: %s', (env, isTerminal, wanted) => {
    expect(wantsColours(env, isTerminal)).toBe(wanted);
  });
});

import { describe, expect, it } from 'vitest';
import type { Booth, ScreenUse } from '../booth.js';
import { aBooth, aDesk, aMeasuredOperator, aSeat, aStation, given, nowhere } from '../testing/booths.js';
import { wholeBody } from '../testing/findings.js';
import { aSkirt } from '../testing/floor.js';
import { aMonitor, aScreen } from '../testing/screens.js';
import { assess } from './assess.js';

function watching(screens: readonly ScreenUse[], parts: Partial<Booth> = {}): Booth {
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({}))],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Cues'), aMonitor('Lyrics')],
    workstations: [aStation('Sound', 'Left', undefined, ['Noor'], { screens })],
    ...parts,
  });
}

function unplaced(name: string): ScreenUse {
  const { setback: _, ...screen } = aScreen(name, 1, 'centre', 1400);
  return screen;
}

const asked = (booth: Booth) => assess(booth).findings.filter(({ missing }) => missing);

describe('what the file does not say is asked for once', () => {
  it('for a screen that is not placed: one finding names the checks that wait', () => {
    const found = asked(watching([unplaced('Cues')])).filter(({ missing }) => missing!.property === 'setback');
    expect(found).toHaveLength(1);
    expect(found[0]!.blocks!.length).toBeGreaterThanOrEqual(3);
    expect([found[0]!.check, ...found[0]!.blocks!].sort()).toEqual([
      'screen-distance',
      'screen-height',
      'screen-tilt',
      'screens-fit-desk',
      'text-size',
    ]);
    for (const check of found[0]!.blocks!) expect(found[0]!.message).toContain(`\`${check}\``);
    expect(found[0]!.message).toMatch(/ and `[a-z-]+` wait for it too\.$/);
  });

  it('for each of two screens', () => {
    const found = asked(watching([unplaced('Cues'), unplaced('Lyrics')]));
    const setbacks = found.filter(({ missing }) => missing!.property === 'setback');
    expect(setbacks.map(({ subject }) => subject.name)).toEqual(['Cues', 'Lyrics']);
  });

  it('for a height that checks of both postures lack, which then tells of neither alone', () => {
    const { height: _, ...desk } = aDesk('Left', 1);
    const postures = given(['sit', 'stand'] as const);
    const workstations = [aStation('Sound', 'Left', 'Tall', ['Noor'], { postures })];
    const found = asked(watching([], { desks: [desk], seats: [aSeat('Tall', 700)], workstations }));
    const heights = found.filter(
      ({ missing, subject }) => missing!.of === 'desk Left' && subject.kind === 'workstation',
    );
    expect(heights).toHaveLength(1);
    expect(heights[0]!.blocks).toEqual(expect.arrayContaining(['standing-work', 'thigh-room']));
    expect(heights[0]!.posture).toBeUndefined();
  });

  it('again for each check whose finding is accepted', () => {
    const accept = (check: string) => ({ check, reason: 'it hangs on the wall', origin: nowhere });
    const accepted = [accept('screen-tilt'), accept('screen-height')];
    const found = asked(watching([unplaced('Cues')], { accepted }));
    const setbacks = found.filter(({ missing }) => missing!.property === 'setback');
    expect(setbacks.filter(({ accepted: reason }) => reason).map(({ check }) => check)).toEqual([
      'screen-height',
      'screen-tilt',
    ]);
    const [open, ...others] = setbacks.filter(({ accepted: reason }) => !reason);
    expect(others).toEqual([]);
    expect(open!.blocks).not.toContain('screen-tilt');
    expect(open!.blocks).not.toContain('screen-height');
  });

  it('says nothing more where one check alone asks', () => {
    const skirts = [aSkirt('Front', ['Left'])];
    const [found] = asked(watching([], { skirts })).filter(({ check }) => check === 'skirt-flame');
    expect(found!.blocks).toBeUndefined();
    expect(found!.message).toMatch(/such as `[^`]+`\.$/);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

/** The worked examples of the reference figures: the test that holds each, or why no check is touched by it. */
const examples: Readonly<Record<string, { readonly in: readonly string[] } | { readonly none: string }>> = {
  T1: { in: ['checks/seat/feet-supported'] },
  T2: { in: ['checks/seat/feet-supported'] },
  T3: { in: ['checks/seat/seat-depth'] },
  T4: { in: ['checks/seat/seat-not-low'] },
  T5: { in: ['checks/seat/seated-elbow'] },
  T6: { in: ['checks/seat/seated-elbow'] },
  T7: { in: ['checks/seat/seated-elbow'] },
  T8: { in: ['checks/seat/seated-elbow'] },
  T9: { in: ['checks/stand/standing-work'] },
  T10: { in: ['checks/seat/feet-supported'] },
  T11: { in: ['checks/seat/feet-supported'] },
  T12: { in: ['checks/space/elbow-room', 'scene/neighbours'] },
  T13: { in: ['checks/space/pass-behind'] },
  T14: { in: ['checks/space/pass-behind'] },
  T15: { in: ['checks/space/room-behind', 'checks/space/elbow-room'] },
  T16: { in: ['checks/screen/text-size'] },
  T17: { in: ['checks/screen/text-size'] },
  T18: { in: ['checks/screen/screen-turn'] },
  T19: { in: ['checks/screen/screen-tilt'] },
  T20: { none: 'no check caps a console top: see-over asks what the operators named in the file see' },
  T21: { none: 'no check steps rows of seats: people in front are a height in see-over, not a row' },
  T22: { in: ['scene/reaching', 'checks/reach/reach'] },
  T23: { in: ['checks/seat/thigh-room', 'checks/seat/knee-room'] },
  T24: { in: ['checks/seat/thigh-room'] },
  T25: { in: ['checks/seat/stool-drop'] },
  T26: { in: ['checks/seat/seated-elbow', 'checks/stand/standing-work'] },
  T27: { in: ['checks/stand/standing-work', 'bodies/body'] },
};

const held = Object.entries(examples).flatMap(([id, where]) =>
  'in' in where ? where.in.map((file) => [id, file] as const) : [],
);

describe('the worked examples', () => {
  it('are T1 to T27, each held by a test or left out for a reason', () => {
    expect(Object.keys(examples)).toEqual(Array.from({ length: 27 }, (_, index) => `T${index + 1}`));
  });

  it.each(held)('%s is held by %s', (id, file) => {
    const text = readFileSync(new URL(`../${file}.test.ts`, import.meta.url), 'utf8');
    expect(text).toMatch(new RegExp(`\\b${id}\\b`));
  });
});

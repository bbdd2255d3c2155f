import { readFileSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { commandLine } from './boothwright.js';

const examples = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '../../examples');

/** Every check that the product knows: written out, so that a check which is lost is missed. */
const everyCheck = [
  'accessible-station',
  'crowd-served',
  'elbow-room',
  'feet-supported',
  'floor-cable',
  'knee-room',
  'legs-fit-top',
  'load',
  'mix-position',
  'overlap',
  'pass-behind',
  'platform-edge',
  'platform-step',
  'rack-fits',
  'reach',
  'room-behind',
  'screen-distance',
  'screen-height',
  'screen-tilt',
  'screen-turn',
  'screens-fit-desk',
  'seat-depth',
  'seat-not-low',
  'seat-width',
  'seated-elbow',
  'see-over',
  'seen-past',
  'skirt-drop',
  'skirt-flame',
  'skirt-run',
  'standing-work',
  'stool-drop',
  'text-size',
  'thigh-room',
  'toe-space',
  'walkway-capacity',
  'walkway-door',
  'walkway-head',
  'walkway-pinch',
  'walkway-projection',
  'walkway-turn',
  'walkway-width',
  'wheelchair-space',
];

/** Where a sound operator stands is told, never faulted: sources disagree. */
const informs = ['mix-position'];
/** Somebody must look at the certificate; no plan can. */
const neverPasses = ['skirt-flame'];

describe('the two plans of Oakmere Annex', () => {
  const { run, put } = commandLine();

  async function verdicts(plan: string): Promise<Map<string, Set<string>>> {
    const file = await put(plan, readFileSync(path.join(examples, plan), 'utf8'));
    const { out } = await run('check', file, '--format', 'json');
    const { findings } = JSON.parse(out) as { findings: { check: string; verdict: string }[] };
    const byCheck = new Map<string, Set<string>>();
    for (const { check, verdict } of findings) byCheck.set(check, (byCheck.get(check) ?? new Set()).add(verdict));
    return byCheck;
  }

  test('together name every check, and no other', async () => {
    const worst = await verdicts('oakmere-annex-worst.booth');
    const mended = await verdicts('oakmere-annex-mended.booth');
    expect([...worst.keys()].sort()).toEqual(everyCheck);
    expect([...mended.keys()].sort()).toEqual(everyCheck);
  });

  test('at its worst, every check finds fault', async () => {
    const worst = await verdicts('oakmere-annex-worst.booth');
    const silent = everyCheck.filter((check) => !worst.get(check)!.has('fail') && !worst.get(check)!.has('marginal'));
    expect(silent).toEqual([...informs, ...neverPasses]);
    for (const check of neverPasses) expect(worst.get(check)).toEqual(new Set(['unknown']));
  });

  test('mended, every check passes', async () => {
    const mended = await verdicts('oakmere-annex-mended.booth');
    const complaining = everyCheck.filter((check) => [...mended.get(check)!].some((verdict) => verdict !== 'pass'));
    expect(complaining).toEqual(neverPasses);
  });
});

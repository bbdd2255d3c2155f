import { describe, expect, it } from 'vitest';
import type { Booth, Monitor } from '../../booth.js';
import { aBooth, aDesk, aMeasuredOperator, anOperator, aStation, given } from '../../testing/booths.js';
import { findingOf, findingsOf, wholeBody } from '../../testing/findings.js';
import { aMonitor, aScreen } from '../../testing/screens.js';
import { outside } from '../../testing/outside.js';
import { told } from '../../testing/told.js';

/** A standing eye level with the middle of the screen, so far from it. */
function reading(distance: number, monitor: Partial<Monitor>, parts: Partial<Booth> = {}): Booth {
  const screens = [aScreen('Lyrics', distance, 'centre', 1500)];
  return aBooth({
    operators: [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1475 }))],
    desks: [aDesk('Left', 1000)],
    monitors: [aMonitor('Lyrics', 500, monitor)],
    workstations: [aStation('Words', 'Left', undefined, ['Noor'], { screens })],
    ...parts,
  });
}

const capital = (height: number): Partial<Monitor> => ({ text: given({ capital: height }) });
/** 500 mm across 2000 pixels of diagonal: a pitch of a quarter of a millimetre. */
const pixels = given({ across: 1600, down: 1200 });
const judge = (...place: Parameters<typeof reading>) => findingOf(reading(...place), 'text-size');

describe('text-size: arcminutes of a capital, preferred at least 20, outer at least 16', () => {
  it.each([
    // NUREG-0700 Rev. 2, 1.3.1-4: height = 6.283 · distance · arcminutes / 21600.
    [outside('NUREG-0700 Rev. 2, 1.3.1-4', 'T16: 16 arcminutes at 600 mm are 2.79 mm'), 600, 2.79, 16, 'marginal'],
    [outside('NUREG-0700 Rev. 2, 1.3.1-4', 'T16: 20 arcminutes at 600 mm are 3.49 mm'), 600, 3.49, 20, 'pass'],
    [outside('NUREG-0700 Rev. 2, 1.3.1-4', 'T16: 22 arcminutes at 600 mm are 3.84 mm'), 600, 3.84, 22, 'pass'],
    // ISO 11064-4: farthest distance 215 times the height, which is 16 arcminutes.
    [outside('ISO 11064-4:2013, in a secondary source', 'T17: 3 mm is read from 215 × 3 mm'), 645, 3, 16, 'marginal'],
    ['T17, 3 mm beyond that', 660, 3, 15.6, 'fail'],
    ['twice as far is half the angle', 1200, 3.49, 10, 'fail'],
    ['large text is no fault', 600, 12, 68.8, 'pass'],
  ] as const)('%s', (_, distance, height, arcminutes, verdict) => {
    const finding = judge(distance, capital(height));
    expect(finding.measured).toBeCloseTo(arcminutes, 1);
    expect(finding).toMatchObject({ verdict, unit: 'arcmin', operator: 'Noor' });
  });

  it.each([
    ['a tenth of an arcminute is allowed', 3.4736, 'pass'],
    ['two tenths are not', 3.455, 'marginal'],
    ['at the outer limit', 2.776, 'marginal'],
    ['below it', 2.757, 'fail'],
  ] as const)('%s', (_, height, verdict) => {
    expect(judge(600, capital(height)).verdict).toBe(verdict);
  });

  it.each([
    // Of a font, 0.7 is a capital: 20 px at 0.25 mm are 5 mm, and their capitals 3.5 mm.
    ['20 px', 20, 3.5],
    ['14 px', 14, 2.45],
  ])('%s on a pitch of 0.25 mm', (_, size, height) => {
    const inPixels = judge(600, { pixels, text: given({ pixels: size }) });
    expect(inPixels.measured).toBeCloseTo(judge(600, capital(height)).measured!);
  });

  it('the distance is slanted: the eye above the screen is farther from it', () => {
    const operators = [aMeasuredOperator('Noor', wholeBody({ standingEyeHeight: 1475 + 450 }))];
    expect(judge(600, capital(3), { operators }).measured).toBeCloseTo(judge(750, capital(3)).measured!);
  });

  it('names the smallest size that everyone who looks at it reads easily', () => {
    const finding = judge(600, { pixels, text: given({ pixels: 14 }) });
    expect(finding.message).toContain('14.0 arcminutes at 600 mm, for Noor standing; 20 read easily');
    expect(finding.message).toContain('Make the smallest text 20px.');
    expect(finding.remedies).toMatchObject([{ changes: [{ text: '20px' }], safe: true }]);
    expect(judge(600, { pixels, text: given({ pixels: 20 }) }).verdict).toBe('pass');
    expect(judge(600, { pixels, text: given({ pixels: 19 }) }).verdict).toBe('marginal');

    const far = aStation('Light', 'Left', undefined, ['Noor'], { screens: [aScreen('Lyrics', 900, 'centre', 1500)] });
    const booth = reading(600, { pixels, text: given({ pixels: 14 }) });
    const both = findingsOf({ ...booth, workstations: [...booth.workstations, far] }, 'text-size');
    expect(both.map(({ remedies }) => remedies[0]!.changes[0]!.text)).toEqual(['30px', '30px']);
  });

  it('a size in millimetres is answered in millimetres', () => {
    expect(judge(600, capital(2)).remedies[0]!.changes[0]!.text).toBe('3.5mm');
    expect(judge(600, capital(3.5)).verdict).toBe('pass');
  });

  it.each([
    [3.42, 'for Noor standing; 20 read easily'],
    [3.5, 'and less to eyes farther off; 20 read easily'],
  ])('an eye that is not measured gives a share: capitals of %d mm', (height, words) => {
    const operators = [anOperator('Noor', { stature: 1650 }, 'female')];
    const screens = [aScreen('Lyrics', 200, 'centre', 1000)];
    const workstations = [aStation('Words', 'Left', undefined, ['Noor'], { screens })];
    const finding = judge(1, capital(height), { operators, workstations });
    expect(finding.verdict).toBe('marginal');
    expect(finding.share).toBeGreaterThan(0.05);
    expect(finding.share).toBeLessThan(0.9);
    expect(finding.shareAtLimit).toBe(1);
    expect(finding.message).toContain(words);
  });

  it.each([
    ['text', {}],
    ['pixels', { text: given({ pixels: 14 }) }],
  ])('asks for the %s once, however many look at it', (property, monitor) => {
    const operators = ['Noor', 'Tobias'].map((name) => anOperator(name, { stature: 1650 }));
    const screens = [aScreen('Lyrics', 600, 'centre', 1500)];
    const workstations = ['Words', 'Light'].map((name) =>
      aStation(name, 'Left', undefined, ['Noor', 'Tobias'], { screens }),
    );
    expect(judge(600, monitor, { operators, workstations })).toMatchObject({
      verdict: 'unknown',
      missing: { property, of: 'monitor Lyrics' },
    });
  });

  it('asks where the screen stands', () => {
    const { setback: _, ...screen } = aScreen('Lyrics', 1, 'centre', 1500);
    const workstations = [aStation('Words', 'Left', undefined, ['Noor'], { screens: [screen] })];
    expect(judge(1, capital(3), { workstations })).toMatchObject({
      verdict: 'unknown',
      missing: { property: 'setback' },
    });
  });

  it('asks nothing of a monitor that nobody watches', () => {
    expect(findingsOf(reading(600, {}, { workstations: [] }), 'text-size')).toEqual([]);
  });
});

describe('text-size: what a reader is told', () => {
  const tell = (...args: Parameters<typeof reading>) => told(reading(...args), 'text-size');

  it('where it reads easily, hardly, and not', () => {
    expect(tell(600, capital(4))).toMatchInlineSnapshot(`
      "pass, monitor Lyrics, Noor, stand
      Capitals on Lyrics are 4.0 mm high, 22.9 arcminutes at 600 mm, for Noor standing: easy to read.
      : 22.92 against 20 arcmin, margin 2.92, shares 1 and 1
      at monitors.Lyrics.text, by NUREG-0700 Rev. 2, 1.3.1-4
      see operators.Noor: what is known of Noor
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
    expect(tell(600, capital(3))).toMatchInlineSnapshot(`
      "marginal, monitor Lyrics, Noor, stand
      Capitals on Lyrics are 3.0 mm high, 17.1 arcminutes at 600 mm, for Noor standing; 20 read easily, below 16 eyes strain. Make the smallest text 3.5mm.
      : 17.19 against 20 arcmin, margin -2.81, shares 0 and 1
      at monitors.Lyrics.text, by NUREG-0700 Rev. 2, 1.3.1-4
      see operators.Noor: what is known of Noor
      do Make the smallest text of Lyrics 3.5mm: easy to read for everyone who looks at it | monitors.Lyrics.text := 3.5mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
    expect(tell(600, capital(2))).toMatchInlineSnapshot(`
      "fail, monitor Lyrics, Noor, stand
      Capitals on Lyrics are 2.0 mm high, 11.4 arcminutes at 600 mm, for Noor standing; 20 read easily, below 16 eyes strain. Make the smallest text 3.5mm.
      : 11.46 against 16 arcmin, margin -4.54, shares 0 and 0
      at monitors.Lyrics.text, by NUREG-0700 Rev. 2, 1.3.1-4
      see operators.Noor: what is known of Noor
      do Make the smallest text of Lyrics 3.5mm: easy to read for everyone who looks at it | monitors.Lyrics.text := 3.5mm
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
  });

  it('in pixels', () => {
    expect(tell(600, { pixels, text: given({ pixels: 12 }) })).toMatchInlineSnapshot(`
      "fail, monitor Lyrics, Noor, stand
      Capitals on Lyrics are 2.1 mm high, 12.0 arcminutes at 600 mm, for Noor standing; 20 read easily, below 16 eyes strain. Make the smallest text 20px.
      : 12.03 against 16 arcmin, margin -3.97, shares 0 and 0
      at monitors.Lyrics.text, by NUREG-0700 Rev. 2, 1.3.1-4
      see operators.Noor: what is known of Noor
      do Make the smallest text of Lyrics 20px: easy to read for everyone who looks at it | monitors.Lyrics.text := 20px
      default shoes of 25 mm; eyes and shoulders 0 mm over the desk’s edge; a picture of 4:3"
    `);
  });

  it('where something is missing', () => {
    expect(tell(600, {})).toMatchInlineSnapshot(`
      "unknown, monitor Lyrics
      Cannot say how large the text of Lyrics looks. Add \`text\` to monitor Lyrics, such as \`text 14px\`.
      at monitors.Lyrics, by NUREG-0700 Rev. 2, 1.3.1-4
      ask text of monitor Lyrics, as text 14px, at monitors.Lyrics"
    `);
    expect(tell(600, { text: given({ pixels: 12 }) })).toMatchInlineSnapshot(`
      "unknown, monitor Lyrics
      Cannot say how large the text of Lyrics looks. Add \`pixels\` to monitor Lyrics, such as \`pixels 1920 x 1080\`.
      at monitors.Lyrics, by NUREG-0700 Rev. 2, 1.3.1-4
      ask pixels of monitor Lyrics, as pixels 1920 x 1080, at monitors.Lyrics"
    `);
    expect(tell(600, { ...capital(4), diagonal: undefined })).toMatchInlineSnapshot(`
      "unknown, monitor Lyrics
      Cannot say how large the text looks on Lyrics at Words. Add \`diagonal\` to monitor Lyrics, such as \`diagonal 610mm\`.
      at workstations.Words.screens.0.monitor, by NUREG-0700 Rev. 2, 1.3.1-4
      ask diagonal of monitor Lyrics, as diagonal 610mm, at monitors.Lyrics"
    `);
  });

  it('offers a size for those who look at this monitor, and nothing where the text does not say what to change', () => {
    const other = { monitors: [aMonitor('Lyrics', 500, capital(3)), aMonitor('Far', 500, capital(20))] };
    const screens = [aScreen('Lyrics', 600, 'centre', 1500), aScreen('Far', 3000, 'centre', 1500)];
    const workstations = [
      aStation('Words', 'Left', undefined, ['Noor'], { screens }),
      aStation('Sound', 'Left', undefined, ['Noor'], { screens: screens.slice(1) }),
    ];
    const [lyrics] = findingsOf(reading(1, {}, { ...other, workstations }), 'text-size');
    // 20 arcminutes at 600 mm are 3.49 mm.
    expect(lyrics!.remedies[0]!.changes[0]!.text).toBe('3.5mm');
    expect(judge(600, { text: { value: { capital: 3 }, isDefault: false } })).toMatchObject({
      verdict: 'marginal',
      remedies: [],
    });
  });
});

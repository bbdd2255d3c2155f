import { execFileSync } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { beforeAll, expect, it } from 'vitest';
import { commandLine, type Outcome } from './boothwright.js';
import { dragging, seated, shared } from './booths.js';

const { runWith, put, folder } = commandLine();

type Environment = Record<string, string>;
const here: Environment = { LC_ALL: 'C', TZ: 'UTC' };
/** Decimal commas, digits and calendars of their own, an i without a dot; days that have begun already, or not yet. */
const elsewhere: readonly Environment[] = [
  { LC_ALL: 'tr_TR.UTF-8', LANGUAGE: 'de', TZ: 'Pacific/Kiritimati' },
  { LC_ALL: 'ar_EG.UTF-8', TZ: 'Europe/Berlin' },
  { LANG: 'th_TH.UTF-8', TZ: 'Pacific/Pago_Pago' },
];

const commands = [
  ['check', 'hall.booth', 'seated.booth', 'shared.booth'],
  ['check', 'seated.booth', '--format', 'json'],
  ['advise', 'shared.booth'],
  ['explain', '--all'],
  ['check', 'nothing-there.booth'],
];
const written = [
  ['report', 'seated.booth', '-o', 'written.html'],
  ['report', 'seated.booth', '-o', 'written.md'],
  ['draw', 'seated.booth', '-o', 'written.dxf'],
];

/** A report names the day on which it was made, which is another one elsewhere. */
const withoutDay = (text: string) => text.replaceAll(/\b\d{1,2} [A-Z][a-z]+ 20\d\d\b/g, 'DAY');

async function allOf(env: Environment): Promise<readonly { command: string; outcome: Outcome; file?: string }[]> {
  const all = [];
  for (const command of commands) all.push({ command: command.join(' '), outcome: await runWith(env, ...command) });
  for (const command of written) {
    const outcome = await runWith(env, ...command);
    const file = await readFile(path.join(folder(), command.at(-1)!), 'utf8');
    all.push({ command: command.join(' '), outcome, file: withoutDay(file) });
  }
  return all;
}

let expected: Awaited<ReturnType<typeof allOf>>;
beforeAll(async () => {
  await put('hall.booth', dragging);
  await put('seated.booth', seated);
  await put('shared.booth', shared);
  expected = await allOf(here);
}, 120_000);

it('what is compared is there', () => {
  expect(expected.map(({ outcome }) => outcome.status)).toEqual([1, 1, 0, 0, 2, 0, 0, 0]);
  for (const { outcome, file } of expected)
    expect((file ?? `${outcome.out}${outcome.err}`).length).toBeGreaterThan(file ? 500 : 30);
});

it.each(elsewhere)(
  'the same is said and written under %o',
  async (env) => {
    const place = 'JSON.stringify(Intl.DateTimeFormat().resolvedOptions(), ["locale", "timeZone"])';
    const told = execFileSync(process.execPath, ['-p', place], { env, encoding: 'utf8' });
    const locale = (env.LC_ALL ?? env.LANG)!.slice(0, 5).replace('_', '-');
    expect(JSON.parse(told), 'the process is elsewhere indeed').toEqual({ locale, timeZone: env.TZ });
    expect(await allOf(env)).toEqual(expected);
  },
  120_000,
);

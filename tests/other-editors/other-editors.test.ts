import { execFileSync, spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ensureEditors } from './editors.js';

const root = path.resolve(import.meta.dirname, '../..');
const scratch = mkdtempSync(path.join(tmpdir(), 'boothwright-other-editors-'));
const program = path.join(scratch, 'bin', 'boothwright-language-server');
const env = { ...process.env, PATH: `${path.dirname(program)}${path.delimiter}${process.env.PATH}`, HOME: scratch };

/** What an editor's script wrote of what it saw. */
interface Seen {
  readonly fault?: string;
  readonly diagnostics: readonly { readonly line: number; readonly message: string }[];
  readonly hover: string;
  readonly completion: readonly string[];
  readonly actions: readonly string[];
  readonly fixed: readonly string[];
  readonly formatted: readonly string[];
}

beforeAll(() => {
  ensureEditors();
  const packed = execFileSync(process.execPath, ['.config/package-server.mjs', scratch], {
    cwd: root,
    encoding: 'utf8',
  });
  const file = packed.trim().split('\n').at(-1)!;
  execFileSync('npm', ['install', '--global', '--prefix', scratch, '--offline', '--no-audit', '--no-fund', file], {
    stdio: ['ignore', 'ignore', 'inherit'],
  });
}, 300_000);

afterAll(() => rmSync(scratch, { recursive: true, force: true }));

/** The settings that the README tells a person to write. */
function settings(language: string, name: string): string {
  const readme = readFileSync(path.join(root, 'README.md'), 'utf8');
  const file = path.join(scratch, name);
  writeFileSync(file, new RegExp(`\`\`\`${language}\\n([\\s\\S]*?)\`\`\``).exec(readme)![1]!);
  return file;
}

function drive(command: string, args: readonly string[]): Seen {
  const folder = mkdtempSync(path.join(scratch, 'hall-'));
  const [booth, results] = [path.join(folder, 'hall.booth'), path.join(folder, 'results.json')];
  writeFileSync(booth, text);
  const { stderr, stdout } = spawnSync(command, args, {
    cwd: folder,
    env: { ...env, BOOTH: booth, RESULTS: results },
    encoding: 'utf8',
    timeout: 90_000,
  });
  if (!existsSync(results)) throw new Error(`${command} wrote nothing: ${stderr}${stdout}`);
  return JSON.parse(readFileSync(results, 'utf8')) as Seen;
}

const text = `booth "Hall" { show in }
desk Left { width 60in  height 40in }
skirt Front { on Left  drop 45in }
`;

describe.each([
  [
    'Neovim',
    'nvim',
    () => [
      '--headless',
      '-u',
      settings('lua', 'init.lua'),
      '-c',
      `luafile ${path.join(import.meta.dirname, 'drive.lua')}`,
    ],
  ],
  [
    'Emacs',
    'emacs',
    () => ['--batch', '-q', '-l', settings('elisp', 'init.el'), '-l', path.join(import.meta.dirname, 'drive.el')],
  ],
] as const)('%s, with the settings of the README and the packed server', (_, command, args) => {
  let seen: Seen;
  beforeAll(() => {
    seen = drive(command, args());
  }, 120_000);

  test('has no fault', () => {
    expect(seen.fault).toBeUndefined();
  });

  test('shows the findings at their lines', () => {
    const drags = seen.diagnostics.find(({ message }) => message.includes('drags on the floor'));
    expect(drags?.line).toBe(2);
  });

  test('shows the figures in a hover', () => {
    expect(seen.hover).toMatch(/\*\*Left\*\*, desk[\s\S]*\| height \| 40 in \|/);
  });

  test('completes the properties that are not said', () => {
    expect(seen.completion).toEqual(expect.arrayContaining(['depth', 'top']));
    expect(seen.completion).not.toContain('width');
  });

  test('applies the fix that is offered', () => {
    expect(seen.actions[0]).toMatch(/^Set the drop to 39 1\/4in/);
    expect(seen.fixed).toContain('skirt Front { on Left  drop 39 1/4in }');
  });

  test('formats', () => {
    expect(seen.formatted.slice(0, 2)).toEqual(['booth "Hall" { show in }', 'desk Left { width 60in  height 40in }']);
  });
});

describe('the program', () => {
  const run = (...args: string[]) => spawnSync(program, args, { encoding: 'utf8', env });

  test('tells its version and its use', () => {
    expect(run('--version').stdout).toMatch(/^\d+\.\d+\.\d+\n$/);
    expect(run('--help').stdout).toContain('--stdio');
  });

  test.each([[], ['--what']])('says what it takes, with status 2: %s', (...args) => {
    const { status, stderr } = run(...args);
    expect(status).toBe(2);
    expect(stderr).toMatch(/^boothwright-language-server: .* It takes --stdio; --help says more\.\n$/);
  });
});

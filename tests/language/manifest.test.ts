import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { listFiles, PackageManager } from '@vscode/vsce';
import { describe, expect, test } from 'vitest';
import { readManifest } from '../words/manifest.js';

interface Step {
  readonly title: string;
  readonly description: string;
  readonly media: { readonly svg: string; readonly altText: string };
  readonly completionEvents: readonly string[];
}

interface Command {
  readonly command: string;
  readonly title: string;
  readonly category?: string;
}

interface Manifest {
  readonly icon: string;
  readonly extensionKind: readonly string[];
  readonly capabilities: Record<
    'untrustedWorkspaces' | 'virtualWorkspaces',
    { supported: boolean; description: string }
  >;
  readonly contributes: {
    readonly commands: readonly Command[];
    readonly menus: Record<string, readonly { command: string; when?: string }[]>;
    readonly languages: readonly [{ configuration: string; icon: { light: string; dark: string } }];
    readonly grammars: readonly [{ path: string }];
    readonly snippets: readonly [{ path: string }];
    readonly walkthroughs: readonly [{ readonly steps: readonly Step[] }];
    readonly configuration: { properties: Record<string, unknown> };
  };
}

const root = new URL('../../', import.meta.url);
const manifest = readManifest() as Manifest;
const { commands, menus, languages, grammars, snippets, configuration, walkthroughs } = manifest.contributes;
const [{ steps }] = walkthroughs;
const read = (file: string) => readFileSync(new URL(file, root), 'utf8');

/** Those that work without a booth file. */
const anywhere = ['boothwright.newBooth', 'boothwright.explain'];

describe('each command', () => {
  test.each(commands)(
    '$command stands under the product’s name, and ends in … if it asks first',
    ({ category, title }) => {
      expect(category).toBe('Boothwright');
      expect(title).toMatch(/^[A-Z][a-z ]+…?$/);
    },
  );

  test.each(commands)('$command is in the palette only where it works', ({ command }) => {
    const when = menus.commandPalette!.find((item) => item.command === command)?.when;
    if (anywhere.includes(command)) expect(when).toBeUndefined();
    else expect(when).toMatch(/\beditorLangId == booth\b|\bboothwright\.running\b/);
  });
});

test('the context menu of other files holds none of them', () => {
  for (const { when } of menus['editor/context']!) expect(when).toContain('editorLangId == booth');
});

test('there are at most twelve settings', () => {
  expect(Object.keys(configuration.properties).length).toBeLessThanOrEqual(12);
});

describe('the walkthrough', () => {
  test('has at most five steps, and ends with the report', () => {
    expect(steps.length).toBeLessThanOrEqual(5);
    expect(steps.at(-1)!.description).toContain('(command:boothwright.writeReport)');
  });

  test.each(steps)(
    '$title: leads to commands that there are, and is done by them',
    ({ description, completionEvents }) => {
      const ids = [...description.matchAll(/\(command:([\w.]+)\)/g)].map(([, id]) => id!);
      const ours = ids.filter((id) => id.startsWith('boothwright.'));
      expect(ours.filter((id) => !commands.some(({ command }) => command === id))).toEqual([]);
      expect(completionEvents).toEqual(ids.length > 0 ? ids.map((id) => `onCommand:${id}`) : ['onStepSelected']);
    },
  );

  test.each(steps)('$title: its drawing takes every colour from the theme, and is told in words too', ({ media }) => {
    const drawing = read(media.svg);
    const fallback = /var\(--vscode-[\w-]+, #[0-9a-f]{6}\)/g;
    expect(drawing.match(fallback)!.length).toBeGreaterThan(3);
    const rest = drawing.replace(fallback, 'var()');
    expect(rest.match(/#[0-9a-f]{3,8}\b|\brgb|(?:fill|stroke)(?:="|: )(?!none|var\()[a-z]+/gi)).toBeNull();
    // The editor lets no style sheet or attribute of a drawing through: without colours of its own all would be black.
    expect(drawing).not.toMatch(/<style|style=|class=/);
    expect(media.altText).toMatch(/^[A-Z].{20,}\.$/);
  });
});

test('each file that the manifest names is in the package', { timeout: 120_000 }, async () => {
  const [{ configuration: own, icon }] = languages;
  const named = [
    manifest.icon,
    own,
    icon.light,
    icon.dark,
    ...[...snippets, ...grammars].map(({ path }) => path),
    ...steps.map(({ media }) => media.svg),
  ];
  const packed = await listFiles({ cwd: fileURLToPath(root), packageManager: PackageManager.None });
  expect(named.map((file) => file.replace(/^\.\//, '')).filter((file) => !packed.includes(file))).toEqual([]);
  expect(packed.filter((file) => /(^|\/)(src|tests)\//.test(file))).toEqual([]);
});

test('nothing that is executed comes from a folder, so an untrusted one and one without a disk are supported', () => {
  expect(manifest.capabilities.untrustedWorkspaces.supported).toBe(true);
  expect(manifest.capabilities.virtualWorkspaces.supported).toBe(true);
  expect(manifest.extensionKind).toEqual(['workspace']);
  const bundles = ['packages/extension/src', 'packages/language/src', 'packages/report/src', 'packages/fit/src'];
  const sources = bundles.flatMap((folder) =>
    readdirSync(new URL(folder, root), { recursive: true, encoding: 'utf8' })
      .filter((file) => /(?<!\.test)\.tsx?$/.test(file))
      .map((file) => `${folder}/${file}`),
  );
  expect(sources.length).toBeGreaterThan(100);
  const executes = /\bchild_process\b|\beval\(|\bnew Function\(|\bcreateTerminal\(|\bfetch\(|\bXMLHttpRequest\b/;
  expect(sources.filter((file) => executes.test(read(file)))).toEqual([]);
});

import { mkdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import schema from '@microsoft/jest-sarif/lib/schemas/sarif-2.1.0-rtm.5.json' with { type: 'json' };
import { checks } from '@boothwright/fit';
import AjvDraft4 from 'ajv-draft-04';
import addFormats from 'ajv-formats';
import type { Log, Result, Run } from 'sarif';
import { describe, expect, it } from 'vitest';
import { commandLine } from './boothwright.js';
import { accepted, dragging, faulty, good, seated, second } from './booths.js';

const { run, put, folder } = commandLine();
// The schema's pattern of a language is not one under the unicode flag.
const validate = addFormats(new AjvDraft4({ strict: false, unicodeRegExp: false })).compile(schema);

/** The only run of a log, which must keep to the published schema. */
function parse(out: string): Run {
  const log = JSON.parse(out) as Log;
  expect(validate(log), JSON.stringify(validate.errors)).toBe(true);
  expect(log.version).toBe('2.1.0');
  expect(log.runs).toHaveLength(1);
  return log.runs[0]!;
}

async function check(...args: string[]) {
  const { status, out, err } = await run('check', ...args, '--format', 'sarif');
  const whole = parse(out);
  return { status, err, whole, results: whole.results! };
}

const about = (results: readonly Result[], rule: string) => results.filter(({ ruleId }) => ruleId === rule);

describe('check --format sarif', () => {
  it('says what failed and where, with a path from the folder, and ends with 1', async () => {
    const { status, err, whole, results } = await check(await put('dragging.booth', dragging));
    expect([status, err]).toEqual([1, '']);
    const [result] = about(results, 'skirt-drop');
    const column = dragging.split('\n')[2]!.indexOf('41in') + 1;
    expect(result).toMatchObject({
      level: 'error',
      kind: 'fail',
      locations: [
        {
          physicalLocation: {
            artifactLocation: { uri: 'dragging.booth', uriBaseId: '%SRCROOT%' },
            region: { startLine: 3, startColumn: column, endLine: 3, endColumn: column + 4 },
          },
        },
      ],
      properties: { verdict: 'fail', measured: -25.4, unit: 'mm' },
    });
    expect(whole.tool.driver.rules![result!.ruleIndex!]!.id).toBe('skirt-drop');
    expect(whole.invocations).toEqual([{ executionSuccessful: true, exitCode: 1 }]);
    expect(whole.columnKind).toBe('utf16CodeUnits');
    expect(JSON.stringify(whole)).not.toContain(folder());
    expect(validate({ version: '2.1.0', runs: [{ ...whole, tool: {} }] })).toBe(false);
  });

  it('gives every verdict its level, and every result a rule that is there', async () => {
    const { whole, results } = await check(await put('seated.booth', seated), '--passes');
    const json = JSON.parse((await run('check', 'seated.booth', '--format', 'json')).out) as {
      findings: { verdict: string; message: string }[];
    };
    const level = { fail: 'error', marginal: 'warning', unknown: 'note', pass: 'none' } as Record<string, string>;
    expect(results.map((result) => [result.level, result.properties!.verdict as unknown])).toEqual(
      json.findings.map(({ verdict }) => [level[verdict], verdict]),
    );
    expect(new Set(json.findings.map(({ verdict }) => verdict)).size).toBeGreaterThanOrEqual(3);
    for (const result of results) {
      expect(whole.tool.driver.rules![result.ruleIndex!]!.id).toBe(result.ruleId);
      expect(result.kind).toBe(result.level === 'none' ? 'pass' : 'fail');
    }
    const silent = await check('seated.booth');
    expect(silent.results.length).toBe(json.findings.filter(({ verdict }) => verdict !== 'pass').length);
  });

  it('describes every check of the catalogue', async () => {
    const { whole } = await check(await put('good.booth', good));
    const rules = new Map(whole.tool.driver.rules!.map((rule) => [rule.id, rule]));
    expect([...rules.keys()]).toEqual(checks.map(({ id }) => id));
    for (const { id, question, limits, sources } of checks) {
      const { help, fullDescription, shortDescription } = rules.get(id)!;
      expect(shortDescription!.text.length).toBeGreaterThan(3);
      expect(fullDescription!.text).toContain(question);
      const markdown = help!.markdown!.replace(/\\(.)/g, '$1');
      expect(markdown).toContain(limits);
      for (const { name } of sources) {
        expect(markdown).toContain(name);
        expect(help!.text.replace(/\s+/g, ' ')).toContain(name);
      }
    }
  });

  it('suppresses what the file accepts, with the reason, and ends with 0', async () => {
    const { status, results } = await check(await put('accepted.booth', accepted));
    expect(status).toBe(0);
    expect(about(results, 'skirt-drop')[0]).toMatchObject({
      level: 'error',
      suppressions: [{ kind: 'inSource', status: 'accepted', justification: 'hemmed on site' }],
    });
    const { results: open } = await check(await put('dragging.booth', dragging));
    expect(about(open, 'skirt-drop')[0]!.suppressions).toBeUndefined();
  });

  it('knows a finding again when the file is edited around it, and each from the others', async () => {
    const prints = async (text: string) => {
      const { results } = await check(await put('moving.booth', text));
      return results.map(({ partialFingerprints }) => partialFingerprints!['aboutHash/v1']);
    };
    const before = await prints(seated);
    expect(before.length).toBeGreaterThan(3);
    expect(new Set(before).size).toBe(before.length);
    expect(await prints(`// A line more.\n\n${seated}`)).toEqual(before);
    const other = await prints(seated.replaceAll('Tobias', 'Priya'));
    expect(other.some((print) => !before.includes(print))).toBe(true);
    expect(other.some((print) => before.includes(print))).toBe(true);
  });

  it('offers the changes that it computed, in the places where they belong', async () => {
    const { results } = await check(await put('seated.booth', seated));
    const fixes = results.flatMap((result) => result.fixes ?? []);
    expect(fixes.length).toBeGreaterThan(0);
    const lines = seated.split('\n');
    for (const { deletedRegion: region } of fixes.flatMap(({ artifactChanges }) =>
      artifactChanges.flatMap(({ replacements }) => replacements),
    )) {
      expect(region.startLine).toBe(region.endLine);
      const replaced = lines[region.startLine! - 1]!.slice(region.startColumn! - 1, region.endColumn! - 1);
      expect(replaced).toMatch(/^\d[\d /.'"a-z]*$/);
    }
  });

  it('tells of faults in the text, and of what could be read, and ends with 2', async () => {
    const { status, err, whole, results } = await check(await put('faulty.booth', `${faulty}${second}`));
    expect([status, err]).toEqual([2, '']);
    expect(about(results, 'no-unit')[0]).toMatchObject({
      level: 'error',
      locations: [{ physicalLocation: { region: { startLine: 3 } } }],
    });
    expect(about(results, 'skirt-drop').map(({ properties }) => properties!.subject as string)).toContain('skirt Side');
    expect(whole.invocations).toEqual([{ executionSuccessful: false, exitCode: 2 }]);
    expect(whole.tool.driver.rules!.at(-1)).toMatchObject({
      id: 'no-unit',
      shortDescription: { text: 'A number without its unit' },
      help: { text: expect.stringContaining('desk Left { width 60 }') as unknown },
    });
  });

  it('notes a file that cannot be read', async () => {
    const { status, whole, results } = await check('missing.booth');
    expect([status, results]).toEqual([2, []]);
    expect(whole.invocations![0]!.toolExecutionNotifications).toMatchObject([
      { level: 'error', locations: [{ physicalLocation: { artifactLocation: { uri: 'missing.booth' } } }] },
    ]);
  });

  it('writes paths as addresses', async () => {
    await mkdir(path.join(folder(), 'a hall'), { recursive: true });
    const { results } = await check(await put('a hall/the #1 booth.booth', dragging));
    const { uri } = results[0]!.locations![0]!.physicalLocation!.artifactLocation!;
    expect(uri).toBe('a%20hall/the%20%231%20booth.booth');
    expect(await readFile(path.join(folder(), decodeURIComponent(uri!)), 'utf8')).toBe(dragging);
  });

  it('puts several files into one run', async () => {
    const { results } = await check(await put('dragging.booth', dragging), await put('accepted.booth', accepted));
    const uris = about(results, 'skirt-drop').map(
      ({ locations }) => locations![0]!.physicalLocation!.artifactLocation!.uri,
    );
    expect(uris).toEqual(['dragging.booth', 'accepted.booth']);
    const [first, other] = about(results, 'skirt-drop').map(({ partialFingerprints }) => partialFingerprints);
    expect(first).not.toEqual(other);
  });
});

import { checks, type Check, type Finding } from '@boothwright/fit';
import { analyse } from '@boothwright/language';
import { EmptyFileSystem, URI } from 'langium';
import { describe, expect, it } from 'vitest';

const fileSystem = EmptyFileSystem.fileSystemProvider();

/** The example as a file, through the real language; its text must be without fault. */
async function findingsOf(check: Check, text: string): Promise<readonly Finding[]> {
  const { diagnostics, assessment } = await analyse({ uri: URI.parse('test:/example.booth'), text }, { fileSystem });
  expect(diagnostics.filter(({ kind }) => kind === 'text').map(({ message }) => message)).toEqual([]);
  return assessment!.findings.filter((finding) => finding.check === check.id);
}

/** These inform or ask, and never judge. */
const unjudging = ['mix-position', 'skirt-flame'];

const verdicts = (findings: readonly Finding[]) => findings.map(({ verdict }) => verdict);

describe.each(checks.map((check) => [check.id, check] as const))('the examples of %s', (_, check) => {
  it('fire', async () => {
    const found = verdicts(await findingsOf(check, check.example.fires));
    const fires = unjudging.includes(check.id) ? ['unknown'] : ['fail', 'marginal'];
    expect(found.filter((verdict) => fires.includes(verdict)).length, found.join()).toBeGreaterThan(0);
  });

  it('pass', async () => {
    const findings = await findingsOf(check, check.example.passes);
    expect(findings.filter(({ verdict }) => verdict !== 'pass').map(({ message }) => message)).toEqual([]);
  });
});

describe('the catalogue', () => {
  it('has a name of its own for each check, and says all of it', () => {
    expect(new Set(checks.map(({ id }) => id)).size).toBe(checks.length);
    for (const { id, question, sources, computes, limits } of checks) {
      expect(id).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(question, id).toMatch(/\?$/);
      expect(sources.length, id).toBeGreaterThan(0);
      expect(
        [computes, limits].every((text) => text.length > 10),
        id,
      ).toBe(true);
    }
  });
});

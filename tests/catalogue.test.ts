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

/** Their examples have nothing that the file's own limit would be about; their own tests hold them to it. */
const heldInOwnTests = ['rack-fits', 'skirt-run', 'walkway-pinch'];
const limited = checks.filter(({ id, takesLimit }) => takesLimit && !heldInOwnTests.includes(id));
const unlimited = checks.filter(({ takesLimit }) => !takesLimit);

describe('a limit of the file’s own', () => {
  const withLimit = ({ id, example: { fires } }: Check) => {
    const said = `limit ${id} 3in because "our own"`;
    const hasBooth = fires.includes('booth "');
    return hasBooth
      ? fires.replace(/booth "[^"]*" \{/, (head) => `${head} ${said} `)
      : `booth "Own" { ${said} }\n${fires}`;
  };

  it.each(limited.map((check) => [check.id, check] as const))(
    'is what %s is held to, its reason repeated',
    async (_, check) => {
      const sources = (await findingsOf(check, withLimit(check))).map(({ source }) => source);
      expect(sources).toContain('the file’s own limit: our own');
    },
  );

  it.each(unlimited.map((check) => [check.id, check] as const))(
    'is refused for %s, not passed over',
    async (_, check) => {
      const text = withLimit(check);
      const { diagnostics } = await analyse({ uri: URI.parse('test:/own.booth'), text }, { fileSystem });
      expect(diagnostics.filter(({ kind }) => kind === 'text').map(({ code }) => code)).toEqual(['no-single-limit']);
    },
  );
});

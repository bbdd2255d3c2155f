import { Ajv2020 } from 'ajv/dist/2020.js';
import { beforeAll, describe, expect, it } from 'vitest';
import schema from '../../packages/cli/schema/advice-1.schema.json' with { type: 'json' };
import { commandLine, type Outcome } from './boothwright.js';
import { faulty, furniture, good, shared } from './booths.js';

const { run, put } = commandLine();
const validate = new Ajv2020({ strict: true, allowUnionTypes: true }).compile(schema);

let text: Outcome;
let json: Outcome;

beforeAll(async () => {
  await put('shared.booth', shared);
  text = await run('advise', 'shared.booth');
  json = await run('advise', 'shared.booth', '--format', 'json');
}, 60_000);

interface Printed {
  readonly workstations: readonly {
    readonly name: string;
    readonly plans: readonly {
      readonly title: string;
      readonly changes: readonly Change[];
      readonly serves: string[];
    }[];
    readonly notes: readonly string[];
    readonly bands: readonly { readonly part: string }[];
    readonly curves: readonly { readonly points: readonly unknown[] }[];
  }[];
  readonly measure: readonly { readonly operator: string; readonly how: string }[];
  readonly shopping: readonly { readonly item: string; readonly wants: readonly string[] }[];
  readonly [field: string]: unknown;
}

interface Change {
  readonly range: { readonly start: Position; readonly end: Position };
  readonly text: string;
}

interface Position {
  readonly line: number;
  readonly column: number;
}

/** The printed object, which must keep to the schema. */
function parse(out: string): Printed {
  const printed: unknown = JSON.parse(out);
  expect(validate(printed), JSON.stringify(validate.errors)).toBe(true);
  return printed as Printed;
}

/** The text with a plan's changes in it. */
function withChanges(text: string, changes: readonly Change[]): string {
  const lines = text.split('\n');
  const backwards = [...changes].sort((a, b) => b.range.start.column - a.range.start.column);
  for (const { range, text: put } of backwards) {
    const line = lines[range.start.line - 1]!;
    lines[range.start.line - 1] = line.slice(0, range.start.column - 1) + put + line.slice(range.end.column - 1);
  }
  return lines.join('\n');
}

describe('advise', () => {
  it('tells of every workstation, of what to measure and of what to ask for', () => {
    const { status, out, err } = text;
    expect([status, err]).toEqual([0, '']);
    const parts = [
      'Larkfield Hall shared.booth',
      'Workstation Sound',
      'Workstation Words',
      'Measure next',
      'What to ask for in a shop',
    ];
    const starts = parts.map((part) => out.search(new RegExp(`^${part}`, 'm')));
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
    expect(starts[0]).toBe(0);
    expect(out.replace(/\s+/g, ' ')).toMatch(
      /Best plan: Make the desk Right adjustable from .* to .* in .*: serves 2 of 2/,
    );
    expect(out).toMatch(/Leaves out: Noor, standing: ‘[^’]+’ misses by \d.* in\.$/m);
    expect(out).toMatch(/^ {4}Tobias, standing {2}\d.* to .* in$/m);
    expect(out).toContain('planning aid');
    expect(Math.max(...out.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
  });

  it('says what it prints as text in JSON too, and what it promises holds', async () => {
    expect([json.status, json.err]).toEqual([0, '']);
    const { workstations, measure, shopping } = parse(json.out);
    const words = text.out.replace(/\s+/g, ' ');
    const said = [
      ...workstations.flatMap(({ plans, notes }) => [...plans.map(({ title }) => title), ...notes]),
      ...measure.map(({ how }) => how),
      ...shopping.map(({ item, wants }) => `${item}: ${wants.join('; ')}`),
    ];
    expect(said.length).toBeGreaterThan(5);
    for (const one of said) expect(words).toContain(one);
    expect(workstations[0]!.curves[0]!.points.length).toBeGreaterThan(10);

    const [plan] = workstations[0]!.plans;
    expect(plan!.serves).toEqual(['Noor', 'Tobias']);
    await put('changed.booth', withChanges(shared, plan!.changes));
    const after = JSON.parse((await run('check', 'changed.booth', '--format', 'json')).out) as {
      workstations: { name: string; served: { who: string; verdict: string }[] }[];
    };
    const sound = after.workstations.find(({ name }) => name === 'Sound')!;
    expect(sound.served.map(({ verdict }) => verdict)).toEqual(['pass', 'pass', 'pass', 'pass']);
  });

  it('keeps to one workstation when it is named', async () => {
    const { out } = await run('advise', 'shared.booth', 'Words', '--format', 'json');
    const { workstations, measure, shopping } = parse(out);
    expect(workstations.map(({ name }) => name)).toEqual(['Words']);
    expect(measure.map(({ operator }) => operator)).toEqual(['Priya']);
    expect(shopping.map(({ item }) => item)).toEqual(['desk Left', 'stool Tall']);
  });

  it('prints the shopping specification alone', async () => {
    const { status, out } = await run('advise', 'shared.booth', '--shopping');
    expect(status).toBe(0);
    const lines = out
      .replace(/\n {4}/g, ' ')
      .trimEnd()
      .split('\n');
    expect(lines[0]).toBe('What to ask for, for Larkfield Hall');
    expect(lines.slice(2).map((line) => line.match(/^ {2}(\w+ \w+): /)![1])).toEqual([
      'desk Left',
      'desk Right',
      'stool Tall',
    ]);
    expect(lines[4]).toMatch(
      /: seat (adjustable over at least \d.* to \d.* in|.* above the floor); foot ring .* below the seat; seat at least .* wide; seat at most .* deep$/,
    );
  });

  it('names the nearest workstation for one it does not know', async () => {
    expect(await run('advise', 'shared.booth', 'Sond')).toEqual({
      status: 2,
      out: '',
      err: "boothwright: there is no workstation 'Sond' in shared.booth. Did you mean 'Sound'?\n",
    });
    const none = await run('advise', await put('good.booth', good), 'Sound');
    expect(none.err).toBe('boothwright: good.booth names no workstation.\n');
    expect(none.status).toBe(2);
  });

  it('refuses a file that it does not understand, or that holds no booth', async () => {
    const faultyRun = await run('advise', await put('faulty.booth', faulty));
    expect(faultyRun.err).toMatch(/^faulty\.booth:3:\d+: error/);
    expect([faultyRun.status, faultyRun.out]).toEqual([2, '']);
    const asJson = await run('advise', 'faulty.booth', '--format', 'json');
    expect([asJson.status, asJson.err]).toEqual([2, '']);
    expect(parse(asJson.out)).toMatchObject({ understood: false, workstations: [], problems: [{ code: 'no-unit' }] });
    const empty = await run('advise', await put('furniture.booth', furniture));
    expect(empty.err).toContain('holds no booth');
    expect(empty.status).toBe(2);
  });

  it('has little to say of a booth without people', async () => {
    const { status, out } = await run('advise', await put('good.booth', good));
    expect(status).toBe(0);
    expect(out).not.toContain('Measure next');
    expect(out).toContain('desk Left: work surface 40 in above the floor');
  });
});

describe('the schema', () => {
  it('refuses an object that lacks what scripts rely on', () => {
    const whole = parse(json.out);
    for (const field of Object.keys(whole)) {
      const { [field]: _, ...rest } = whole;
      expect(validate(rest), field).toBe(false);
    }
    const [station] = whole.workstations;
    for (const field of Object.keys(station!)) {
      const rest = Object.fromEntries(Object.entries(station!).filter(([key]) => key !== field));
      expect(validate({ ...whole, workstations: [rest] }), field).toBe(false);
    }
  });
});

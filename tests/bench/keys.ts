import { boothOf, jsonOf, type Spot, spotIn, yamlOf } from './documents.js';
import { median, quantile, timeOf } from './numbers.js';
import { type Kind, Server } from './server.js';

/** What is measured of one server at one size. Milliseconds with the debounce, megabytes. */
export interface KeyRow {
  readonly server: string;
  /** Of the booth file; the other languages' files say the same in as many lines as they take. */
  readonly lines: number;
  readonly ownLines: number;
  readonly debounce: number;
  readonly open: number;
  readonly diagnostics: number;
  /** Until the server has answered what is wrong with the text; what such a server finds later is in the times below. */
  readonly faults: number;
  readonly median: number;
  readonly p95: number;
  /** On a processor, for each edit. */
  readonly cpu: number;
  /** From the last of ten keys 40 ms apart; too short for a server that does not say of which text its findings are. */
  readonly burst: number;
  readonly hover: number;
  readonly completion: number;
  /** Of the value of a height at a place not asked before, the first of a session left out; only a booth has values worth choosing. */
  readonly values: number;
  readonly memory: number;
}

const texts = { booth: boothOf, yaml: yamlOf, json: jsonOf };
const WARM_UP = 5;
const HEIGHT = '  height ';

/** All servers at one size, open at the same time and asked in turn, so that a busy moment of the machine meets all alike. */
export async function measureKeys(kinds: readonly Kind[], lines: number, edits: number): Promise<KeyRow[]> {
  const sessions: Session[] = [];
  for (const kind of kinds) sessions.push(await Session.open(kind, texts[kind.languageId](lines)));
  for (let n = 1; n <= WARM_UP; n++) for (const session of sessions) await session.type(n);
  for (const session of sessions) session.begin();
  for (let n = 1; n <= edits; n++) for (const session of sessions) await session.type(WARM_UP + n);
  for (const session of sessions) session.end(edits);
  for (let n = 0; n < 20; n++) for (const session of sessions) await session.ask(n);
  for (let n = 0; n < 3; n++) for (const session of sessions) await session.burst();
  const rows = sessions.map((session) => session.row(lines));
  for (const { server } of sessions) await server.stop();
  return rows;
}

/** From starting the process to the first findings; each server several times, in turn. */
export async function measureStart(kinds: readonly Kind[], lines: number, times: number): Promise<Map<string, number>> {
  const found = new Map<string, number[]>(kinds.map(({ name }) => [name, []]));
  for (let n = 0; n < times; n++)
    for (const kind of kinds) {
      const text = texts[kind.languageId](lines);
      let server: Server;
      const time = await timeOf(async () => {
        server = await Server.start(kind);
        await server.open(text);
      });
      await server!.stop();
      found.get(kind.name)!.push(time - kind.debounce);
    }
  return new Map([...found].map(([name, each]) => [name, median(each)]));
}

class Session {
  private readonly times: number[] = [];
  private readonly faults: number[] = [];
  private readonly bursts: number[] = [];
  private readonly hovers: number[] = [];
  private readonly completions: number[] = [];
  private readonly values: number[] = [];
  private readonly digits: number[];
  private cpu = 0;

  private constructor(
    readonly server: Server,
    private readonly ownLines: number,
    private readonly spot: Spot,
    /** Lines that begin with the height of a desk. */
    private readonly heights: readonly number[],
    private readonly opened: number,
    private readonly diagnostics: number,
    text: string,
  ) {
    this.digits = [...text.split('\n')[spot.line]!.slice(spot.digits, spot.unit)].map(Number);
  }

  static async open(kind: Kind, text: string): Promise<Session> {
    const server = await Server.start(kind);
    const before = performance.now();
    const diagnostics = await server.open(text);
    const opened = performance.now() - before;
    const lines = text.split('\n');
    const heights = [...lines.keys()].filter((line) => lines[line]!.startsWith(HEIGHT));
    return new Session(server, lines.length, spotIn(text), heights, opened, diagnostics.length, text);
  }

  begin(): void {
    this.times.length = 0;
    this.faults.length = 0;
    this.cpu = this.server.cpu();
  }

  end(edits: number): void {
    this.cpu = (this.server.cpu() - this.cpu) / edits;
  }

  /** One key: a digit, so that the number is one that was not there before; of ten keys one breaks the unit and the next mends it. */
  async type(n: number): Promise<void> {
    const { line, digits, unit } = this.spot;
    if (n % 10 === 8) return this.time(line, unit, 'x', true);
    if (n % 10 === 9) return this.time(line, unit, 'i');
    const at = n % 10 === 0 ? (n % 100 === 0 ? 0 : 1) : 2;
    this.digits[at] = (this.digits[at]! + 1) % 10;
    return this.time(line, digits + at, String(this.digits[at]));
  }

  private async time(line: number, character: number, key: string, breaks = false): Promise<void> {
    const before = performance.now();
    const found = await this.server.edit(line, character, key, 1);
    this.times.push(performance.now() - before);
    this.faults.push(this.server.answered - before);
    const isTold = found.some(({ range }) => range.start.line === line && range.end.character > this.spot.digits - 4);
    if (breaks && !isTold && this.server.kind.name !== 'floor')
      throw new Error(`${this.server.kind.name} did not see the fault.`);
  }

  /** Ten more digits, 40 ms apart, taken away again afterwards. */
  async burst(): Promise<void> {
    const { line, unit } = this.spot;
    for (let n = 0; n < 9; n++) {
      await this.server.change(line, unit + n, String(n));
      await new Promise((resolve) => setTimeout(resolve, 40));
    }
    this.bursts.push(await timeOf(() => this.server.edit(line, unit + 9, '9')));
    await this.server.edit(line, unit, '', 10);
    await new Promise((resolve) => setTimeout(resolve, 100));
  }

  async ask(n: number): Promise<void> {
    const { line, digits } = this.spot;
    this.hovers.push(await timeOf(() => this.server.request('textDocument/hover', line, digits)));
    this.completions.push(await timeOf(() => this.server.request('textDocument/completion', line, 2)));
    if (this.server.kind.languageId !== 'booth' || this.heights[n] === undefined) return;
    const value = timeOf(() => this.server.request('textDocument/completion', this.heights[n]!, HEIGHT.length));
    if (n > 0) this.values.push(await value);
    else await value;
  }

  row(lines: number): KeyRow {
    const { kind } = this.server;
    return {
      server: kind.name,
      lines,
      ownLines: this.ownLines,
      debounce: kind.debounce,
      open: this.opened - kind.debounce,
      diagnostics: this.diagnostics,
      faults: median(this.faults),
      median: median(this.times),
      p95: quantile(this.times, 0.95),
      cpu: this.cpu,
      burst: median(this.bursts),
      hover: median(this.hovers),
      completion: median(this.completions),
      values: median(this.values),
      memory: this.server.memory(),
    };
  }
}

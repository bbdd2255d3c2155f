const DEFAULT_WIDTH = 80;
const READABLE_WIDTH = 100;

/** Where a command writes. Findings, reports of success and help go to `out`, complaints to `err`. */
export interface Terminal {
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  /** Writes over the line that it wrote before; absent where nobody looks on. */
  readonly line?: (text: string) => void;
  /** Columns to wrap at. */
  readonly width: number;
  readonly colours: boolean;
}

export function processTerminal(): Terminal {
  const { stdout, stderr, env } = process;
  return {
    out: (text) => void stdout.write(text),
    err: (text) => void stderr.write(text),
    ...(stderr.isTTY && { line: (text: string) => void stderr.write(`\r\x1b[2K${text}`) }),
    width: stdout.isTTY ? Math.min(stdout.columns || DEFAULT_WIDTH, READABLE_WIDTH) : DEFAULT_WIDTH,
    colours: wantsColours(env, Boolean(stdout.isTTY)),
  };
}

/** NO_COLOR beats FORCE_COLOR, and without either only a capable terminal gets colours. */
export function wantsColours(env: NodeJS.ProcessEnv, isTerminal: boolean): boolean {
  if (env.NO_COLOR) return false;
  if (env.FORCE_COLOR) return env.FORCE_COLOR !== '0';
  return isTerminal && env.TERM !== 'dumb';
}

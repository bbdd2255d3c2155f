import type { Terminal } from './terminal.js';

/** Whoever waits longer than this wants to know for what, in milliseconds. */
const PATIENCE = 1000;
/** A line that changes more often than this cannot be read, in milliseconds. */
const EACH = 100;

/**
 * Tells a person how far a long run is, on one line that goes away at the end. In a log, or where the run is short, it says
 * nothing.
 */
export class Progress {
  private readonly began: number;
  private told = -Infinity;

  constructor(
    private readonly terminal: Pick<Terminal, 'line'>,
    private readonly total: number,
    private readonly now: () => number = () => performance.now(),
  ) {
    this.began = now();
  }

  tell(done: number): void {
    const now = this.now();
    if (!this.terminal.line || now - this.began < PATIENCE || now - this.told < EACH) return;
    this.terminal.line(`Checked ${done} of ${this.total} files …`);
    this.told = now;
  }

  end(): void {
    if (this.told > -Infinity) this.terminal.line?.('');
  }
}

/** Numbers that look random and are the same for the same seed on every machine (the mulberry32 generator). */
export class Random {
  private state: number;

  /** @param seed any whole number. @param index of the case: neighbours have nothing in common. */
  constructor(seed: number, index = 0) {
    this.state = (Math.imul(seed, 0x9e3779b1) ^ Math.imul(index + 1, 0x85ebca6b)) >>> 0;
    for (let warm = 0; warm < 3; warm++) this.next();
  }

  /** From 0 up to, and not including, 1. */
  next(): number {
    this.state = (this.state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.state ^ (this.state >>> 15), this.state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  /** A whole number from `min` to `max`, both included. */
  whole(min: number, max: number): number {
    return min + Math.floor(this.next() * (max - min + 1));
  }

  /** True this often. */
  chance(share: number): boolean {
    return this.next() < share;
  }

  pick<T>(list: readonly T[]): T {
    if (list.length === 0) throw new Error('There is nothing to pick from.');
    return list[this.whole(0, list.length - 1)]!;
  }

  /** Some of a list, in its order. */
  some<T>(list: readonly T[], share: number): T[] {
    return list.filter(() => this.chance(share));
  }

  times<T>(min: number, max: number, make: (index: number) => T): T[] {
    return Array.from({ length: this.whole(min, max) }, (_, index) => make(index));
  }
}

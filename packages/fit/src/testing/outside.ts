/**
 * The title of a test, or of a row of its table, that holds a value which nobody here made up: where it is published, and the value as
 * it stands there. `tests/checks.md` lists them by check, so both are plain texts. A source that was not read again says 'from memory'.
 */
export function outside(source: string, ...values: readonly string[]): string {
  return `${values.join('; ')} (${source})`;
}

/** A text between quotes as it was typed. */
export interface QuotedText {
  readonly value: string;
  /** The typed quotes are not straight ones. */
  readonly curly: boolean;
  readonly closed: boolean;
  /** The text as it was typed between the quotes, escapes and all. */
  readonly inner: string;
  /** The same text as it should be typed. */
  readonly straight: string;
}

export function readText(raw: string): QuotedText {
  const closed = raw.length > 1 && /["”]$/.test(raw);
  const inner = raw.slice(1, closed ? -1 : undefined);
  const value = inner.replace(/\\(.)/g, '$1').trim();
  return { value, inner, curly: /^[“”]|”$/.test(raw), closed, straight: `"${inner.trimEnd()}"` };
}

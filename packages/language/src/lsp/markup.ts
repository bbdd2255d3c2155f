/** What a file says must not become markup in an editor: a picture would be fetched, a link followed. */

/** A text of the file that reads in Markdown as it is typed. */
export function plainly(text: string): string {
  return text.replace(/[\\`*_[\]()<>!#|~]/g, '\\$&').replace(/\s*\n\s*/g, ' ');
}

/** A sentence of ours that may quote the file: its code stays code, and nothing in it is a link, a picture or an element. */
export function withoutLinks(sentence: string): string {
  return sentence
    .split(/(`[^`]*`)/)
    .map((part, index) => (index % 2 === 1 ? part : part.replace(/[[\]<]/g, '\\$&')))
    .join('');
}

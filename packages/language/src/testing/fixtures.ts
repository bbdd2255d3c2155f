/** One case of a fixture file: files with marks in, what the editor shows out. */
export interface Case {
  readonly title: string;
  /** The files by name; the first is the one that is open. Carets `<|>` are still in. */
  readonly files: readonly { readonly name: string; readonly text: string }[];
}

const section = /^## (.*)\n([\s\S]*?)(?=^## |$(?![\s\S]))/gm;
const input = /^```booth(?: (\S+))?\n([\s\S]*?)^```$/gm;
const output = /^````text\n[\s\S]*?^````$\n?/m;

/**
 * The cases of a fixture file: Markdown, a heading of the second rank for each case, then its files as blocks of `booth` (a name
 * after it, if there is more than one), then what is expected as a block of `text` fenced with four marks.
 */
export function casesOf(markdown: string): Case[] {
  return [...markdown.matchAll(section)].map(([, title, body]) => ({
    title: title!,
    files: [...body!.replace(output, '').matchAll(input)].map(([, name = 'hall.booth', text]) => ({
      name,
      text: text!.slice(0, -1),
    })),
  }));
}

/** The fixture file with what came out in the place of what was expected, case by case. */
export function withOutputs(markdown: string, outputs: readonly string[]): string {
  let index = 0;
  return markdown.replace(section, (whole) => {
    const block = `\`\`\`\`text\n${outputs[index++]!.trimEnd()}\n\`\`\`\`\n`;
    const kept = output.test(whole) ? whole.replace(output, () => block) : `${whole.trimEnd()}\n\n${block}`;
    return `${kept.trimEnd()}\n${index < outputs.length ? '\n' : ''}`;
  });
}

export interface Marked {
  readonly text: string;
  /** Where the carets stood. */
  readonly carets: readonly number[];
}

export function withoutCarets(marked: string): Marked {
  const parts = marked.split('<|>');
  const carets = parts.slice(0, -1).map((_, index) => parts.slice(0, index + 1).join('').length);
  return { text: parts.join(''), carets };
}

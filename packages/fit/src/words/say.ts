/** Sentences of another language by the English ones. What varies is `{0}`, `{1}`, …; a translator may put it in any order. */
export type Translation = Readonly<Record<string, string>>;

let spoken: Translation | undefined;

/**
 * Chooses the language of everything that this process says. Call it once, before anything is said: texts are remembered
 * with the findings that hold them. Without it, and for a sentence that the translation lacks, English is spoken.
 *
 * @throws {Error} if another language has been chosen before.
 */
export function speak(translation: Translation): void {
  if (spoken && spoken !== translation) throw new Error('A process speaks one language: it has been chosen already.');
  spoken = translation;
}

/** Whether the sentences are English, and with them the small changes that English makes to names: 'Noor’s'. */
export function speaksEnglish(): boolean {
  return spoken === undefined;
}

/** A label as it stands within an English sentence: 'feet supported'. Other languages keep their capitals. */
export function lowered(label: string): string {
  return speaksEnglish() ? label.toLowerCase() : label;
}

/** A whole sentence or label: say`The seat is ${length} lower than ${other}.` */
export function say(parts: TemplateStringsArray, ...values: readonly (string | number)[]): string {
  const translated = spoken?.[keyOf(parts)];
  return translated === undefined ? String.raw({ raw: parts }, ...values) : filled(translated, values);
}

/** A text without variables that is kept as data, such as a check’s title, at the moment when it is shown. */
export function said(english: string): string {
  return spoken?.[english] ?? english;
}

const keys = new WeakMap<TemplateStringsArray, string>();

function keyOf(parts: TemplateStringsArray): string {
  let key = keys.get(parts);
  if (key === undefined) {
    key = keyFrom(parts);
    keys.set(parts, key);
  }
  return key;
}

/** The English sentence as a translation knows it: `The seat is {0} lower than {1}.` */
export function keyFrom(parts: readonly string[]): string {
  return parts.reduce((key, part, index) => `${key}{${index - 1}}${part}`);
}

function filled(sentence: string, values: readonly (string | number)[]): string {
  return sentence.replace(/\{(\d+)\}/g, (placeholder, index: string) => String(values[Number(index)] ?? placeholder));
}

/** Sentences of another language by the English ones. What varies is `{0}`, `{1}`, …; a translator may put it in any order. */
export type Translation = Readonly<Record<string, string>>;

let spoken: ReadonlyMap<string, string> | undefined;
let hasBegun = false;

/**
 * Chooses the language of everything that this process says. Without it, and for a sentence that the translation lacks,
 * English is spoken.
 *
 * @throws {Error} after the first sentence: texts are remembered with the findings that hold them, and would then be of two languages.
 */
export function speak(translation: Translation): void {
  if (hasBegun) throw new Error('The language of a process is chosen once, before anything is said.');
  spoken = new Map(Object.entries(translation));
}

/** Computes something whose texts are English, whatever the language: for a report, which is written in English only. */
export function inEnglish<T>(compute: () => T): T {
  const chosen = spoken;
  spoken = undefined;
  try {
    return compute();
  } finally {
    spoken = chosen;
  }
}

const english = {};

/** The language that is spoken now, as an object that stands for it: whoever remembers texts remembers them by it. */
export function languageSpoken(): object {
  return spoken ?? english;
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
  hasBegun = true;
  const translated = spoken?.get(keyOf(parts));
  return translated === undefined ? joined(parts, values) : filled(translated, values);
}

function joined(parts: readonly string[], values: readonly (string | number)[]): string {
  let text = parts[0]!;
  for (let index = 1; index < parts.length; index++) text += `${values[index - 1] ?? ''}${parts[index]!}`;
  return text;
}

/** A text without variables that is kept as data, such as a check’s title, at the moment when it is shown. */
export function said(english: string): string {
  hasBegun = true;
  return spoken?.get(english) ?? english;
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

import { readFileSync } from 'node:fs';

const root = new URL('../../', import.meta.url);

/** The sentences of the manifest in a language, by key; `en` is what the editor falls back to. */
export function sentencesOfManifest(language: string): Record<string, string> {
  const file = language === 'en' ? 'package.nls.json' : `package.nls.${language}.json`;
  return JSON.parse(readFileSync(new URL(file, root), 'utf8')) as Record<string, string>;
}

/** The keys that the manifest asks for. */
export function keysOfManifest(): string[] {
  return [...readFileSync(new URL('package.json', root), 'utf8').matchAll(/"%([^%"]+)%"/g)].map(([, key]) => key!);
}

/** The manifest of the extension as the editor reads it, its sentences filled in. */
export function readManifest(language = 'en'): unknown {
  const sentences = sentencesOfManifest(language);
  return JSON.parse(readFileSync(new URL('package.json', root), 'utf8'), (_, value: unknown) =>
    typeof value === 'string' && /^%[^%]+%$/.test(value) ? sentences[value.slice(1, -1)] : value,
  );
}

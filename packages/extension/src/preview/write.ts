/** How often an edit is asked for anew, of texts that change meanwhile. */
const TRIES = 10;

/** The texts of an editor, and whoever says how to change them. */
export interface Writing<Edit> {
  /** Another one as soon as a text is changed. */
  readonly versions: () => string;
  /** What to change in the texts as they are: null if they cannot be read, undefined if nobody answers. */
  readonly ask: () => Promise<Edit | null | undefined>;
  /** False if the editor refuses. */
  readonly apply: (edit: Edit) => PromiseLike<boolean>;
}

/** Makes one edit, of the texts as they are: where they change between question and answer it is asked for again. Says whether it is made. */
export async function write<Edit>({ versions, ask, apply }: Writing<Edit>): Promise<boolean> {
  for (let tries = 0; tries < TRIES; tries++) {
    const before = versions();
    const edit = await ask();
    if (edit === null) return false;
    if (edit !== undefined && versions() === before && (await apply(edit))) return true;
  }
  return false;
}

/**
 * How much a booth may be. Far beyond any hall, and small enough that whatever a file holds is answered in less than half a minute and in
 * half a gigabyte; an editor goes on typing meanwhile. What exceeds a bound gets a message that says so.
 */
export const bounds = {
  /** Of one file, and of a file with all that it imports; UTF-16 units. */
  characters: 1_000_000,
  /** Words, numbers, texts and marks of one file. */
  tokens: 250_000,
  comments: 20_000,
  /** Words and marks in a row without a brace or a new statement: the longest list, the longest block of one level. */
  run: 2000,
  /** Characters of one word, number or text. */
  word: 2000,
  /** A file and all that it imports, directly or through others. */
  files: 200,
  /** People who share a workstation; more are a crowd. */
  people: 100,
  /** People at all workstations, each counted where they work. */
  places: 2000,
  /** Placed desks and racks. */
  pieces: 2000,
  /** Faults that are shown of one file. */
  faults: 1000,
} as const;

/** A file of more bytes has more characters than a file may have, whatever it holds: no more of it is read. */
export const READ_BYTES = 4 * bounds.characters;

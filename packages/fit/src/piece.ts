/** A thing of a booth, by what it is and what it is called. With this, faces that draw and faces that read text speak of the same. */
export interface PieceRef {
  readonly kind: PieceKind;
  /** Absent for what a room has only one of. */
  readonly name?: string;
  /** Of a screen or a control: the workstation where it stands. */
  readonly workstation?: string;
}

export const pieceKinds = [
  'room',
  'stage',
  'seating',
  'balcony',
  'door',
  'column',
  'wheelchair-space',
  'watchers',
  'operator',
  'crowd',
  'desk',
  'seat',
  'rack',
  'platform',
  'skirt',
  'walkway',
  'workstation',
  'screen',
  'control',
] as const;

export type PieceKind = (typeof pieceKinds)[number];

/** Equal for two references to the same thing. */
export function pieceKey({ kind, name, workstation }: PieceRef): string {
  return JSON.stringify([kind, name ?? null, workstation ?? null]);
}

/** The reference that `pieceKey` made a key of. */
export function pieceOfKey(key: string): PieceRef {
  const [kind, name, workstation] = JSON.parse(key) as [PieceKind, string | null, string | null];
  return { kind, ...(name !== null && { name }), ...(workstation !== null && { workstation }) };
}

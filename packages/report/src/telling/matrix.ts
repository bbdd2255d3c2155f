import { type Finding, type Posture, type Served } from '@boothwright/fit';

/** The matrix of a workstation: who passes what. */
export interface Column {
  readonly who: string;
  readonly posture?: Posture;
}

export interface Row {
  readonly check: string;
  readonly subject?: string;
}

/** The people of the joint event, then those whom only single findings name. */
export function columnsOf(served: readonly Served[], findings: readonly Finding[]): readonly Column[] {
  const columns: Column[] = served.map(({ who, posture }) => ({ who, posture }));
  for (const finding of findings) {
    const { operator, posture } = finding;
    if (operator === undefined || columns.some((column) => concerns(finding, column))) continue;
    columns.push({ who: operator, posture });
  }
  return columns;
}

export function rowsOf(findings: readonly Finding[]): readonly Row[] {
  const rows: Row[] = [];
  for (const finding of findings) {
    if (rows.some((row) => isIn(row, finding))) continue;
    rows.push({
      check: finding.check,
      subject: finding.subject.kind === 'workstation' ? undefined : finding.subject.name,
    });
  }
  return rows;
}

export function isIn(row: Row, { check, subject }: Finding): boolean {
  return row.check === check && row.subject === (subject.kind === 'workstation' ? undefined : subject.name);
}

export function concerns({ operator, posture }: Finding, column: Column): boolean {
  return operator === column.who && (posture === undefined || posture === column.posture);
}

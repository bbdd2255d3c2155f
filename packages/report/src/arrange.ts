import type { Assessment, Booth, Finding, Workstation } from '@boothwright/fit';

/** Where each finding is written out. Every finding has one home, so that none is lost and none is told twice. */
export interface Arrangement {
  readonly stations: ReadonlyMap<string, readonly Finding[]>;
  readonly walkways: readonly Finding[];
  readonly skirts: readonly Finding[];
  readonly others: readonly Finding[];
  readonly accepted: readonly Finding[];
  readonly unsaid: readonly Finding[];
}

type Home = Exclude<keyof Arrangement, 'stations'>;

export function arrange({ booth, findings }: Assessment): Arrangement {
  const stations = new Map<string, Finding[]>(booth.workstations.map(({ name }) => [name, []]));
  const homes: Record<Home, Finding[]> = { walkways: [], skirts: [], others: [], accepted: [], unsaid: [] };
  for (const finding of findings) {
    const home = homeOf(booth, finding);
    if (home) homes[home].push(finding);
    else stations.get(stationOf(booth, finding)!)!.push(finding);
  }
  return { stations, ...homes };
}

/** The findings that the matrix of a workstation shows, whatever their home. */
export function matrixFindings({ booth, findings }: Assessment, station: string): readonly Finding[] {
  return findings.filter((finding) => stationOf(booth, finding) === station);
}

function homeOf(booth: Booth, finding: Finding): Home | undefined {
  if (finding.accepted !== undefined) return 'accepted';
  if (finding.verdict === 'unknown') return 'unsaid';
  if (finding.subject.kind === 'walkway') return 'walkways';
  if (finding.subject.kind === 'skirt') return 'skirts';
  return stationOf(booth, finding) === undefined ? 'others' : undefined;
}

/** The workstation a finding belongs to: the one it names, or the one where its person uses its subject. */
function stationOf(booth: Booth, { subject, operator }: Finding): string | undefined {
  const { kind, name } = subject;
  const byPerson = booth.workstations.filter((station) => station.people.some((person) => person.name === operator));
  switch (kind) {
    case 'workstation':
      return booth.workstations.find((station) => station.name === name)?.name;
    case 'operator':
      return byPerson[0]?.name;
    case 'desk':
    case 'seat':
    case 'monitor':
    case 'control':
      return byPerson.find((station) => usedAt(station, kind, name))?.name ?? onlyUser(booth, kind, name);
    default:
      return undefined;
  }
}

type Used = 'desk' | 'seat' | 'monitor' | 'control';

function usedAt(station: Workstation, kind: Used, name: string): boolean {
  if (kind === 'desk') return station.desk?.name === name;
  if (kind === 'seat') return station.seat?.name === name;
  if (kind === 'monitor') return station.screens.some((screen) => screen.monitor.name === name);
  return station.controls.some((control) => control.name === name);
}

/** A piece that one workstation alone uses belongs to it. */
function onlyUser(booth: Booth, kind: Used, name: string): string | undefined {
  const users = booth.workstations.filter((station) => usedAt(station, kind, name));
  return users.length === 1 ? users[0]!.name : undefined;
}

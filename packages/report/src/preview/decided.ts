import { listOf, type Assessment, type PieceRef, type Side } from '@boothwright/fit';

/** What decides where a thing is, if no number of its own does: in a sentence that names it and says where; empty if that is not known. */
export function decidedBy({ booth }: Assessment, { kind, name, workstation }: PieceRef): string {
  const stations = booth.workstations;
  switch (kind) {
    case 'seat':
      return withStations(
        stations.filter(({ seat }) => seat?.name === name),
        'It stands where its person is',
      );
    case 'operator':
    case 'crowd':
      return withStations(
        stations.filter(({ people }) => people.some((person) => person.name === name)),
        'They are where they work',
      );
    case 'screen': {
      const use = stations
        .find((each) => each.name === workstation)
        ?.screens.find(({ monitor }) => monitor.name === name);
      return use?.turn && !use.at
        ? `Its angle decides where it stands along the desk: turn in monitor ${name} of workstation ${workstation}.`
        : '';
    }
    case 'walkway': {
      const between = booth.walkways.find((each) => each.name === name)?.between;
      return between
        ? `It lies between ${sideName(between[0])} and ${sideName(between[1])}: where they are decides it.`
        : '';
    }
    case 'skirt': {
      const on = booth.skirts.find((each) => each.name === name)?.on ?? [];
      return on.length > 0 ? `It hangs on ${listOf(on.map((desk) => `desk ${desk.name}`))}, and moves with that.` : '';
    }
    case 'room':
      return 'Its width and depth decide where its walls are: width and depth in room.';
    default:
      return '';
  }
}

function withStations(stations: readonly { readonly name: string }[], says: string): string {
  if (stations.length === 0) return '';
  return `${says}: at in workstation ${listOf(stations.map(({ name }) => name))} decides it.`;
}

function sideName({ kind, name }: Side): string {
  return kind === 'landmark' ? `the ${name.replace('-', ' ')}` : name;
}

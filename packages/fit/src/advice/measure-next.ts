import type { Finding, MeasureNext } from '../assessment.js';
import { sdOf } from '../bodies/body.js';
import type { DimensionName } from '../bodies/dimensions.js';
import { howToMeasure } from '../bodies/measuring.js';
import type { Scene } from '../scene/scene.js';
import type { Person } from '../stations/station.js';
import { said } from '../words/say.js';

/** For each operator of whom something is undecided, the one measurement that would settle most of it. */
export function measureNext(scene: Scene, findings: readonly Finding[]): readonly MeasureNext[] {
  return scene.booth.operators.flatMap(({ name }): MeasureNext[] => {
    const person = scene.persons.get(name)!;
    const counts = new Map<DimensionName, number>();
    for (const finding of findings) {
      if (finding.operator !== name || !isUndecided(finding)) continue;
      const dimension = settling(scene, person, finding);
      if (dimension) counts.set(dimension, (counts.get(dimension) ?? 0) + 1);
    }
    const best = [...counts].sort(([, a], [, b]) => b - a)[0];
    return best ? [{ operator: name, dimension: best[0], settles: best[1], how: said(howToMeasure[best[0]]) }] : [];
  });
}

/** Some people like this would pass and some would not, and it matters. */
function isUndecided({ verdict, share, shareAtLimit }: Finding): boolean {
  const open = (value: number | undefined) => value !== undefined && value > 0.02 && value < 0.98;
  return verdict !== 'pass' && (open(share) || open(shareAtLimit));
}

/** The one open dimension that a check rests on: of its rule's demands, or the eye for screens and sight. */
function settling(
  scene: Scene,
  person: Person,
  { check, subject, posture, share }: Finding,
): DimensionName | undefined {
  const isOpen = (dimension: DimensionName) => sdOf(person.body, dimension) > 0.5;
  const station = scene.stations.find(({ name }) => name === subject.name);
  const rule = station && posture ? scene.rules(station, posture).find((one) => one.check === check) : undefined;
  if (rule) {
    const names = rule.demands.flatMap(({ form }) => Object.keys(form.body) as DimensionName[]);
    const open = [...new Set(names)].filter(isOpen);
    return open.length === 1 ? open[0] : undefined;
  }
  if (share === undefined || !posture) return undefined;
  const eye: DimensionName = posture === 'sit' ? 'sittingEyeHeight' : 'standingEyeHeight';
  return isOpen(eye) ? eye : undefined;
}

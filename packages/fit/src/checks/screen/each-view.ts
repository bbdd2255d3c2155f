import { inPosture } from '../../format.js';
import { eyesAt, lacksEyes, viewsAt, type Eyes, type View } from '../../scene/viewing.js';
import type { Scene } from '../../scene/scene.js';
import type { Station } from '../../stations/station.js';
import { cannotSay } from '../cannot-say.js';
import type { FindingDraft } from '../check.js';
import { say } from '../../words/say.js';

/**
 * One finding for each screen, person and posture of every workstation; and where a screen or an eye cannot be placed, one
 * that says what is missing.
 */
export function eachView(
  scene: Scene,
  topic: (what: string) => string,
  judge: (eyes: Eyes, view: View) => FindingDraft | undefined,
): readonly FindingDraft[] {
  return scene.stations.flatMap((station) => eachViewAt(scene, station, topic, judge));
}

/** The same of one workstation. */
export function eachViewAt(
  scene: Scene,
  station: Station,
  topic: (what: string) => string,
  judge: (eyes: Eyes, view: View) => FindingDraft | undefined,
): readonly FindingDraft[] {
  const { views, gaps } = viewsAt(station);
  const subject = { kind: 'workstation', name: station.name } as const;
  const unplaced = gaps.map(({ use, missing }) =>
    cannotSay(
      { kind: 'monitor', name: use.monitor.name },
      topic(say`${use.monitor.name} at ${station.name}`),
      missing,
      use.monitor.origin,
    ),
  );
  if (views.length === 0) return unplaced;
  const blind = station.workstation.postures.value.flatMap((posture) => {
    const missing = lacksEyes(station, posture);
    return missing
      ? [cannotSay(subject, topic(say`the screens of ${station.name}`), missing, station.workstation.origin, posture)]
      : [];
  });
  const judged = eyesAt(scene, station).flatMap((eyes) => views.flatMap((view) => judge(eyes, view) ?? []));
  return [...unplaced, ...blind, ...judged];
}

/** The parts of a finding that name screen, person and posture. */
export function aboutView(eyes: Eyes, view: View) {
  return {
    subject: { kind: 'monitor', name: view.name },
    operator: eyes.person.name,
    posture: eyes.posture,
  } as const;
}

/** 'Noor seated' or 'Noor standing'. */
export function whoLooks(eyes: Eyes): string {
  return inPosture(eyes.person.name, eyes.posture);
}

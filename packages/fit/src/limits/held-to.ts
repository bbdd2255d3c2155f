import type { Related } from '../assessment.js';
import type { Scene } from '../scene/scene.js';
import type { Figure, Profile } from './profiles.js';
import { profiles } from './profiles.js';
import { say } from '../words/say.js';

/** The figure that a finding is held to: the parts of a finding that name it. */
export interface HeldTo {
  readonly value: number;
  readonly source: string;
  readonly assumptions: readonly string[];
  /** Where the file sets its own limit. */
  readonly related: readonly Related[];
  /** The file sets it. */
  readonly own: boolean;
}

/** The file's own limit of a check, with its reason; or the published figure. */
export function heldTo(scene: Scene, check: string, published: Figure): HeldTo {
  const override = scene.booth.overrides.find((one) => one.check === check);
  if (!override) {
    const { value, source, note } = published;
    return { value, source, assumptions: note === undefined ? [] : [note], related: [], own: false };
  }
  return {
    value: override.value,
    source: say`the file’s own limit: ${override.reason}`,
    assumptions: [],
    related: [{ origin: override.origin, message: say`the file’s own limit: ${override.reason}` }],
    own: true,
  };
}

/** The published minimums that the file chose. */
export function profileOf(scene: Scene): Profile {
  return profiles[scene.booth.limits];
}

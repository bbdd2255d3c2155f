import type { Assessment } from '@boothwright/fit';
import { boothPlan } from './drawings/booth-plan.js';
import type { Drawing } from './drawings/drawing.js';
import { drawingDxf } from './drawings/dxf.js';
import { hallSection } from './drawings/hall-section.js';
import { roomPlan } from './drawings/room-plan.js';
import { drawingFile } from './drawings/standalone.js';
import { lettersFor } from './names.js';
import type { ReportOptions } from './options.js';

/** The booth or the whole room from above, or the hall from the side. */
export type View = 'booth' | 'room' | 'hall';

export interface DrawOptions extends Pick<ReportOptions, 'generatedBy' | 'names'> {
  readonly view: View;
  readonly format: 'svg' | 'dxf';
}

/** Broad enough for every label. */
const WIDTH = 1000;

/** One drawing of an assessment as a file of its own; nothing if the booth file says too little to draw it. */
export function draw(assessment: Assessment, { view, format, names, generatedBy }: DrawOptions): string | undefined {
  const shown = names === 'letters' ? lettersFor(assessment.booth)(assessment) : assessment;
  const drawing = views[view](shown, WIDTH);
  if (!drawing) return undefined;
  return format === 'dxf' ? drawingDxf(drawing, generatedBy) : drawingFile(drawing, generatedBy);
}

const views: Record<View, (assessment: Assessment, width: number) => Drawing | undefined> = {
  booth: boothPlan,
  room: roomPlan,
  hall: hallSection,
};

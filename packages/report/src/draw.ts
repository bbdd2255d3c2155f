import type { Assessment } from '@boothwright/fit';
import { boothPlan } from './drawings/booth-plan.js';
import type { Drawing } from './drawings/drawing.js';
import { drawingDxf } from './drawings/dxf.js';
import { hallSection } from './drawings/hall-section.js';
import { roomPlan } from './drawings/room-plan.js';
import { sideTitle, sideView } from './drawings/side-view.js';
import { drawingFile } from './drawings/standalone.js';
import { named, type ReportOptions } from './options.js';

/** The booth or the whole room from above, the hall from the side, or one person from the side. */
export type View = 'booth' | 'room' | 'hall' | 'side';

export interface DrawOptions extends Pick<ReportOptions, 'generatedBy' | 'names'> {
  readonly view: View;
  readonly format: 'svg' | 'dxf';
  /** Who is drawn from the side, one of `sideTitles`. */
  readonly of?: string;
}

/** Broad enough for every label. */
const WIDTH = 1000;

/** One drawing of an assessment as a file of its own; nothing if the booth file says too little to draw it. */
export function draw(assessment: Assessment, options: DrawOptions): string | undefined {
  const { view, format, generatedBy, of } = options;
  const [shown] = named(assessment, options);
  const drawing = view === 'side' ? fromTheSide(shown, of) : views[view](shown, WIDTH);
  if (!drawing) return undefined;
  return format === 'dxf' ? drawingDxf(drawing, generatedBy) : drawingFile(drawing, generatedBy);
}

/** What the drawings of people from the side are called, as in 'Noor, sitting at Sound'. */
export function sideTitles(assessment: Assessment, options: Pick<DrawOptions, 'names'>): readonly string[] {
  const [{ sketch }] = named(assessment, options);
  return (sketch?.sides ?? []).map(sideTitle);
}

function fromTheSide(assessment: Assessment, title: string | undefined): Drawing | undefined {
  const side = assessment.sketch?.sides.find((each) => sideTitle(each) === title);
  return side && sideView(assessment, side);
}

const views: Record<Exclude<View, 'side'>, (assessment: Assessment, width: number) => Drawing | undefined> = {
  booth: boothPlan,
  room: roomPlan,
  hall: hallSection,
};

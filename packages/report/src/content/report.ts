import type { Assessment } from '@boothwright/fit';
import { arrange } from '../arrange.js';
import { named, type ReportOptions } from '../options.js';
import { unitsOf } from '../words.js';
import type { Block } from './blocks.js';
import { changes } from './changes.js';
import { drawings } from './drawings.js';
import { accepted, measureNext, passes, shopping } from './follow-up.js';
import { assumptions } from './given.js';
import { heights } from './heights.js';
import { skirtAndFurniture, walkways } from './pieces.js';
import { cautions, sources } from './sources.js';
import { workstations } from './stations.js';
import { summary } from './summary.js';

/** The whole fit report as blocks, in the order of a reader's questions. Here alone the order is said. */
export function contentOf(assessment: Assessment, options: ReportOptions): Block[] {
  const [shown, advice] = named(assessment, options);
  const { booth, findings } = shown;
  const units = unitsOf(booth.show);
  const arrangement = arrange(shown);
  return [
    ...summary(shown, advice, options, units),
    ...changes(shown, advice),
    ...drawings(shown),
    ...workstations(shown, arrangement),
    ...heights(shown, advice),
    ...walkways(shown, arrangement.walkways, units),
    ...skirtAndFurniture(booth, arrangement, units),
    ...passes(findings, units),
    ...shopping(advice),
    ...measureNext(advice, arrangement.unsaid),
    ...accepted(arrangement.accepted),
    ...assumptions(shown, units),
    ...sources(findings),
    ...cautions(findings),
  ];
}

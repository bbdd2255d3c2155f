import type { Assessment, Booth, Finding } from '@boothwright/fit';
import type { Arrangement } from '../arrange.js';
import { furnitureOf } from '../furniture.js';
import { walkwayVerdict } from '../telling/walkways.js';
import type { Units } from '../words.js';
import { paragraph, section, soft, table, verdictSpan, type Block } from './blocks.js';
import { openFindings } from './findings.js';

/** What is left to walk through, and what is said of it. */
export function walkways(assessment: Assessment, findings: readonly Finding[], units: Units): Block[] {
  const rows = assessment.walkways.map(({ name, clear, terms }) => {
    const verdict = walkwayVerdict(assessment, name);
    return [
      name,
      clear === undefined ? 'cannot say' : units.length(clear),
      soft(terms ?? ''),
      verdict ? verdictSpan(verdict) : 'not checked',
    ];
  });
  return section('Walkways', [
    ...(rows.length === 0 ? [paragraph('The file names no walkway, so none was checked.')] : []),
    ...table('Clear widths, and how they come about', ['Walkway', 'Clear', 'How it comes about', 'Result'], rows),
    ...openFindings(findings),
  ]);
}

/** What is said of the skirt and of all that belongs to no workstation, then every piece as the file describes it. */
export function skirtAndFurniture(booth: Booth, { skirts, others }: Arrangement, units: Units): Block[] {
  const pieces = furnitureOf(booth, units).map(({ kind, name, facts }) => [
    [name, soft(kind)],
    facts.join(', ') || 'no size said',
  ]);
  return section('Skirt and furniture', [
    ...openFindings([...skirts, ...others]),
    ...table('Furniture and equipment, as the file says', ['Piece', 'As described'], pieces),
  ]);
}

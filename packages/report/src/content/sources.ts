import type { Finding } from '@boothwright/fit';
import { readingMeanings, readingRemark, strengthMeanings } from '../strength.js';
import { generalCautions, ownCautions } from '../telling/cautions.js';
import { usesOf } from '../telling/sources.js';
import { titleOf } from '../titles.js';
import { capital } from '../words.js';
import { list, more, paragraph, section, soft, strong, type Block } from './blocks.js';

/** Where the limits of each check come from, and how much weight they bear. */
export function sources(findings: readonly Finding[]): Block[] {
  const uses = usesOf(findings);
  const strengths = [...new Set(uses.map(({ strength }) => strength))];
  const bases = strengths.map((strength) => [
    [strong(`${capital(strengthMeanings[strength])}.`)],
    uses
      .filter((use) => use.strength === strength)
      .flatMap(({ check, sources: cited }) => [
        strong(`${titleOf(check)}:`),
        `${cited.map(({ name, read }) => `${name}${readingRemark(read)}`).join('; ')}.`,
      ]),
  ]);
  return section(
    'Sources',
    uses.length === 0
      ? []
      : [
          paragraph(
            'By the strength of what each check rests on. A source marked ‘quoted’ was read in a document that quotes it.',
          ),
          ...list(bases),
          ...more(
            'What each source says',
            list(
              uses.map(({ check, sources: cited }) => [
                [strong(titleOf(check))],
                ...cited.map(({ name, says, read }) => [
                  soft(`${name}${says ? `: ${says}` : ''}${read ? ` (${readingMeanings[read]})` : ''}`),
                ]),
              ]),
            ),
          ),
        ],
  );
}

/** What the report is not, and where what it leaves out on paper is kept. */
export function cautions(findings: readonly Finding[]): Block[] {
  return section('Cautions', [
    ...generalCautions.map((caution) => paragraph(caution)),
    ...list(ownCautions(findings).map((caution) => [[caution]])),
    paragraph(soft(whereTheRestIs)),
  ]);
}

const whereTheRestIs =
  'The web page of this report also holds each passing result in its own words, the curves in figures, the body figures and what each source says. ‘boothwright check FILE --format json’ writes every finding and body figure, ‘boothwright advise FILE --format json’ every curve, ‘boothwright explain CHECK’ what each source says.';

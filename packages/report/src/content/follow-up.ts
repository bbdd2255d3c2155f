import type { Advice, Finding } from '@boothwright/fit';
import { tellMeasure } from '../telling/advice.js';
import { alike } from '../telling/alike.js';
import { tellPasses } from '../telling/passes.js';
import type { Units } from '../words.js';
import { code, list, more, section, strong, table, type Block } from './blocks.js';
import { itemOf } from './findings.js';

/** What passes, counted by check; each result in its own words where there is room. */
export function passes(findings: readonly Finding[], units: Units): Block[] {
  const passing = findings.filter(({ verdict, accepted }) => verdict === 'pass' && accepted === undefined);
  return section('What passes', [
    ...table(
      'Results that pass, by check',
      ['Check', 'Pass', 'Tightest'],
      tellPasses(findings, units).map(({ title, passing, tightest }) => [title, passing, tightest]),
    ),
    ...more('Each passing result in its own words', list(alike(passing).map(itemOf))),
  ]);
}

export function shopping(advice: Advice | undefined): Block[] {
  return section(
    'What to ask for in a shop',
    table(
      'Each piece as the best plan has it',
      ['Piece', 'Ask for'],
      (advice?.shopping ?? []).map(({ item, wants }) => [strong(item), wants.join('; ')]),
    ),
  );
}

/** Body sizes that would settle results, then what the file does not say. */
export function measureNext(advice: Advice | undefined, unsaid: readonly Finding[]): Block[] {
  return section('What to measure next', [
    ...table(
      'Body sizes that settle results',
      ['Measure', 'How'],
      (advice?.measure ?? []).map(tellMeasure).map(({ title, text }) => [strong(title), text]),
    ),
    ...section(
      'What cannot be said yet',
      list(
        unsaid.map((finding) => [
          ...itemOf([finding]),
          ...(finding.missing ? [['Add', code(finding.missing.example), `to ${finding.missing.of}.`]] : []),
        ]),
      ),
      3,
    ),
  ]);
}

/** Findings that the file tolerates, each with its reason. */
export function accepted(findings: readonly Finding[]): Block[] {
  const items = findings.map((finding) => [
    ...itemOf([finding]),
    [strong('Accepted because:'), finding.accepted ?? ''],
  ]);
  return section('Accepted on purpose', list(items));
}

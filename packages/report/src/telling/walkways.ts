import type { Assessment, Verdict } from '@boothwright/fit';
import { worst } from '../words.js';

/** What is said of a walkway, in one verdict; undefined if nothing was checked. */
export function walkwayVerdict({ findings }: Assessment, name: string): Verdict | undefined {
  const own = findings.filter(({ subject }) => subject.kind === 'walkway' && subject.name === name);
  return own.length > 0 ? worst(own.map(({ verdict }) => verdict)) : undefined;
}

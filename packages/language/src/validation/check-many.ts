import { say } from '@boothwright/fit';
import { bounds } from '../bounds.js';
import { isNames } from '../generated/ast.js';
import type { Context } from './context.js';

const peopleKeys = new Set(['operators', 'operator', 'crowd']);

/** People at workstations and placed pieces beyond those that are computed. */
export function checkMany(context: Context): void {
  const { blocks, placements } = context.root;
  let places = 0;
  for (const block of blocks.filter(({ kind }) => kind === 'workstation')) {
    const people = block.items
      .filter(isNames)
      .filter(({ key }) => peopleKeys.has(key))
      .flatMap(({ refs }) => refs);
    const left = bounds.places - places;
    if (people.length > Math.min(bounds.people, left)) {
      const message =
        left < bounds.people
          ? say`No more than ${bounds.places} people at workstations are computed: describe more as a crowd.`
          : say`No more than ${bounds.people} people can share a workstation: describe more as a crowd.`;
      context.say('too-large', people[Math.min(bounds.people, left)]!.$refNode, message);
    }
    places += Math.min(people.length, bounds.people, left);
  }
  const beyond = placements.flatMap(({ pieces }) => pieces)[bounds.pieces];
  if (beyond)
    context.say(
      'too-large',
      beyond.$refNode,
      say`No more than ${bounds.pieces} pieces can be placed; the rest is left out.`,
    );
}

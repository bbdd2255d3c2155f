import { say } from '@boothwright/fit';
import type { Block } from '../generated/ast.js';
import { keywordOf, loneComma, originOf, partOf } from '../syntax/tree.js';
import { rootsOf } from '../workspace/imports.js';
import { checkItems } from './check-items.js';
import { checkReference } from './check-names.js';
import type { Context } from './context.js';

/** Where pieces stand: each in one place. */
export function checkPlacements(context: Context): void {
  const placed = new Map<Block, { readonly $refNode?: Parameters<typeof originOf>[0] }>();
  for (const root of rootsOf(context.visible.slice(1)))
    for (const { pieces } of root.placements) for (const piece of pieces) if (piece.ref) placed.set(piece.ref, piece);
  for (const placement of context.root.placements) {
    const { pieces, settings } = placement;
    if (pieces.length === 0)
      context.say('missing-name', keywordOf(placement, 'place'), say`Say what is placed: \`place Left at 14ft, 6ft\`.`);
    else if (loneComma(placement))
      context.say('missing-value', loneComma(placement), say`A name is missing after this comma.`);
    else if (!settings.some(({ key }) => key === 'at'))
      context.say(
        'missing-value',
        partOf(placement, 'pieces'),
        say`Say where: \`at\`, from the left wall and from the back wall.`,
      );
    for (const piece of pieces) {
      checkReference(piece, placement, context);
      const earlier = piece.ref && placed.get(piece.ref);
      if (earlier)
        context.report({
          code: 'repeated-name',
          message: say`\`${piece.$refText}\` is already placed. A piece stands in one place.`,
          range: piece.$refNode!.range,
          related: [{ origin: originOf(earlier.$refNode), message: say`The first place` }],
        });
      else if (piece.ref) placed.set(piece.ref, piece);
    }
    checkItems(placement, context);
  }
}

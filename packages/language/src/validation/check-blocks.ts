import { say } from '@boothwright/fit';
import { AstUtils, GrammarUtils } from 'langium';
import { type Block, isBlock, isScreen, type Screen } from '../generated/ast.js';
import { isResolved, Remembered } from '../syntax/remembered.js';
import { readText } from '../syntax/texts.js';
import { entryOfHolder, isInPlace, nestedOf, originOf, partOf } from '../syntax/tree.js';
import { type Kind, kinds } from '../vocabulary/entries.js';
import { entryOf } from '../vocabulary/vocabulary.js';
import { checkItems } from './check-items.js';
import { checkMany } from './check-many.js';
import { checkReference } from './check-names.js';
import { checkPlacements } from './check-placements.js';
import { aOf, type Context } from './context.js';
import type { Issue } from './issue.js';

/** Kinds that share their names, because a name is looked up among all of them. */
const groups: readonly (readonly Kind[])[] = [
  ['operator', 'crowd'],
  ['stool', 'chair'],
  ['desk', 'rack', 'platform', 'column', 'skirt'],
];

/** All blocks: what they are called, where they stand, what they say. */
export function checkBlocks(context: Context): void {
  const { root } = context;
  for (const block of root.blocks) {
    const make = () => context.gather(() => checkBlock(block, context));
    for (const issue of blockIssues.of(block, make, [context.show, context.checks], (found) => rests(block, found)))
      context.report(issue);
  }
  checkOnce(root.blocks, context);
  checkNames(context);
  checkPlacements(context);
  checkMany(context);
  checkItems(root, context);
}

const blockIssues = new Remembered<readonly Issue[]>();

/** Whether nothing was said of a name, which would depend on what other names there are. */
function rests(block: Block, found: readonly Issue[]): boolean {
  return isResolved(block) && found.every(({ code }) => code !== 'wrong-kind');
}

function checkBlock(block: Block | Screen, context: Context): void {
  const entry = entryOfHolder(block);
  if (!isInPlace(block)) {
    const message =
      entry.within === 'file'
        ? say`\`${entry.word}\` stands on its own, not here.`
        : say`\`${entry.word}\` belongs in a ${entry.within} block, not here.`;
    context.say('misplaced', partOf(block, 'kind'), message);
    return;
  }
  if (isScreen(block)) checkScreenName(block, context);
  else checkTitle(block, context);
  const hasBraces = GrammarUtils.findNodeForKeyword(block.$cstNode, '{') !== undefined;
  if (isBlock(block) && isBlock(block.$container) && !hasBraces)
    context.say(
      'missing-brace',
      block.$cstNode,
      say`\`${entry.word}\` needs a block after it, such as ${entry.example}.`,
    );
  for (const nested of nestedOf(block)) checkBlock(nested, context);
  checkOnce(nestedOf(block).filter(isBlock), context);
  checkItems(block, context);
}

function checkTitle(block: Block, context: Context): void {
  const { naming, word, example } = entryOf(block.kind);
  if (naming === 'title') {
    if (block.name !== undefined) {
      const quoted = `"${block.name}"`;
      const data = { text: block.name, suggestions: [quoted] };
      context.say(
        'missing-name',
        partOf(block, 'name'),
        say`The title of the booth stands in quotes: ${quoted}.`,
        data,
      );
    } else if (block.title === undefined || readText(block.title).value === '')
      context.say('missing-name', partOf(block, 'kind'), say`\`${word}\` needs a title, such as "Larkfield Hall".`);
    return;
  }
  if (block.title !== undefined)
    context.say('unwanted-name', partOf(block, 'title'), say`\`${word}\` takes no title in quotes.`);
  if (naming === 'name' && block.name === undefined && block.title === undefined)
    context.say(
      'missing-name',
      partOf(block, 'kind'),
      say`\`${word}\` needs a name, such as ${example.split(' {')[0]!}.`,
    );
  if (naming === 'none' && block.name !== undefined)
    context.say('unwanted-name', partOf(block, 'name'), say`\`${word}\` takes no name.`);
}

function checkScreenName(screen: Screen, context: Context): void {
  if (screen.monitor) {
    checkReference(screen.monitor, screen, context);
    return;
  }
  const message = say`Say which monitor stands here: \`monitor\`, its name, and where it stands in { }.`;
  context.say('missing-name', partOf(screen, 'kind'), message);
}

function checkOnce(blocks: readonly Block[], context: Context): void {
  const first = new Map<string, Block>();
  for (const block of blocks) {
    if (!entryOf(block.kind).once || !isInPlace(block)) continue;
    const earlier = first.get(block.kind);
    if (!earlier) first.set(block.kind, block);
    else {
      context.report({
        code: 'duplicate-block',
        message: say`There is already ${aOf(kinds[block.kind])}: only one can be said.`,
        range: partOf(block, 'kind')!.range,
        related: [{ origin: originOf(partOf(earlier, 'kind')), message: say`The first one` }],
      });
    }
  }
}

/** Names that two blocks of one group share, here or with an imported file. */
function checkNames(context: Context): void {
  const taken = new Map<string, Block>();
  const [own, ...imported] = context.visible.map(({ parseResult }) => parseResult.value as Context['root']);
  for (const root of imported) for (const block of root.blocks ?? []) remember(block, taken);
  const isOwn = (block: Block) => AstUtils.getDocument(block) === context.document;
  const check = (block: Block, among: Map<string, Block>) => {
    const earlier = remember(block, among);
    if (!earlier) return;
    const [what, name] = [aOf(kinds[earlier.kind]), block.name!];
    context.report({
      code: 'duplicate-name',
      message: isOwn(earlier)
        ? say`There is already ${what} called \`${name}\`. Choose another name.`
        : say`There is already ${what} called \`${name}\` in ${context.nameOf(AstUtils.getDocument(earlier))}. Choose another name.`,
      range: partOf(block, 'name')!.range,
      related: [{ origin: originOf(partOf(earlier, 'name')), message: say`The first one` }],
    });
  };
  for (const block of own?.blocks ?? []) {
    check(block, taken);
    const within = new Map<string, Block>();
    for (const nested of block.items.filter(isBlock))
      if (isInPlace(nested)) check(nested, nested.kind === 'column' ? taken : within);
  }
}

/** The block that had the name before, if any. */
function remember(block: Block, taken: Map<string, Block>): Block | undefined {
  if (!block.name) return undefined;
  const group = groups.findIndex((each) => each.includes(block.kind));
  const key = `${group < 0 ? block.kind : group} ${block.name}`;
  const earlier = taken.get(key);
  if (!earlier) taken.set(key, block);
  return earlier;
}

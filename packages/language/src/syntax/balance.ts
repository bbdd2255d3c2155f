import { say } from '@boothwright/fit';
import { vocabulary } from '../vocabulary/vocabulary.js';
import { fault, type Fault, type Token } from './faults.js';

const outer = new Set<string>(
  vocabulary.filter(({ kind, within }) => within === 'file' && kind !== 'place').map(({ word }) => word),
);
const inner = new Set<string>(vocabulary.filter(({ within }) => within !== 'file').map(({ word }) => word));
const soft = new Set(
  'left right up down back forward above below floor reported a row back-wall left-wall right-wall stage-wall'.split(
    ' ',
  ),
);
/** After these, a kind's word is a value. */
const beforeValue = new Set(['cover', 'between', 'and', 'accept', 'limit']);

interface Opened {
  readonly head: readonly Token[];
  readonly word: string;
  /** A brace that belongs to nothing, and goes together with the one that closes it. */
  readonly dropped: boolean;
}

/**
 * Balances the braces of a token sequence, so that a slip in one block costs no other block: a declaration inside a block
 * that cannot hold one closes that block, a declaration without braces gets them, a brace that closes nothing goes.
 * Each repair is a fault with a message; the parser sees a well-formed sequence. A word of the language in the place
 * of a new name becomes a name, with a fault.
 */
export function balance(tokens: readonly Token[], types: LexerTypes): { tokens: Token[]; faults: Fault[] } {
  return new Balancer(tokens, types).run();
}

export type LexerTypes = Record<string, Token['tokenType']>;

class Balancer {
  private readonly output: Token[] = [];
  private readonly faults: Fault[] = [];
  private readonly open: Opened[] = [];
  private readonly hasAllBraces: boolean;

  constructor(
    private readonly input: readonly Token[],
    private readonly types: LexerTypes,
  ) {
    const count = (brace: string) => input.filter(({ tokenType }) => tokenType.name === brace).length;
    this.hasAllBraces = count('{') === count('}');
  }

  run(): { tokens: Token[]; faults: Fault[] } {
    for (let index = 0; index < this.input.length; index++) {
      const token = this.input[index]!;
      const type = token.tokenType.name;
      if (type === '{') this.opens(index);
      else if (type === '}') this.closes(token);
      else index = this.other(index, type);
    }
    this.closeDownTo(0);
    return { tokens: this.output, faults: this.faults };
  }

  private opens(index: number): void {
    const head = this.headBefore(index);
    if (!head) this.faults.push(fault('stray-brace', this.input[index]!, say`This { opens no block: remove it.`));
    else this.output.push(this.input[index]!);
    this.open.push({ head: head ?? [], word: head?.[0]?.image ?? '', dropped: !head });
  }

  private closes(token: Token): void {
    const opened = this.open.pop();
    if (!opened) this.faults.push(fault('stray-brace', token, say`This } closes nothing: remove it.`));
    else if (!opened.dropped) this.output.push(token);
  }

  /** Returns the index of the last token dealt with. */
  private other(index: number, type: string): number {
    if (this.open.length > 0 && this.startsDeclaration(index, type)) this.closeDownTo(this.depthFor(index, type));
    const depth = this.open.length;
    if (type === 'control' && this.typeAt(index - 1) === 'task' && this.typeAt(index + 1) !== 'ID') {
      this.output.push(this.asName(this.input[index]!));
      return index;
    }
    const isKind = outer.has(type) ? depth === 0 || type === 'monitor' : inner.has(type) && this.isBlockWord(index);
    if (!isKind) {
      this.output.push(this.input[index]!);
      return index;
    }
    const end = this.head(index);
    if (depth === 0 && outer.has(type) && this.typeAt(end + 1) !== '{') this.giveBraces(index, end);
    return end;
  }

  /** Passes a kind's word and the name or title after it; returns the index of the last. */
  private head(index: number): number {
    this.output.push(this.input[index]!);
    const next = this.input[index + 1];
    if (!next) return index;
    const type = next.tokenType.name;
    if (isName(type) || type === 'TEXT' || type === 'OPEN_TEXT') {
      this.output.push(next);
      return index + 1;
    }
    if (!this.isReservedName(index + 1)) return index;
    const message =
      type === 'QUANTITY'
        ? say`A name starts with a letter: \`${next.image}\` cannot be one.`
        : say`\`${next.image}\` is a word of the language. Write the name with a capital: \`${capital(next.image)}\`.`;
    this.faults.push(fault('reserved-name', next, message, { text: next.image, suggestions: [capital(next.image)] }));
    this.output.push(this.asName(next));
    return index + 1;
  }

  private giveBraces(index: number, end: number): void {
    const head = this.input.slice(index, end + 1);
    const next = this.typeAt(end + 1);
    const label = labelOf(head);
    this.output.push(this.insert('{'));
    if (next === undefined || outer.has(next) || next === '}' || next === 'place' || next === 'import') {
      this.output.push(this.insert('}'));
      this.faults.push(fault('missing-brace', head, say`${label} needs a block after it: { … }.`));
    } else {
      this.faults.push(fault('missing-brace', head, say`A { is missing after ${label}.`));
      this.open.push({ head, word: head[0]!.image, dropped: false });
    }
  }

  private startsDeclaration(index: number, type: string): boolean {
    const next = this.typeAt(index + 1);
    if (type === 'place') return next !== undefined && isName(next);
    if (type === 'import') return next === 'TEXT' || next === 'OPEN_TEXT';
    const depth = this.open.length;
    if (!outer.has(type) && !(inner.has(type) && depth > 1 && this.isBlockWord(index))) return false;
    if (next === '{') return true;
    const isNamed = next !== undefined && (isName(next) || next === 'TEXT');
    return (isNamed && this.typeAt(index + 2) === '{') || this.isReservedName(index + 1);
  }

  /** Whether a word of the language, or a number, stands where a new name should: `desk width {`. */
  private isReservedName(index: number): boolean {
    const token = this.input[index];
    if (!token || this.typeAt(index + 1) !== '{' || token.startLine !== this.input[index - 1]?.startLine) return false;
    return /^[a-z]/.test(token.tokenType.name) || token.tokenType.name === 'QUANTITY';
  }

  /** How many blocks stay open around the declaration at that index. */
  private depthFor(index: number, type: string): number {
    const isScreen = type === 'monitor' && this.open[0]?.word === 'workstation' && !this.isOutdented(index);
    if (!outer.has(type) && type !== 'place' && type !== 'import') return Math.min(1, this.open.length);
    return isScreen ? 1 : 0;
  }

  /** Indentation tells where a block ends only in a text whose braces do not. */
  private isOutdented(index: number): boolean {
    if (this.hasAllBraces) return false;
    const token = this.input[index]!;
    const owner = this.open[0]!.head[0]!;
    const isFirstOnLine = this.input[index - 1]?.endLine !== token.startLine;
    return isFirstOnLine && token.startLine !== owner.startLine && token.startColumn! <= owner.startColumn!;
  }

  private closeDownTo(depth: number): void {
    while (this.open.length > depth) {
      const { head, dropped } = this.open.pop()!;
      if (dropped) continue;
      this.output.push(this.insert('}'));
      this.faults.push(fault('missing-brace', head, say`${labelOf(head)} is not closed: a } is missing.`));
    }
  }

  /** The tokens that the brace at that index belongs to, if it can belong to any. */
  private headBefore(index: number): Token[] | undefined {
    const [before, last] = [this.input[index - 2], this.input[index - 1]];
    if (!last) return undefined;
    const [beforeType, lastType] = [before?.tokenType.name, last.tokenType.name];
    const isKind = (type: string | undefined) => type !== undefined && (outer.has(type) || inner.has(type));
    if (isKind(beforeType) && lastType !== '}' && lastType !== '{') return [before!, last];
    if (isKind(lastType)) return [last];
    if (!isName(lastType) && lastType !== 'TEXT') return undefined;
    if (beforeType === 'ID' || (lastType === 'TEXT' && beforeType !== undefined && isName(beforeType)))
      return [before!, last];
    const isValue = beforeType !== undefined && (beforeType === ',' || /^[a-z]/.test(beforeType));
    return isValue || lastType === 'TEXT' ? undefined : [last];
  }

  /** Whether a nested kind's word stands for a block here, and is no value. */
  private isBlockWord(index: number): boolean {
    return !beforeValue.has(this.typeAt(index - 1) ?? '');
  }

  private typeAt(index: number): string | undefined {
    return this.input[index]?.tokenType.name;
  }

  private asName(token: Token): Token {
    const tokenType = this.types['ID']!;
    return { ...token, tokenType, tokenTypeIdx: tokenType.tokenTypeIdx! };
  }

  private insert(image: '{' | '}'): Token {
    const tokenType = this.types[image]!;
    const nowhere = {
      startOffset: NaN,
      endOffset: NaN,
      startLine: NaN,
      endLine: NaN,
      startColumn: NaN,
      endColumn: NaN,
    };
    return { ...nowhere, image, tokenType, tokenTypeIdx: tokenType.tokenTypeIdx!, isInsertedInRecovery: true };
  }
}

function isName(type: string): boolean {
  return type === 'ID' || soft.has(type);
}

function labelOf(head: readonly Token[]): string {
  return `\`${head.map(({ image }) => image).join(' ')}\``;
}

function capital(word: string): string {
  return /^\p{L}/u.test(word) ? word[0]!.toUpperCase() + word.slice(1) : `No${word.replace(/[^\p{L}\p{N}]/gu, '')}`;
}

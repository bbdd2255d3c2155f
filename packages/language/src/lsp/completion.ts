import type { FileSystemProvider, LangiumDocument, Lexer } from 'langium';
import { UriUtils } from 'langium';
import type { CompletionProvider } from 'langium/lsp';
import { checks, said, say } from '@boothwright/fit';
import type { CompletionItem, CompletionList, Range } from 'vscode-languageserver-types';
import type { CompletionParams } from 'vscode-languageserver';
import { parseQuantity } from '../quantity/quantity.js';
import { showOf } from '../reading/reader.js';
import { namesOf } from '../references/scope.js';
import type { BoothServices } from '../services.js';
import { wordsAround } from '../syntax/around.js';
import { balance } from '../syntax/balance.js';
import type { Token } from '../syntax/faults.js';
import { type Kind, kinds, pieceKinds } from '../vocabulary/entries.js';
import { landmarks } from '../vocabulary/floor.js';
import { walls } from '../vocabulary/room.js';
import { nestedBlocks, propertyOf } from '../vocabulary/vocabulary.js';
import { aroundItems, exampleItem, type Item, itemKind, outerItems, propertyItems, wordItems } from './items.js';
import { type Place, placeOf, type Value, valueAt } from './place.js';
import { smallBooths } from './small-booth.js';
import { firstOf, plainText, type Writing } from './snippets.js';
import { unitsFor } from './units.js';
import { type Slot, worthChoosing } from './worth.js';

/**
 * Offers what the vocabulary and the known names allow at the cursor, also in a text that is half written. A space opens the list only
 * where one of known values is due: lines are written like prose, and a list at every word stands in the way, where the first letter
 * of the next word would open it anyhow. A new line opens none for the same reason: another Enter would take its first row.
 */
export class BoothCompletionProvider implements CompletionProvider {
  readonly completionOptions = { triggerCharacters: ['"', ' '] };
  private readonly lexer: Lexer;
  private readonly imports: BoothServices['workspace']['Imports'];
  private readonly files: FileSystemProvider;

  /** An editor that does not say so knows no tab stops; without an editor, all is shown. */
  private knowsTabStops = true;

  constructor(private readonly services: BoothServices) {
    services.shared.lsp.LanguageServer.onInitialize(({ capabilities: { textDocument } }) => {
      this.knowsTabStops = textDocument?.completion?.completionItem?.snippetSupport === true;
    });
    this.lexer = services.parser.Lexer;
    this.imports = services.workspace.Imports;
    this.files = services.shared.workspace.FileSystemProvider;
  }

  async getCompletion(
    document: LangiumDocument,
    { position, context }: Pick<CompletionParams, 'position' | 'context'>,
  ): Promise<CompletionList> {
    const offset = document.textDocument.offsetAt(position);
    const { tokens: all, hidden } = wordsAround(document, offset, this.lexer);
    if (hidden.some((comment) => isInside(offset, comment))) return listOf([]);
    const typed = all.find(
      (token) => token.startOffset < offset && offset <= token.endOffset! + 1 && isWordLike(token),
    );
    const start = typed?.startOffset ?? offset;
    const range: Range = {
      start: document.textDocument.positionAt(start),
      end: document.textDocument.positionAt(typed ? Math.max(offset, typed.endOffset! + 1) : offset),
    };
    const before = this.withoutLastClosers(all.filter(({ startOffset }) => startOffset < start));
    const after = all.filter(({ startOffset }) => startOffset >= offset);
    const slot = { start, end: typed ? Math.max(offset, typed.endOffset! + 1) : offset };
    const place = placeOf(before);
    const bySpace = context?.triggerCharacter === ' ';
    if (bySpace && !isValueDue(place, start)) return listOf([]);
    const items = await this.itemsAt(place, after, typed, document, slot);
    if (bySpace && items.every(({ isExample }) => isExample)) return listOf([]);
    return listOf(
      items.map(({ snippet, range: own = range, isExample: _, ...item }, index) => ({
        ...item,
        sortText: String(index).padStart(3, '0'),
        filterText: item.label,
        insertTextFormat: snippet !== undefined && this.knowsTabStops ? 2 : 1,
        textEdit: { range: own, newText: this.written(snippet) ?? item.label },
      })),
    );
  }

  private written(snippet: string | undefined): string | undefined {
    return snippet === undefined || this.knowsTabStops ? snippet : plainText(snippet);
  }

  private withoutLastClosers(tokens: readonly Token[]): Token[] {
    const { tokens: balanced } = balance(tokens, this.lexer.definition);
    while (balanced.at(-1)?.isInsertedInRecovery) balanced.pop();
    return balanced;
  }

  private async itemsAt(
    place: Place,
    after: readonly Token[],
    typed: Token | undefined,
    document: LangiumDocument,
    slot: Slot,
  ): Promise<Item[]> {
    const writing = this.writingOf(document);
    const last = place.before.at(-1)?.tokenType.name;
    const value = valueAt(place);
    if (typed && isText(typed) && value?.key !== 'import') return [];
    if (value?.key === 'import' && value.values.length === 0) return this.importable(document, typed !== undefined);
    if (value?.key === 'accept' || value?.key === 'limit') {
      const items = this.reasonItems(value, document);
      if (items) return items;
    }
    if (place.isOutside) {
      const units = value && this.unitItems('place', value, typed, writing);
      if (units) return units;
      if (value?.key === 'place') return this.placementItems(value, last, document, writing);
      const isNew = place.before.length === 0 && after.length === 0;
      return [...(isNew ? smallBooths() : []), ...outerItems(last, writing)];
    }
    if (!place.kind) return [];
    const units = value && this.unitItems(place.kind, value, typed, writing);
    const values = value && (await this.valueItems(place, value, last, document, slot, writing));
    if (units) return [...units, ...(values ?? []).filter(({ range }) => range)];
    const isOpen = value?.values.length === 0 || goesOn(last);
    if (values && (isOpen || value?.key === 'between')) return values;
    return [...(values ?? []), ...propertyItems(place.kind, place.before, after, writing)];
  }

  private writingOf(document: LangiumDocument): Writing {
    return {
      lexer: this.lexer,
      show: showOf(document),
      names: (wanted) => this.names(wanted, document).map(({ label }) => label),
    };
  }

  /** The units that complete a number; nothing if there is no bare number at the cursor. */
  private unitItems(
    kind: Kind,
    { key, values }: Value,
    typed: Token | undefined,
    { show }: Writing,
  ): Item[] | undefined {
    const shape = propertyOf(kind, key)?.shape;
    const number = typed ?? values.at(-1);
    if (!shape || number?.tokenType.name !== 'QUANTITY' || parseQuantity(number.image).is !== 'number')
      return undefined;
    const units = unitsFor(shape, number.image, show);
    if (units.length === 0) return undefined;
    return units.map((unit) => ({ label: typed ? number.image + unit : unit, kind: itemKind.unit }));
  }

  private async importable(document: LangiumDocument, isQuoted: boolean): Promise<Item[]> {
    try {
      const entries = await this.files.readDirectory(UriUtils.dirname(document.uri));
      return entries
        .filter(
          ({ isFile, uri }) => isFile && uri.path.endsWith('.booth') && uri.toString() !== document.uri.toString(),
        )
        .map(({ uri }) => ({ label: `"${UriUtils.basename(uri)}"`, kind: itemKind.file }));
    } catch {
      return isQuoted ? [] : [{ label: say`import path`, kind: itemKind.snippet, snippet: '"${1:furniture.booth}"' }];
    }
  }

  /** After `accept` or `limit`; nothing once the statement is complete. */
  private reasonItems({ key, values }: Value, document: LangiumDocument): Item[] | undefined {
    const images = values.map(({ image }) => image);
    if (images.length === 0)
      return checks.map(({ id, title, question }) => ({
        label: id,
        kind: itemKind.value,
        detail: said(title),
        documentation: said(question),
      }));
    if (images.at(-1) === 'on') return this.names(undefined, document);
    if (values.some(isText)) return undefined;
    if (images.includes('because')) return [];
    const because = { label: 'because', kind: itemKind.keyword, snippet: 'because "$1"' };
    if (key === 'limit' || images.includes('on')) return [because];
    return [{ label: 'on', kind: itemKind.keyword }, because];
  }

  private placementItems(
    { values }: Value,
    last: string | undefined,
    document: LangiumDocument,
    writing: Writing,
  ): Item[] {
    const used = new Set(values.map(({ image }) => image));
    if (values.length === 0 || last === ',')
      return this.names(entryPieces, document).filter(({ label }) => !used.has(label));
    if (used.has('at'))
      return used.has('turn') ? [] : [...propertyItems('place', values, [], writing), ...outerItems(last, writing)];
    const row = { label: 'in a row', kind: itemKind.keyword };
    return [
      ...(used.has('row') ? [] : [row]),
      ...propertyItems('place', values, [], writing).filter(({ label }) => label === 'at'),
    ];
  }

  /** What may follow a key; nothing if it takes no more. */
  private async valueItems(
    { kind: around, name }: Place,
    { key, values }: Value,
    last: string | undefined,
    document: LangiumDocument,
    slot: Slot,
    writing: Writing,
  ): Promise<Item[] | undefined> {
    const kind = around!;
    const used = new Set(values.map(({ image }) => image));
    const entry = propertyOf(kind, key);
    if (!entry) {
      const nested = nestedBlocks(kind).find(({ word }) => word === key);
      return nested?.naming === 'reference' && values.length === 0 ? this.names(['monitor'], document) : [];
    }
    const { shape } = entry;
    const worth = () => worthChoosing(document, { kind, name, entry }, slot, writing, this.services);
    const goesOn = /^\s*(above|below)\b/.test(document.textDocument.getText().slice(slot.end));
    const example = () => exampleItem(goesOn ? { ...entry, example: firstOf(entry.example) } : entry, writing);
    const isOpen = values.length === 0 || last === ',';
    switch (shape.is) {
      case 'words':
        return isOpen
          ? wordItems(
              shape.words.filter((word) => !used.has(word)),
              entry,
            )
          : undefined;
      case 'wall':
        return isOpen ? wordItems(walls, entry) : undefined;
      case 'names':
        return isOpen ? this.names(shape.kinds, document).filter(({ label }) => !used.has(label)) : undefined;
      case 'sides':
        if (values.length === 1) return [{ label: 'and', kind: itemKind.keyword }];
        if (values.length > 0 && last !== 'and') return undefined;
        return [
          ...wordItems(
            landmarks.filter((word) => !used.has(word)),
            entry,
          ),
          ...this.names(pieceKinds, document),
        ];
      case 'length':
      case 'angle':
        return values.length === 0 ? [...(await worth()), example()] : aroundItems(shape, last);
      case 'text size':
        return values.length === 0 ? [...(await worth()), example()] : undefined;
      case 'flag':
        return undefined;
      default:
        return values.length === 0 ? [example()] : undefined;
    }
  }

  private names(wanted: readonly Kind[] | undefined, document: LangiumDocument): Item[] {
    return this.imports
      .visibleFrom(document)
      .flatMap((each) => [...namesOf(each).values()])
      .filter(({ kind }) => !wanted || wanted.includes(kind))
      .map(({ name, kind }) => ({ label: name!, kind: itemKind.reference, detail: said(kinds[kind]) }));
  }
}

const entryPieces: readonly Kind[] = ['desk', 'rack'];

/** Whether what stands just before a space asks for a value. */
function isValueDue(place: Place, start: number): boolean {
  const last = place.before.at(-1);
  if (last?.endOffset !== start - 2) return false;
  return valueAt(place)?.values.length === 0 || goesOn(last.tokenType.name);
}

/** Whether more of a value has to follow a token of that kind. */
function goesOn(last: string | undefined): boolean {
  return last !== undefined && [',', 'and', 'on', 'above', 'below'].includes(last);
}

/** A comment to the end of the line still goes on just after its last character. */
function isInside(offset: number, { startOffset, endOffset, tokenType }: Token): boolean {
  return startOffset < offset && offset <= endOffset! + (tokenType.name === 'BLOCK_COMMENT' ? 0 : 1);
}

function isText({ tokenType: { name } }: Token): boolean {
  return name === 'TEXT' || name === 'OPEN_TEXT';
}

function isWordLike(token: Token): boolean {
  return isText(token) || token.tokenType.name === 'QUANTITY' || /^[\p{L}_]/u.test(token.image);
}

function listOf(items: CompletionItem[]): CompletionList {
  return { isIncomplete: false, items };
}

import type { CstNode } from 'langium';
import { type DisplayUnit, formatLength, formatRange, said, say } from '@boothwright/fit';
import { isProperty } from '../generated/ast.js';
import { parseQuantity } from '../quantity/quantity.js';
import { entryOfHolder, type Holder, propertiesOf, type PropertyNode } from '../syntax/tree.js';
import { meaningOf } from '../values/interpret.js';
import type { PropertyEntry } from '../vocabulary/entries.js';
import { propertyOf } from '../vocabulary/vocabulary.js';
import { plainly } from './markup.js';

/** The table of what a block says and what is taken for the rest, in the reader's unit; empty if there is neither. */
export function saidTable(holder: Holder, show: DisplayUnit): string {
  const given = new Map<PropertyEntry, PropertyNode>();
  const { kind, properties } = entryOfHolder(holder);
  for (const node of propertiesOf(holder)) {
    const entry = propertyOf(kind, node.key);
    if (entry && !given.has(entry)) given.set(entry, node);
  }
  const slots = new Set([...given.keys()].flatMap(({ slot }) => slot ?? []));
  const rows = properties.flatMap((entry) => {
    const node = given.get(entry);
    if (node) return [`| ${entry.key} | ${valueOf(node, entry, show)} | |`];
    const isTaken = entry.default !== undefined && entry.shape.is !== 'flag' && !(entry.slot && slots.has(entry.slot));
    return isTaken ? [`| ${entry.key} | ${plainly(inUnit(entry.default, show))} | ${say`default`} |`] : [];
  });
  return rows.length > 0 ? [say`| Property | Value | |`, '| :-- | :-- | :-- |', ...rows].join('\n') : '';
}

/** A property's value as it is understood: lengths in the reader's unit, anything else as it is typed. */
export function valueOf(node: PropertyNode, entry: PropertyEntry, show: DisplayUnit): string {
  const meaning = isProperty(node) ? meaningOf(node, entry) : undefined;
  const typed = typedOf(node.$cstNode, node.key);
  if (meaning?.is === 'point')
    return say`${formatLength(meaning.point.x, show)} from the left wall, ${formatLength(meaning.point.y, show)} from the back wall`;
  if (meaning?.is !== 'length') return typed === '' ? say`yes` : plainly(typed);
  const { min, max, direction, from, reported } = meaning;
  const height = /\bbelow\b/.test(typed) ? say`below the ${said(from ?? '')}` : say`above the ${said(from ?? '')}`;
  return [formatRange({ min, max }, show), direction && said(direction), from && height, reported && say`(reported)`]
    .filter(Boolean)
    .join(' ');
}

/** A length as it reads in each unit that people use. */
export function inAllUnits(text: string): string | undefined {
  const quantity = parseQuantity(text);
  if (quantity.is !== 'length') return undefined;
  const { value } = quantity;
  const feet = value >= 610 ? [formatLength(value, 'ft')] : [];
  const metres = value >= 3000 ? [formatLength(value, 'm')] : [formatLength(value, 'cm')];
  const inches = value >= 9144 ? [] : [formatLength(value, 'in')];
  return [...inches, ...feet, ...metres, formatLength(value, 'mm')].join(' = ');
}

function inUnit(text: string, show: DisplayUnit): string {
  const quantity = parseQuantity(text);
  return quantity.is === 'length' ? formatLength(quantity.value, show) : text;
}

function typedOf(node: CstNode | undefined, key: string): string {
  return (node?.text ?? '').slice(key.length).trim().replace(/\s+/g, ' ');
}

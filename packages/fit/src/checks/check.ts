import type { Finding, MeasureUnit, Strength } from '../assessment.js';
import type { Scene } from '../scene/scene.js';
import type { BodyRule } from './body-rule.js';

export type CheckGroup =
  | 'seat'
  | 'stand'
  | 'screen'
  | 'sight'
  | 'reach'
  | 'space'
  | 'walkway'
  | 'access'
  | 'platform'
  | 'skirt'
  | 'furniture'
  | 'listening'
  | 'crowd';

/** A property that has a default, or a crowd’s two. */
export type DefaultName = 'shoe' | 'slump' | 'task' | 'working' | 'lean' | 'top' | 'tilt' | 'aspect' | 'crowd';

/** A property that a remedy can give a better value, by its block and its key. */
export type ChosenProperty =
  | 'seating first'
  | 'door opens'
  | 'monitor text'
  | 'screen setback'
  | 'screen bottom'
  | 'screen centre'
  | 'screen top'
  | 'screen turn'
  | 'screen tilt'
  | 'control setback'
  | 'skirt drop'
  | 'skirt length'
  | 'platform guard'
  | 'cable slope';

/** Where a figure comes from. */
export interface Source {
  /** Short name, edition and section, as a finding cites it: 'OSHA Computer Workstations, work space'. */
  readonly name: string;
  /** What it says, in a few words of our own. */
  readonly says: string;
  /** How it was read: in the document itself, in a copy that quotes it, from memory, or derived. */
  readonly read: 'in the source' | 'in a secondary source' | 'from memory' | 'derived' | 'own bound';
}

/**
 * One check: all that is known of it. Documentation pages, `explain`, the links behind diagnostic codes and the rule
 * list of a machine-readable report are made from this object; nothing else names the check.
 */
export interface Check {
  /** Kebab case, unique, stable: files and scripts refer to it. */
  readonly id: string;
  readonly group: CheckGroup;
  readonly title: string;
  /** The question it answers, as a person would ask it. */
  readonly question: string;
  /** How the answer is computed, in a sentence or two. */
  readonly computes: string;
  /** The preferred band and the outer limit, in words and figures. */
  readonly limits: string;
  readonly sources: readonly Source[];
  readonly strength: Strength;
  /** Why no published figure can be held against it; absent where there is one, and then its test holds two values of it. */
  readonly unpublished?: string;
  /** A file may hold it to one number of its own: `limit CHECK VALUE because "…"`. */
  readonly takesLimit?: boolean;
  /** Properties of which a default decides with, where the file is silent; a finding names those it took. */
  readonly restsOn?: readonly DefaultName[];
  /** What its remedies can set by itself, for completion to offer; a `rule` sets heights of desks, seats and foot rings anyhow. */
  readonly chooses?: readonly ChosenProperty[];
  /** Where law or safety is touched. */
  readonly caution?: string;
  readonly unit?: MeasureUnit;
  readonly example: Example;
  /** A check of one person's setting at a seat or standing place. */
  readonly rule?: BodyRule;
  /** A check of anything else. */
  readonly find?: (scene: Scene) => readonly FindingDraft[];
  /** `find` asks each workstation by itself: what it says of one rests on that one, what it refers to, and the frame of the booth. */
  readonly ofEachStation?: boolean;
}

/** Two whole booth files: the check fires on the first and on nothing in the second. */
export interface Example {
  readonly fires: string;
  readonly passes: string;
}

/** A finding before the parts that every finding of its check shares. */
export type FindingDraft = Omit<
  Finding,
  'check' | 'source' | 'strength' | 'caution' | 'unit' | 'related' | 'remedies' | 'assumptions' | 'defaults'
> &
  Partial<Pick<Finding, 'source' | 'unit' | 'related' | 'remedies' | 'assumptions'>>;

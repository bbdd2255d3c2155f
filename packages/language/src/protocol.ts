import type { Advice, Assessment, StationAdvice, Verdict } from '@boothwright/fit';

/** What an editor asks the language server beyond the standard protocol. */

/** Asks for the assessment of one open booth file, in English, for a report. Params `AssessmentParams`, result `AssessmentResult | null`. */
export const assessmentRequest = 'boothwright/assessment';

export interface AssessmentParams {
  /** The URI of the booth file's text document. */
  readonly uri: string;
  /** What would fit is wanted too. It costs more than all checks together. */
  readonly advice?: boolean;
}

/** `null` instead of this: the server does not know the file, or has never been able to read it. */
export interface AssessmentResult {
  readonly assessment: Assessment;
  /** True if the text cannot be read now, and this is of the last text that could. */
  readonly stale: boolean;
  /** What would fit, if it was asked for. */
  readonly advice?: Advice;
}

/** What an editor tells of itself as `initializationOptions`. */
export interface ClientOptions {
  /** The sentences of the editor's language by the English ones; absent: those of `locale` if the server has them, else English. */
  readonly sentences?: Readonly<Record<string, string>>;
  /** It has the command `adviseCommand`, so that lenses may call it. */
  readonly showsAdvice?: boolean;
  /** It has the command `showSideCommand`, so that lenses may call it. */
  readonly showsPreview?: boolean;
  /** It opens the addresses of `pageUri` and has the command `explainCommand`, so that codes may lead there. */
  readonly opensPages?: boolean;
  /** It wants `verdictNotification`. */
  readonly showsVerdict?: boolean;
}

/** The scheme of the pages behind the codes of diagnostics. The editor makes them; nothing is fetched. */
export const pageScheme = 'boothwright-page';

/** The address of the page behind a code. */
export function pageUri(code: string): string {
  return `${pageScheme}:/${code}.md`;
}

/** The code that the page at that path is behind. */
export function codeOfPage(path: string): string {
  return path.replace(/^\//, '').replace(/\.md$/, '');
}

/** The editor's command that opens the page behind a code. Its one argument, if any: `ExplainParams`; without, it asks which. */
export const explainCommand = 'boothwright.explain';

export interface ExplainParams {
  readonly code: string;
}

/** What the server tells after each check of an open booth file, to an editor that wants it. Params `VerdictParams`. */
export const verdictNotification = 'boothwright/verdict';

export interface VerdictParams {
  /** The URI of the booth file's text document. */
  readonly uri: string;
  /** The version of the text that was checked. */
  readonly version: number;
  /** How many errors the text has, and the texts that it imports. */
  readonly faults: number;
  /** How many findings there are of each verdict, accepted ones apart; absent for a file that holds no booth. */
  readonly counts?: Readonly<Record<Verdict | 'accepted', number>>;
  /** How long reading and checking the booth took, in milliseconds; absent as `counts`. */
  readonly took?: number;
}

/** The editor's command that shows what would fit at a workstation. Its one argument: `AdviceParams`. */
export const adviseCommand = 'boothwright.advise';

/** Asks what would fit at a workstation. Params `AdviceParams`, result `AdviceResult | null`: null if it is not known. */
export const adviceRequest = 'boothwright/advice';

export interface AdviceParams {
  /** The URI of the booth file's text document. */
  readonly uri: string;
  /** The workstation's name. */
  readonly workstation: string;
}

export type AdviceResult = Pick<StationAdvice, 'workstation' | 'plans' | 'notes'>;

/** What the language server asks an editor for files that it cannot reach itself, as in a browser. */

/** Params `FileParams`, result: the text of the file. Fails if it cannot be read. */
export const readFileRequest = 'boothwright/readFile';
/** Params `FileParams`, result `FileEntry[]`: what a folder holds. Fails if it cannot be read. */
export const readDirectoryRequest = 'boothwright/readDirectory';

export interface FileParams {
  readonly uri: string;
}

export interface FileEntry {
  readonly uri: string;
  readonly isFile: boolean;
  readonly isDirectory: boolean;
}

export * from './preview/protocol.js';

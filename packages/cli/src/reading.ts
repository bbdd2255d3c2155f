import path from 'node:path';
import type { Assessment, Origin } from '@boothwright/fit';
import { createAnalyser, type FileDiagnostic, type IssueCode } from '@boothwright/language';
import { nodeFileSystem, readStart } from '@boothwright/language/node';
import { URI } from 'langium';

/** What became of one booth file. */
export interface Reading {
  /** The path as it was typed. */
  readonly file: string;
  /** What the language says of the text and of what it imports, or the file system of the file. */
  readonly problems: readonly Problem[];
  /** The file, and what it imports, could be read and understood without an error. */
  readonly understood: boolean;
  /** Of what could be understood: what has errors is left out. Absent if the file holds no booth, or could not be read. */
  readonly assessment?: Assessment;
}

export interface Problem {
  readonly severity: 'error' | 'warning';
  readonly message: string;
  readonly code?: IssueCode;
  /** Absent if the whole file is meant. */
  readonly origin?: Origin;
}

/** Reads, checks and assesses one booth file. Whatever is wrong with it is a problem in the result, not an error. */
export function readBooth(file: string): Promise<Reading> {
  return createReader()(file);
}

/** As `readBooth`, for several files one after another. */
export function createReader(): (file: string) => Promise<Reading> {
  const analyse = createAnalyser({ fileSystem: nodeFileSystem() });
  return (file) => readWith(analyse, file);
}

async function readWith(analyse: ReturnType<typeof createAnalyser>, file: string): Promise<Reading> {
  let text: string;
  try {
    text = await readStart(file);
  } catch (error) {
    return { file, understood: false, problems: [{ severity: 'error', message: unreadable(error) }] };
  }
  if (!file.endsWith('.booth')) {
    const message = 'this is no booth file: its name does not end in .booth.';
    return { file, understood: false, problems: [{ severity: 'error', message }] };
  }
  const uri = URI.file(path.resolve(file));
  const { diagnostics, assessment } = await analyse({ uri, text });
  const problems = diagnostics.filter(({ kind }) => kind === 'text').map(toProblem);
  const understood = problems.every(({ severity }) => severity !== 'error');
  return { file, understood, problems, ...(assessment && { assessment }) };
}

/** A fault of the text as the command line tells of it. */
export function toProblem({ uri, start, end, severity, code, message }: FileDiagnostic): Problem {
  return {
    severity: severity === 'error' ? 'error' : 'warning',
    message,
    code: code as IssueCode,
    origin: { uri, start, end },
  };
}

/** What the file system said, in words. */
function unreadable(error: unknown): string {
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  switch (code) {
    case 'ENOENT':
    case 'ENOTDIR':
      return 'there is no such file. Check the path.';
    case 'EISDIR':
      return 'this is a folder. Name a booth file in it.';
    case 'EACCES':
    case 'EPERM':
      return 'the file may not be read. Check who it belongs to.';
    default:
      return `the file could not be read: ${error instanceof Error ? error.message : String(error)}`;
  }
}

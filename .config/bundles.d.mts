import type { BuildOptions } from 'esbuild';

export interface Bundle {
  readonly entry: string;
  readonly out: string;
}

/** The extension, and the language server inside it. */
export const bundles: readonly Bundle[];
/** The language server as a program of its own, for other editors. */
export const server: Bundle;
/** For esbuild. */
export function toOptions(bundle: Bundle): BuildOptions;

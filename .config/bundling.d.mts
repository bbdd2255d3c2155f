import type { BuildOptions } from 'esbuild';

export declare const bundling: BuildOptions;
export declare const program: BuildOptions;
export declare const commandLine: (outdir: string) => BuildOptions[];

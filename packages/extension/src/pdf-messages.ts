import type { renderPdf } from '@boothwright/report/pdf';

/** Makes a PDF out of an assessment. */
export type RenderPdf = typeof renderPdf;

/** What a worker that makes a PDF is sent, and what it sends back. */
export type PdfRequest = Parameters<RenderPdf>;
export type PdfAnswer = { readonly pdf: Uint8Array } | { readonly failure: string };

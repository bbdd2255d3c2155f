import { renderPdf } from '@boothwright/report/pdf';
import type { PdfAnswer, PdfRequest } from './pdf-messages.js';

// One file for both hosts, loaded when the first PDF is asked for: a module in Node, a worker in a browser.
export { renderPdf };

if ('importScripts' in globalThis) {
  globalThis.addEventListener('message', (event) => void answer((event as unknown as { data: PdfRequest }).data));
}

async function answer([assessment, options]: PdfRequest): Promise<void> {
  const post = globalThis.postMessage as unknown as (message: PdfAnswer) => void;
  try {
    post({ pdf: await renderPdf(assessment, options) });
  } catch (error) {
    post({ failure: error instanceof Error ? error.message : String(error) });
  }
}

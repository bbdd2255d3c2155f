/** How a report or drawing made by this product starts: as HTML or PDF within its first kilobyte, as Markdown, JSON, SVG or DXF with its first words. */
const inHtml = '<meta name="generator" content="Boothwright';
const inPdf = '/MadeBy /Boothwright\n';
const atStart = /^(<!-- Boothwright |999\r?\nBoothwright |\{\s*"schema": "boothwright-(?:assessment|comparison)-)/;

/** Whether a text is a report or drawing that this product made. The first kilobyte of the text is enough. */
export function isReport(text: string): boolean {
  const start = text.slice(0, 1024);
  return atStart.test(text) || start.includes(inHtml) || (start.startsWith('%PDF-') && start.includes(inPdf));
}

/** How a report made by this product starts, inside its first kilobyte. */
const marker = '<meta name="generator" content="Boothwright';

/** Whether a text is a report that this product made. The first kilobyte of the text is enough. */
export function isReport(text: string): boolean {
  return text.slice(0, 1024).includes(marker);
}

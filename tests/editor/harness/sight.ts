import type { Page } from 'playwright-core';

export interface Box {
  readonly left: number;
  readonly top: number;
  readonly width: number;
  readonly height: number;
}

export interface Squiggle {
  readonly severity: 'error' | 'warning' | 'info' | 'hint';
  /** The characters above it. */
  readonly text: string;
}

/** A visible line of the active editor: its text, where each character stands, and its coloured pieces. */
export interface SeenLine {
  readonly text: string;
  readonly characters: readonly Box[];
  readonly pieces: readonly { readonly text: string; readonly colour: string }[];
}

interface Seen {
  readonly lines: readonly SeenLine[];
  readonly marks: readonly { readonly severity: Squiggle['severity']; readonly box: Box }[];
}

/** Reads the active editor off the screen: what is drawn, not what the editor says it holds. */
export function lookAtEditor(page: Page): Promise<Seen> {
  return page.evaluate(() => {
    const editor = document.querySelector('.editor-group-container.active .editor-instance .monaco-editor');
    if (!editor) return { lines: [], marks: [] };
    const boxOf = (rect: DOMRect) => ({ left: rect.left, top: rect.top, width: rect.width, height: rect.height });
    const readLine = (line: Element) => {
      const characters: { character: string; box: ReturnType<typeof boxOf> }[] = [];
      const walker = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node; node = walker.nextNode()) {
        if (node.parentElement?.closest('[class*="ced-"]')) continue;
        for (let at = 0; at < (node.textContent?.length ?? 0); at++) {
          const range = document.createRange();
          range.setStart(node, at);
          range.setEnd(node, at + 1);
          const character = (node.textContent?.[at] ?? '').replace('\u00a0', ' ');
          characters.push({ character, box: boxOf(range.getBoundingClientRect()) });
        }
      }
      const pieces = [...line.querySelectorAll('span[class*="mtk"]')].map((span) => ({
        text: (span.textContent ?? '').replaceAll('\u00a0', ' '),
        colour: getComputedStyle(span).color,
      }));
      return {
        text: characters.map(({ character }) => character).join(''),
        characters: characters.map(({ box }) => box),
        pieces,
      };
    };
    const topOf = (element: Element) => element.getBoundingClientRect().top;
    const lines = [...editor.querySelectorAll('.view-lines > .view-line')].sort((a, b) => topOf(a) - topOf(b));
    const marks = [...editor.querySelectorAll('.view-overlays [class*="squiggly-"]')].flatMap((mark) => {
      const severity = /squiggly-(error|warning|info|hint)/.exec(mark.className)?.[1];
      return severity ? [{ severity: severity as 'error', box: boxOf(mark.getBoundingClientRect()) }] : [];
    });
    return { lines: lines.map(readLine), marks };
  });
}

/** The text over each squiggle, from the top of the editor down. */
export function squigglesIn({ lines, marks }: Seen): Squiggle[] {
  return marks
    .map(({ severity, box }) => ({ severity, box, text: lines.map((line) => under(line, box)).join('') }))
    .sort((a, b) => a.box.top - b.box.top || a.box.left - b.box.left)
    .map(({ severity, text }) => ({ severity, text }));
}

/** Where a text is drawn first; undefined if no visible line has it. */
export function boxOfText({ lines }: Seen, wanted: string): Box | undefined {
  const line = lines.find(({ text }) => text.includes(wanted));
  if (!line) return undefined;
  const start = line.text.indexOf(wanted);
  const first = line.characters[start];
  const last = line.characters[start + wanted.length - 1];
  if (!first || !last) return undefined;
  return { left: first.left, top: first.top, width: last.left + last.width - first.left, height: first.height };
}

function under(line: SeenLine, mark: Box): string {
  const covered = line.characters.map(
    (box) => overlap(box, mark, 'left', 'width') && overlap(box, mark, 'top', 'height'),
  );
  return [...line.text].filter((_, at) => covered[at]).join('');
}

/** Whether the middle of a character lies within the mark along one direction. */
function overlap(character: Box, mark: Box, from: 'left' | 'top', size: 'width' | 'height'): boolean {
  const middle = character[from] + character[size] / 2;
  return middle > mark[from] && middle < mark[from] + mark[size];
}

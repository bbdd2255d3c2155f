/** A drawing read back from its SVG, in millimetres of the world. */
export interface ReadDrawing {
  readonly scale: number;
  readonly pieces: readonly DrawnPiece[];
}

interface Point {
  readonly x: number;
  readonly y: number;
}

export interface DrawnPiece {
  readonly kind: string;
  readonly name: string | undefined;
  readonly paths: readonly (readonly Point[])[];
  readonly circles: readonly Point[];
  readonly texts: readonly string[];
}

/** Reads what the writer wrote: groups with `data-kind`, paths of straight lines, circles and texts. */
export function readDrawing(svg: string): ReadDrawing {
  const number = (name: string) => Number(new RegExp(`data-${name}="([^"]+)"`).exec(svg)![1]);
  const [left, top, scale] = [number('left'), number('top'), number('scale')];
  const world = (x: string, y: string) => ({ x: left + Number(x) * scale, y: top - Number(y) * scale });
  const pieces = svg
    .split('<g data-kind="')
    .slice(1)
    .map((part): DrawnPiece => ({
      kind: part.slice(0, part.indexOf('"')),
      name: /^[^>]* data-name="([^"]*)"/.exec(part)?.[1],
      paths: [...part.matchAll(/ d="([-\d. MLZ]+)"/g)]
        .flatMap(([, d]) => [...d!.matchAll(/M([^MZ]+)/g)])
        .map(([, points]) => points!.split('L').map((pair) => world(...(pair.trim().split(' ') as [string, string])))),
      circles: [...part.matchAll(/<circle[^>]* cx="([^"]+)" cy="([^"]+)"/g)].map(([, x, y]) => world(x!, y!)),
      texts: [...part.matchAll(/<text[^>]*>([^<]*)/g)].map(([, text]) => text!),
    }));
  return { scale, pieces };
}

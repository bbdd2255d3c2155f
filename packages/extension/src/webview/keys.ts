/** Keeps a key that the page has answered from the editor around it, which would run a command of its own. */
export function keyTaken(event: KeyboardEvent): void {
  event.preventDefault();
  event.stopPropagation();
}

const ways: Record<string, readonly [number, number]> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The direction of an arrow key, x to the right, y down. */
export function wayOf({ key }: KeyboardEvent): readonly [number, number] | undefined {
  return ways[key];
}

/**
 * The piece that a key leads to from another piece of the same drawing: the nearest in the direction of an arrow, where what lies
 * straight ahead comes before what lies aside; the next or the one before in order, which leads to all of them; the first or the last.
 */
export function pieceByKey(event: KeyboardEvent, from: Element): SVGElement | undefined {
  const buttons = [...(from.closest('svg')?.querySelectorAll<SVGElement>('[role=button]') ?? [])];
  const at = buttons.indexOf(from as SVGElement);
  switch (event.key) {
    case 'PageDown':
      return buttons[(at + 1) % buttons.length];
    case 'PageUp':
      return buttons.at(at - 1);
    case 'Home':
      return buttons[0];
    case 'End':
      return buttons.at(-1);
    default: {
      const way = wayOf(event);
      return way && neighbour(from, buttons, way);
    }
  }
}

function neighbour(
  from: Element,
  buttons: readonly SVGElement[],
  [right, down]: readonly [number, number],
): SVGElement | undefined {
  const start = middleOf(from);
  const ranked = buttons.flatMap((button) => {
    const { x, y } = middleOf(button);
    const ahead = (x - start.x) * right + (y - start.y) * down;
    const aside = Math.abs((x - start.x) * down) + Math.abs((y - start.y) * right);
    return button !== from && ahead > 0.5 ? [{ button, cost: ahead + 2 * aside }] : [];
  });
  return ranked.sort((a, b) => a.cost - b.cost)[0]?.button;
}

function middleOf(button: Element): { readonly x: number; readonly y: number } {
  const { left, top, width, height } = (button.querySelector('.ring') ?? button).getBoundingClientRect();
  return { x: left + width / 2, y: top + height / 2 };
}

/** Brings what the cursor is on into view, unless some drawing of it is in view already. */
export function revealLit(): void {
  const all = [...document.querySelectorAll('.target.lit[role=button]')];
  if (all.length === 0 || all.some(isInView)) return;
  all[0]!.scrollIntoView({ block: 'nearest', inline: 'nearest' });
}

/** Brings a workstation's side views into view. */
export function revealStation(name: string): void {
  const heading = [...document.querySelectorAll<HTMLElement>('[data-station]')].find(
    ({ dataset }) => dataset.station === name,
  );
  heading?.scrollIntoView({ block: 'start' });
}

/** Whether a part of it can be seen, below what stays at the top, and inside of what scrolls. */
function isInView(element: Element): boolean {
  const { left, right, top, bottom } = element.getBoundingClientRect();
  const page = document.documentElement;
  const head = document.querySelector('.top')?.getBoundingClientRect().bottom ?? 0;
  const sheet = element.closest('.sheet')?.getBoundingClientRect();
  const from = { x: Math.max(0, sheet?.left ?? 0), y: Math.max(head, sheet?.top ?? 0) };
  const to = {
    x: Math.min(page.clientWidth, sheet?.right ?? Infinity),
    y: Math.min(page.clientHeight, sheet?.bottom ?? Infinity),
  };
  return right > from.x && left < to.x && bottom > from.y && top < to.y;
}

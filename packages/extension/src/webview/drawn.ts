import type { View } from '@boothwright/report/preview';
import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import { reuse } from './reuse.js';

type Drawing = ReturnType<View['draw']>;

/**
 * The view that a place of the page shows, and its drawing. What can be seen is drawn at once; what is scrolled away follows when the page
 * has nothing else to do. Pieces that did not change are the same objects as before.
 */
export function useDrawn(
  view: View,
  place: RefObject<HTMLElement>,
): { readonly view: View; readonly drawing: Drawing } {
  const isSeen = useSeen(place);
  const [settled, settle] = useState(view);
  const last = useRef<{ readonly view: View; readonly drawing: Drawing }>();
  const now = isSeen.current ? view : settled;
  useEffect(() => {
    if (now === view) return;
    const waiting = requestIdleCallback(() => settle(view), { timeout: LATEST });
    return () => cancelIdleCallback(waiting);
  }, [now, view]);
  if (last.current?.view !== now) last.current = { view: now, drawing: reuse(last.current?.drawing, now.draw()) };
  return last.current;
}

/** What cannot be seen is not older than this, in milliseconds. */
const LATEST = 500;

/** Whether a part of an element is in the window; true until that is known. */
function useSeen(place: RefObject<HTMLElement>): { readonly current: boolean } {
  const isSeen = useRef(true);
  useEffect(() => {
    const observer = new IntersectionObserver((entries) => (isSeen.current = entries.at(-1)!.isIntersecting));
    observer.observe(place.current!);
    return () => observer.disconnect();
  }, []);
  return isSeen;
}

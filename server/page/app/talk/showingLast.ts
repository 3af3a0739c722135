import type { RefObject } from 'preact';
import { useEffect, useRef } from 'preact/hooks';

/**
 * Keeps the latest slip in sight: when it comes or changes, and when a line above or below the notes takes room from
 * them, unless a thumb has moved them meanwhile.
 */
export function useShowingLast(log: RefObject<HTMLElement | null>, changes: readonly unknown[]): void {
  const placed = useRef(0);
  const place = () => {
    const notes = log.current;
    // A late effect may come once another screen has been opened.
    if (!notes) return;
    const slip = notes.querySelector<HTMLElement>('section:last-of-type > :last-child');
    // From its first words; where it is short, with what came before it.
    notes.scrollTop = slip?.offsetTop ?? 0;
    placed.current = notes.scrollTop;
  };
  useEffect(() => {
    place();
    // On its side or zoomed in, the whole page scrolls instead.
    scrollTo(0, document.body.scrollHeight);
  }, changes);
  useEffect(() => {
    const target = log.current!;
    const watched = new ResizeObserver(() => {
      const most = target.scrollHeight - target.clientHeight;
      if (Math.abs(target.scrollTop - Math.min(placed.current, most)) < 2) place();
    });
    watched.observe(target);
    return () => watched.disconnect();
  }, []);
}

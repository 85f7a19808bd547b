import { useEffect, useRef } from 'preact/hooks';
import { printing } from './printing';

/** What is this close to the screen counts as on it. */
const MARGIN = '160px';

/** Runs `begin` when the element comes on the screen or is to be printed, and what it returned when it leaves; begun anew for another `of`. */
export function useOnScreen(begin: () => () => void, of?: string): { current: HTMLDivElement | null } {
  const element = useRef<HTMLDivElement>(null);
  const onPaper = printing.value;
  useEffect(() => {
    if (!element.current) return;
    if (onPaper) return begin();
    let end: (() => void) | undefined;
    const watch = (entries: readonly IntersectionObserverEntry[]): void => {
      const on = entries.at(-1)?.isIntersecting ?? false;
      if (on && !end) end = begin();
      if (!on && end) {
        end();
        end = undefined;
      }
    };
    const observer = new IntersectionObserver(watch, { rootMargin: MARGIN });
    observer.observe(element.current);
    return () => {
      observer.disconnect();
      end?.();
    };
  }, [of, onPaper]);
  return element;
}

import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { PAPER_WIDTH, printing } from '../store/printing';

/** Width of an element in whole pixels, followed as it changes; `fallback` until it is known. On paper it is the same for all. */
export function useWidth(fallback: number): [RefObject<HTMLDivElement | null>, number] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState(fallback);
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element || typeof ResizeObserver === 'undefined') return undefined;
    const measure = (): void => {
      const now = Math.floor(element.clientWidth);
      if (now > 0) setWidth(now);
    };
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(element);
    return () => observer.disconnect();
  }, []);
  return [ref, printing.value ? PAPER_WIDTH : width];
}

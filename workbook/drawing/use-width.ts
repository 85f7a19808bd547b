import type { RefObject } from 'preact';
import { useContext, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { FigureWidth } from '../store/figures';
import { PAPER_WIDTH, printing } from '../store/printing';

/** Width of an element in whole pixels, followed as it changes; `fallback` until it is known. On paper it is the same for all, and a figure says its own. */
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
  const ofFigure = useContext(FigureWidth);
  return [ref, ofFigure ?? (printing.value ? PAPER_WIDTH : width)];
}

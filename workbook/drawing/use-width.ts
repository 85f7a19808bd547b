import type { RefObject } from 'preact';
import { useContext, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { FigureWidth } from '../store/figures';
import { PAPER_WIDTH, printing } from '../store/printing';

/** Width of an element in whole pixels, followed as it changes; `fallback` until it is known. On paper it is the same for all, and a figure says its own. */
export function useWidth(fallback: number): [RefObject<HTMLDivElement | null>, number] {
  const [ref, width] = useMeasured();
  return [ref, width ?? fallback];
}

/** The same without a fallback: undefined until it is known, which it is before anything is painted. */
export function useMeasured(): [RefObject<HTMLDivElement | null>, number | undefined] {
  const ref = useRef<HTMLDivElement>(null);
  const [width, setWidth] = useState<number>();
  useLayoutEffect(() => {
    const element = ref.current;
    if (!element || !measures()) return undefined;
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

/** Whether there is a page in which anything has a width. */
export const measures = (): boolean => typeof ResizeObserver !== 'undefined';

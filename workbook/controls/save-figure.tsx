import type { JSX } from 'preact';
import { useContext, useEffect, useRef } from 'preact/hooks';
import { FigureWidth, figureAsked, type OfferedFigure, offerFigure } from '../store/figures';
import { along } from './along';

interface SaveProps {
  readonly title: string;
  /** The picture by itself. */
  draw(): JSX.Element;
}

/** Offers a picture to be saved. */
export function SaveFigure({ title, draw }: SaveProps): JSX.Element | null {
  const button = useRef<HTMLButtonElement>(null);
  const mine = useRef<OfferedFigure>(undefined);
  const latest = useRef(draw);
  latest.current = draw;
  // What is drawn for a figure offers none.
  const inFigure = useContext(FigureWidth) !== undefined;
  useEffect(() => {
    if (!button.current) return undefined;
    mine.current = { title, place: button.current, draw: () => latest.current() };
    return offerFigure(mine.current);
  }, [title]);
  if (inFigure) return null;
  return (
    <button
      ref={button}
      type="button"
      class="word quiet save-figure"
      {...along()}
      onClick={() => {
        figureAsked.value = mine.current;
      }}
    >
      Save figure<span class="unseen"> {title}</span>
    </button>
  );
}

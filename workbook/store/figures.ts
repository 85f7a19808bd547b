import { type Signal, signal } from '@preact/signals';
import { createContext, type JSX } from 'preact';

/** A chart, drawing or picture that can be saved as a figure. */
export interface OfferedFigure {
  readonly title: string;
  /** The picture as it is now, as wide as its place. */
  draw(): JSX.Element;
  /** Where it stands on the page. */
  readonly place: Element;
}

const offered = new Set<OfferedFigure>();

/** The picture is on the page; returns the way to say that it no longer is. */
export function offerFigure(figure: OfferedFigure): () => void {
  offered.add(figure);
  return () => {
    offered.delete(figure);
  };
}

/** All figures of the page, in the order in which they stand there. */
export const figuresHere = (): readonly OfferedFigure[] =>
  [...offered].sort((a, b) => (a.place.compareDocumentPosition(b.place) & Node.DOCUMENT_POSITION_FOLLOWING ? -1 : 1));

/** The figure that a person wants to save. */
export const figureAsked: Signal<OfferedFigure | undefined> = signal(undefined);

/** A page for a newsletter is asked for. */
export const askingNewsletter: Signal<boolean> = signal(false);

/** Width of what is drawn for a figure, px at 96 an inch; undefined on the page, where everything is as wide as its place. */
export const FigureWidth = createContext<number | undefined>(undefined);

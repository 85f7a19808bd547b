import type { JSX } from 'preact';

/** Width in pixels where the place of a chart is not measured: the column of cells. */
export const PLAIN_WIDTH = 560;
const PANEL_HEIGHT = 190;

/** Keeps the room of a chart until its code is here. */
export function PlaceHolder({ panels }: { panels: number }): JSX.Element {
  return <div style={{ minHeight: `${panels * PANEL_HEIGHT}px` }} aria-busy="true" />;
}

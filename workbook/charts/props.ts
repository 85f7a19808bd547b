import type { ChartCell, CheckCell, SweepProgress } from '../../engine/index';
import type { Names } from '../drawing/index';

export interface SweepChartProps {
  readonly cell: ChartCell;
  /** What the sweep has computed so far. */
  readonly progress: SweepProgress;
  readonly names: Names;
  /** Every slot of the present design and, where there is one, of the baseline; SI. */
  readonly values: Float64Array;
  readonly baseline?: Float64Array | undefined;
  /** The same sweep of the baseline along what is across; missing without a baseline and while it is not computed. */
  readonly ghost?: SweepProgress | undefined;
  /** A hand moves the design: scales stand still where they can. */
  readonly moving?: boolean;
  /** All checks of the document: those on a panel's path stand in it as limits. */
  readonly checks: readonly CheckCell[];
  /** Title of an option ("balsa–ply"), where the document gives it one. */
  readonly optionTitle?: (path: string, option: string) => string | undefined;
  /** Fixed width in pixels; missing: as wide as the place it stands in. */
  readonly width?: number;
}

import type { ChartCell, CheckCell, PartsCell, SweepProgress, TraceAnswer } from '../../../engine/index';
import type { Names } from '../../drawing/index';
import type { Place, Taker } from '../../store/taker';

/** How the present design is moved from a chart. */
export interface Hand {
  /** Whether a path is a number that may be set: neither a result, nor a choice, nor a formula. */
  takes(path: string): boolean;
  /** Types a number; a drag or the pressing of a key is one edit when it rests. */
  move(path: string, text: string): void;
  rest(byKeys: boolean): void;
}

/** Another design on a chart. */
interface Other {
  readonly name: string;
  /** Every slot of the present design, SI. */
  readonly values: Float64Array;
  /** Its trial series along what is across; missing while it isn't computed and where there is none. */
  readonly ghost?: SweepProgress | undefined;
  /** What runs along something in it, where the chart is of that. */
  readonly trace?: TraceAnswer['present'] | undefined;
}

/** What every chart is given. */
interface Common {
  readonly cell: ChartCell;
  readonly names: Names;
  /** Every slot of the present design and, where there is one, of the baseline; SI. */
  readonly values: Float64Array;
  readonly baseline?: Float64Array | undefined;
  /** Variants that stand on the chart beside the baseline. */
  readonly others?: readonly Other[];
  /** A hand moves the design: scales stand still where they can. */
  readonly moving?: boolean;
  /** Checks whose limits may stand in it: those on a path that it shows do. */
  readonly checks: readonly CheckCell[];
  /** Title of an option ("balsa–ply"), where the document gives it one. */
  readonly optionTitle?: (path: string, option: string) => string | undefined;
  /** Missing: the chart only shows. */
  readonly hand?: Hand;
  /** Missing: designs can't be taken from the chart. */
  readonly taker?: Taker;
  /** Fixed width in pixels; missing: as wide as the place it stands in. */
  readonly width?: number;
}

export interface SweepChartProps extends Common {
  /** What the sweep has computed so far. */
  readonly progress: SweepProgress;
  /** The same sweep of the baseline along what is across; missing without a baseline and while it is not computed. */
  readonly ghost?: SweepProgress | undefined;
  /** Where a sample stands that is no point of a grid; missing: at its place along the axes. */
  designOf?(sample: number): readonly Place[];
}

/** A chart of a weight and balance table. */
export interface PartsChartProps extends Common {
  readonly parts: PartsCell;
}

/** A chart of what runs along something. */
export interface TraceChartProps extends Common {
  readonly trace: TraceAnswer;
}

export type ChartProps = SweepChartProps | PartsChartProps | TraceChartProps;

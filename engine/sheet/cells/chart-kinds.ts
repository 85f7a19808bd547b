import type { ChartCell } from '../document';

/** What a chart can be drawn from: the samples of a sweep, the rows of a weight and balance table, what runs along something. */
export type ChartSource = 'sweep' | 'parts' | 'trace';

/** What one kind of chart takes. The file's check, the faults and the form on the page all go by it. */
export interface ChartNeeds {
  readonly from: readonly ChartSource[];
  /** What runs across: an axis of the sweep, one of its results, a column of what runs along, or nothing to be named. */
  readonly across: 'axis' | 'result' | 'column' | 'nothing';
  /** The second axis: one line, group or row for each of its values. */
  readonly lines: 'axis' | 'axis or nothing' | 'nothing';
  /** How many results it shows at most. At least one, but for a kind that shows always the same. */
  readonly up: number;
  /** It may be drawn from a spread in place of a sweep, or from a spread only. */
  readonly spread?: 'too' | 'only';
  /** Both axes have to be numbers: something is drawn between their values. */
  readonly numbers?: true;
  /** Goes round: only what runs along an angle can be drawn so. */
  readonly round?: true;
  /** Several results may stand in one panel. */
  readonly together?: true;
}

const MOST_PANELS = 6;

/** Every kind of chart. A new one is declared here, drawn by a file in workbook/charts/ and listed in its kinds.ts. */
export const chartNeeds: Readonly<Record<ChartCell['chart'], ChartNeeds>> = {
  line: { from: ['sweep'], across: 'axis', lines: 'axis or nothing', up: MOST_PANELS, together: true },
  bars: { from: ['sweep', 'parts'], across: 'axis', lines: 'axis or nothing', up: MOST_PANELS },
  moments: { from: ['parts'], across: 'nothing', lines: 'nothing', up: 0 },
  contour: { from: ['sweep'], across: 'axis', lines: 'axis', up: 1, numbers: true },
  carpet: { from: ['sweep'], across: 'axis', lines: 'axis', up: MOST_PANELS },
  scatter: { from: ['sweep'], across: 'result', lines: 'axis or nothing', up: MOST_PANELS, spread: 'too' },
  histogram: { from: ['sweep'], across: 'nothing', lines: 'nothing', up: MOST_PANELS, spread: 'too' },
  shares: { from: ['sweep'], across: 'nothing', lines: 'nothing', up: MOST_PANELS, spread: 'only' },
  ring: { from: ['trace'], across: 'nothing', lines: 'nothing', up: 1, round: true },
  along: { from: ['trace'], across: 'column', lines: 'nothing', up: MOST_PANELS },
};

/** What a chart is drawn from, as far as its cell says so: a kind that may be drawn from either goes by which of the two is named. */
export function chartSource({ chart, of }: Pick<ChartCell, 'chart' | 'of'>): ChartSource {
  const [first, ...others] = chartNeeds[chart].from;
  return (of === undefined || of === '' ? first : (others[0] ?? first))!;
}

/** Numbers of a part that bars can show, as they are named behind the part. */
export const PART_BARS = ['mass', 'estimate', 'difference', 'moment', 'moment_share'] as const;

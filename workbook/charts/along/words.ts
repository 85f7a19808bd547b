import { formatNumber, fromSI, type TraceAnswer, toSI } from '../../../engine/index';
import type { TableData } from '../frame/figures';
import type { Drawn } from '../frame/kind';
import { allowed, limitNotes, whereWithin } from '../frame/limit-words';
import { namedLimitWords, passedWords, type Zone } from '../frame/limits';
import type { TraceChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence, leftOut, listed } from '../frame/words';
import type { LineLayout } from '../line/layout';
import { type Along, type AlongColumn, alongText } from './layout';

interface Point {
  readonly x: number;
  readonly y: number;
}

/** Answered points of a column of the present design, SI, in the order in which they run. */
function pointsOf(of: AlongColumn, across: AlongColumn, { trace }: TraceChartProps): Point[] {
  const [x, y] = [trace.present[across.index]!, trace.present[of.index]!];
  return Array.from(x, (at, k) => ({ x: at, y: y[k]! })).filter((each) => Number.isFinite(each.x + each.y));
}

/** Beyond its ends a column has to go this share of its range to have a least or greatest of its own. */
const BEYOND = 0.02;

/** "Line pull runs from 7.8 N at 90° to 21 N at 420°; least 6.9 N at 130°." */
function runSentence(of: AlongColumn, across: AlongColumn, props: TraceChartProps): string {
  const points = pointsOf(of, across, props);
  const [first, last] = [points[0], points.at(-1)];
  if (!first || !last || points.length < 2) return '';
  const least = points.reduce((a, b) => (b.y < a.y ? b : a));
  const greatest = points.reduce((a, b) => (b.y > a.y ? b : a));
  const at = ({ x, y }: Point): string => `${alongText(of, y)} at ${alongText(across, x)}`;
  if (least.y === greatest.y) return `${of.info.title} is ${alongText(of, first.y)} throughout.`;
  const span = BEYOND * (greatest.y - least.y);
  const ends = [Math.min(first.y, last.y), Math.max(first.y, last.y)] as const;
  const extremes = [
    ...(least.y < ends[0] - span ? [`least ${at(least)}`] : []),
    ...(greatest.y > ends[1] + span ? [`greatest ${at(greatest)}`] : []),
  ];
  const run = `${of.info.title} runs from ${at(first)} to ${at(last)}`;
  return extremes.length === 0 ? `${run}.` : `${run}; ${extremes.join(', ')}.`;
}

/** Where a column alone in its panel keeps within its limits; where several share one, which of them pass a limit and where not. */
function withinSentences({ across, shown }: Along, chart: LineLayout, props: TraceChartProps): string[] {
  return chart.panels.flatMap(({ panel, zones, outside }) => {
    const all = [...zones.map(({ zone }) => zone), ...outside];
    const columns = shown.filter(({ info }) => panel.shows.includes(info.name));
    const where = (of: AlongColumn, limits: readonly Zone[]): string | undefined => {
      const points = pointsOf(of, across, props);
      const [low, high] = allowed(limits);
      return points.length < 2 ? undefined : whereWithin(points, low, high, (x) => alongText(across, x));
    };
    if (all.length === 0) return [];
    if (columns.length === 1) {
      const kept = where(columns[0]!, all);
      return kept === undefined
        ? []
        : [`${columns[0]!.info.title} in ${all.length === 1 ? 'its limit' : 'limits'} ${kept}.`];
    }
    return all.flatMap((zone) => {
      const kept = columns.flatMap((of) => {
        const at = where(of, [zone]);
        // What is nowhere within it is not what the limit is meant for.
        return at === undefined || at === 'nowhere' ? [] : [`${inSentence(of.info.title)} ${at}`];
      });
      const limit = inSentence(namedLimitWords(zone));
      return [
        kept.length === 0 ? `Limit passed everywhere: ${limit}.` : `Within the limit (${limit}): ${kept.join('; ')}.`,
      ];
    });
  });
}

/** What to see in the chart, computed from it. */
export function alongSentences({ of: props, data: along, chart }: Drawn<TraceChartProps, Along, LineLayout>): string[] {
  const { across, shown } = along;
  const { trace } = props;
  const count = trace.present[across.index]!.length;
  const missing = Math.max(...shown.map((of) => count - pointsOf(of, across, props).length));
  return [
    ...shown.map((of) => runSentence(of, across, props)),
    ...withinSentences(along, chart, props),
    ...limitNotes(chart.panels),
    chart.panels.some(({ ghosts }) => ghosts.length > 0) ? `Dotted: baseline, ${ghostRange(along, props)}.` : '',
    leftOut(missing, count, 'points'),
  ];
}

/** "line pull 6.2 N to 20 N and speed 0 m/s to 14 m/s". */
function ghostRange({ shown }: Along, { trace }: TraceChartProps): string {
  return listed(
    shown.map((of) => {
      const values = Array.from(trace.baseline?.[of.index] ?? []).filter(Number.isFinite);
      const [low, high] = [Math.min(...values), Math.max(...values)];
      return `${inSentence(of.info.title)} ${alongText(of, low)}${low === high ? '' : ` to ${alongText(of, high)}`}`;
    }),
  );
}

/** Every answered point of the present design and of the baseline, panel by panel. */
export function alongReadings({ data, chart }: Drawn<TraceChartProps, Along, LineLayout>): ReadSeries[] {
  const { across, shown } = data;
  const said = (of: AlongColumn, number: number): string =>
    `${of.info.title} ${alongText(of, toSI(number, of.info.unit))}`;
  return chart.panels.flatMap((drawn) => {
    const columns = shown.filter(({ info }) => drawn.panel.shows.includes(info.name));
    return drawn.lines.map(({ line, placed }, k): ReadSeries => {
      const of = columns[k]!;
      const zones = [...drawn.zones.map(({ zone }) => zone), ...drawn.outside];
      return {
        name: line.label,
        plot: drawn.box,
        points: line.points.flatMap(({ x, y }, n) =>
          Number.isFinite(x + y)
            ? [{ at: placed[n]!, lines: [said(across, x), said(of, y), ...passedWords(zones, y)] }]
            : [],
        ),
      };
    });
  });
}

/** One row for each place along; the baseline runs along places of its own. */
export function alongTable({ across, shown }: Along, trace: TraceAnswer): TableData {
  const columns = [across, ...shown];
  const { present, baseline } = trace;
  const cell = (arrays: typeof present, of: AlongColumn, k: number): string => {
    const si = arrays[of.index]?.[k];
    return si === undefined ? '' : formatNumber(fromSI(si, of.info.unit));
  };
  const count = Math.max(present[across.index]!.length, baseline?.[across.index]?.length ?? 0);
  return {
    head: [
      [
        ...columns.map(({ title }) => ({ text: title })),
        ...(baseline ? columns.map(({ title }) => ({ text: `Baseline: ${inSentence(title)}` })) : []),
      ],
    ],
    rows: Array.from({ length: count }, (_, k) => ({
      head: cell(present, across, k),
      cells: [
        ...shown.map((of) => cell(present, of, k)),
        ...(baseline ? columns.map((of) => cell(baseline, of, k)) : []),
      ],
    })),
  };
}

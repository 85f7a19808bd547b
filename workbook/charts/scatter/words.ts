import { formatNumber } from '../../../engine/index';
import { MOST_ROWS, type TableData } from '../frame/figures';
import { holds } from '../frame/grid-limits';
import type { Drawn } from '../frame/kind';
import { limitNotes } from '../frame/limit-words';
import { passedNamed, zonesOf } from '../frame/limits';
import { numberText } from '../frame/measure';
import { missingSentence } from '../frame/missing-words';
import { unaskedNotes } from '../frame/notes';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { designText, type SampleColumn } from '../frame/samples';
import { causesSentence } from '../frame/spread-words';
import { inSentence } from '../frame/words';
import { MOST_DRAWN } from './clouds';
import type { ScatterData, ScatterLayout } from './layout';

type Scatter = Drawn<SweepChartProps, ScatterData, ScatterLayout>;

const numbered = ({ info }: SampleColumn, value: number): string => `${info.title} ${numberText(info, value)}`;

/** The designs of each cloud from left to right. */
export const scatterReadings = ({ of, data: { across }, chart }: Scatter): ReadSeries[] =>
  chart.panels.flatMap(({ clouds, column, box, spots }) => {
    const limits = [across, column].flatMap((each) =>
      zonesOf(each, of.checks, of.names, of.values).map((zone) => ({ each, zone })),
    );
    const now = spots.find(({ kind }) => kind === 'now');
    const series = clouds.map(
      ({ points }): ReadSeries => ({
        name: '',
        plot: box,
        points: [...points]
          .sort((a, b) => a.x - b.x)
          .map(({ x, y, sample }) => ({
            at: { x, y },
            sample,
            lines: [
              numbered(across, across.values[sample]!),
              numbered(column, column.values[sample]!),
              ...designText(of, sample),
              ...limits.flatMap(({ each, zone }) => passedNamed(zone, each.values[sample]!)),
            ],
          })),
      }),
    );
    if (!now) return series;
    const said = [
      'Now',
      numbered(across, across.now),
      numbered(column, column.now),
      ...limits.flatMap(({ each, zone }) => passedNamed(zone, each.now)),
    ];
    return [...series, { name: '', plot: box, points: [{ at: now.at, lines: said }] }];
  });

export const scatterTable = ({ of, data: { across, ups } }: Scatter): TableData => ({
  head: [[{ text: 'Design' }, ...[across, ...ups].map((column) => ({ text: column.title }))]],
  total: of.progress.total,
  rows: Array.from({ length: Math.min(MOST_ROWS, of.progress.total) }, (_, sample) => ({
    head: designText(of, sample).join(', '),
    cells: [across, ...ups].map(({ values }) => {
      const value = values[sample] ?? Number.NaN;
      return Number.isNaN(value) ? '–' : formatNumber(value);
    }),
  })),
});

export function scatterSentences({ of, data: { across, ups }, chart }: Scatter): string[] {
  const drawn = chart.panels[0]!.clouds.reduce((sum, { points }) => sum + points.length, 0);
  const answered = across.values.filter(Number.isFinite).length;
  const { spread } = of.progress;
  return [
    ...unaskedNotes([across, ...ups]),
    ...ups.map((up) => togetherSentence(across, up)),
    keptSentence(of, [across, ...ups]),
    drawn < answered && answered > MOST_DRAWN ? `${drawn} of ${answered} designs are drawn.` : '',
    ...limitNotes(chart.panels),
    spread ? causesSentence(spread) : missingSentence(of.progress),
  ];
}

/** Correlation from which two results are said to go together. */
const TOGETHER = 0.7;
/** Below this no direction shows in the cloud. */
const TENDENCY = 0.3;

/** "Where line pull is greater, lap time is mostly less." */
function togetherSentence(across: SampleColumn, up: SampleColumn): string {
  const pairs = across.values.flatMap((x, k) => (Number.isFinite(x + up.values[k]!) ? [{ x, y: up.values[k]! }] : []));
  if (pairs.length < 3) return '';
  const mx = pairs.reduce((sum, { x }) => sum + x, 0) / pairs.length;
  const my = pairs.reduce((sum, { y }) => sum + y, 0) / pairs.length;
  let [xx, yy, xy] = [0, 0, 0];
  for (const { x, y } of pairs) {
    xx += (x - mx) ** 2;
    yy += (y - my) ** 2;
    xy += (x - mx) * (y - my);
  }
  const r = xy / Math.sqrt(xx * yy);
  const [a, b] = [inSentence(across.info.title), inSentence(up.info.title)];
  if (!Number.isFinite(r) || Math.abs(r) < TENDENCY) return `Over these designs ${a} and ${b} do not go together.`;
  const way = r > 0 ? 'greater' : 'less';
  if (Math.abs(r) < TOGETHER) return `Where ${a} is greater, ${b} is ${way} by tendency only.`;
  return `Where ${a} is greater, ${b} is mostly ${way}.`;
}

function keptSentence(props: SweepChartProps, columns: readonly SampleColumn[]): string {
  const limits = columns.flatMap((column) =>
    zonesOf(column, props.checks, props.names, props.values).map((zone) => ({ column, zone })),
  );
  if (limits.length === 0) return '';
  const answered = Array.from({ length: props.progress.total }, (_, k) => k).filter((k) =>
    limits.every(({ column }) => Number.isFinite(column.values[k])),
  );
  const kept = answered.filter((k) => limits.every(({ column, zone }) => holds(column.values[k]!, zone))).length;
  return `${kept} of ${answered.length} designs keep within the ${limits.length === 1 ? 'limit' : 'limits'}.`;
}

import { formatNumber, fromSI } from '../../../engine/index';
import type { TableData } from '../frame/figures';
import type { Drawn } from '../frame/kind';
import { namedLimitWords, passedWords } from '../frame/limits';
import { numberText, rangeText, titleWithUnit } from '../frame/measure';
import type { TraceChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence, leftOut } from '../frame/words';
import { bearingText } from './compass';
import type { RingData, RingExtreme, RingLayout, RingPoint } from './layout';

type Drawing = Drawn<TraceChartProps, RingData, RingLayout>;

const degrees = (angle: number): string => `${formatNumber((angle * 180) / Math.PI)}°`;

export function ringReadings({ of, data: { column }, chart }: Drawing): ReadSeries[] {
  const series = (name: string, points: readonly RingPoint[]): ReadSeries => ({
    name,
    points: points.map(({ at, angle, value }) => ({
      at,
      lines: [
        `${column.title} ${numberText(column, value)}`,
        `${of.trace.columns[0]!.title} ${degrees(angle)}`,
        ...(chart.compass ? [`bearing ${bearingText(chart.compass.bearing(angle))}`] : []),
        ...passedWords(chart.zones, value),
      ],
    })),
  });
  return chart.baseline.length === 0
    ? [series('', chart.present)]
    : [series('now', chart.present), series('baseline', chart.baseline)];
}

export function ringTable({ of: { trace }, data: { column, index } }: Drawing): TableData {
  const shown = (arrays: typeof trace.present | undefined, k: number): string => {
    const si = arrays?.[index]?.[k] ?? Number.NaN;
    return Number.isFinite(si) ? formatNumber(fromSI(si, column.unit)) : '–';
  };
  const twice = trace.baseline !== undefined;
  return {
    head: [
      [{ text: trace.columns[0]!.title }, { text: titleWithUnit(column) }, ...(twice ? [{ text: 'Baseline' }] : [])],
    ],
    rows: Array.from(trace.present[0] ?? [], (angle, k) => ({
      head: degrees(angle),
      cells: [shown(trace.present, k), ...(twice ? [shown(trace.baseline, k)] : [])],
    })),
  };
}

export function ringSentences({ of: props, data: { column }, chart }: Drawing): string[] {
  const said = (value: number): string => numberText(column, value);
  const at = (kind: RingExtreme['kind']) => chart.extremes.find((each) => each.kind === kind)?.point;
  const [least, greatest] = [at('least'), at('greatest')];
  const sentences = [
    least && greatest
      ? `Least ${inSentence(column.title)} ${said(least.value)} at ${degrees(least.angle)}, greatest ${said(greatest.value)} at ${degrees(greatest.angle)}.`
      : chart.present[0]
        ? `${column.title} is ${said(chart.present[0].value)} all round.`
        : '',
    chart.compass
      ? `Seen from above, downwind at the top: the wind blows from ${bearingText(chart.compass.bearing(Math.PI))}, the model flies ${chart.compass.clockwise ? 'clockwise' : 'anticlockwise'}.`
      : `Seen from above. ${props.trace.columns[0]!.title} runs anticlockwise from the top.`,
  ];
  for (const zone of chart.zones) {
    sentences.push(`Hatched: ${inSentence(namedLimitWords(zone))}.`);
  }
  if (chart.baseline.length > 0) {
    const values = chart.baseline.map(({ value }) => value);
    sentences.push(`Dotted: baseline, ${rangeText(column, Math.min(...values), Math.max(...values))}.`);
  }
  sentences.push(leftOut(chart.missing, chart.missing + chart.present.length, 'points'));
  return sentences;
}

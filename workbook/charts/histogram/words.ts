import { quantileSorted } from 'd3-array';
import type { SpreadTold } from '../../../engine/index';
import type { TableData } from '../frame/figures';
import { holds } from '../frame/grid-limits';
import type { Drawn } from '../frame/kind';
import { limitNotes } from '../frame/limit-words';
import { passedWords, type Zone, zonesOf } from '../frame/limits';
import { numberText, rangeText } from '../frame/measure';
import { missingSentence } from '../frame/missing-words';
import { outsideNote, unaskedNotes } from '../frame/notes';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import type { SampleColumn } from '../frame/samples';
import { causesSentence, percentilesSentence } from '../frame/spread-words';
import type { HistogramLayout } from './layout';

type Histogram = Drawn<SweepChartProps, readonly SampleColumn[], HistogramLayout>;

const counted = (count: number): string => `${count} ${count === 1 ? 'design' : 'designs'}`;

export const histogramReadings = ({ chart }: Histogram): ReadSeries[] =>
  chart.panels.map(({ column, bins, box, zones, outside }) => ({
    name: column.info.title,
    plot: box,
    points: bins.map(({ from, to, count, bar }) => ({
      at: { x: (bar.left + bar.right) / 2, y: bar.top },
      lines: [
        rangeText(column.info, from, to),
        counted(count),
        ...passedBy(from, to, [...zones.map(({ zone }) => zone), ...outside]),
      ],
    })),
  }));

/** Limits that every design of a bin has passed. */
const passedBy = (from: number, to: number, zones: readonly Zone[]): string[] =>
  zones.flatMap((zone) => passedWords([zone], zone.side === 'below' ? to : from));

export const histogramTable = ({ chart }: Histogram): TableData => ({
  head: [[{ text: 'From' }, { text: 'To' }, { text: 'Designs' }]],
  rows: chart.panels.flatMap(({ column, bins }) =>
    bins.map(({ from, to, count }) => ({
      head: `${column.info.title} ${numberText(column.info, from)}`,
      cells: [numberText(column.info, to), String(count)],
    })),
  ),
});

export function histogramSentences({ of, data: columns, chart }: Histogram): string[] {
  const { spread, columns: shown } = of.progress;
  const drawn = shown[0]?.length ?? 0;
  return [
    ...columns.flatMap((column) => [
      ...unaskedNotes([column]),
      column.column ? spreadSentence(column, spread) : '',
      keptSentence(of, column),
    ]),
    ...limitNotes(chart.panels),
    ...chart.panels.map((panel) => outsideNote([Number.isFinite(panel.column.now) ? HERE : undefined], [panel])),
    spread && drawn < spread.designs ? `The first ${drawn} of ${spread.designs} designs are drawn.` : '',
    spread ? causesSentence(spread) : missingSentence(of.progress),
  ];
}

/** The present design has a value; where does not matter. */
const HERE = { x: 0, y: 0 };

/** "Half of 75 designs have a line pull between 24.1 N and 28.7 N, the middle one 26 N." */
function spreadSentence(column: SampleColumn, told: SpreadTold | undefined): string {
  const result = told?.results.find((each) => each.path === column.path);
  if (told && result) return percentilesSentence(told, result, column.info);
  const ordered = column.values.filter(Number.isFinite).sort((a, b) => a - b);
  if (ordered.length < 2) return '';
  const [low, middle, high] = [0.25, 0.5, 0.75].map((share) =>
    numberText(column.info, quantileSorted(ordered, share)!),
  );
  return `${column.info.title}: half of ${ordered.length} designs lie between ${low} and ${high}, as many below ${middle} as above.`;
}

function keptSentence(props: SweepChartProps, column: SampleColumn): string {
  const limits = zonesOf(column, props.checks, props.names, props.values);
  const answered = column.values.filter(Number.isFinite);
  if (limits.length === 0 || answered.length === 0) return '';
  const kept = answered.filter((value) => limits.every((zone) => holds(value, zone))).length;
  return `${kept} of them keep within ${limits.length === 1 ? 'the limit' : 'the limits'}.`;
}

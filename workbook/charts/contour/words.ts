import { formatNumber } from '../../../engine/index';
import type { TableData } from '../frame/figures';
import { type Grid, gridNow, gridReadings, placeTexts, thinnedSentence } from '../frame/grid';
import { limitsOn, withinSentence } from '../frame/grid-limits';
import type { Drawn } from '../frame/kind';
import { limitNotes } from '../frame/limit-words';
import { passedNamed } from '../frame/limits';
import { numberText } from '../frame/measure';
import { missingSentence } from '../frame/missing-words';
import { heldNote, outsideNote, unaskedNotes } from '../frame/notes';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { inSentence } from '../frame/words';
import type { ContourLayout } from './layout';

type Contour = Drawn<SweepChartProps, Grid, ContourLayout>;

export function contourReadings({ of, data: grid, chart }: Contour): ReadSeries[] {
  const { field, box, spots } = chart.panels[0]!;
  const limits = limitsOn(grid, of);
  const place = (r: number, c: number) => ({ x: field.x[c]!, y: field.y[r]! });
  return gridReadings(grid, grid.family.panels[0]!, field.values, place, {
    plot: box,
    now: gridNow(of.cell, of, grid.family.panels[0]!, spots),
    passed: (r, c) => limits.flatMap(({ zone, values }) => passedNamed(zone, values[r]![c]!)),
  });
}

export function contourTable({ data: grid, chart }: Contour): TableData {
  const { values } = chart.panels[0]!.field;
  return {
    head: [
      [
        { text: grid.along.title, rows: 2 },
        {
          text: `${grid.family.panels[0]!.title}, at ${inSentence(grid.family.across.title)}`,
          columns: grid.columns.length,
        },
      ],
      grid.columns.map((column) => ({ text: formatNumber(column.shown) })),
    ],
    rows: grid.rows.map((row, r) => ({
      head: formatNumber(row.shown),
      cells: grid.columns.map((_, c) => {
        const value = values[r]![c]!;
        return Number.isNaN(value) ? '–' : formatNumber(value);
      }),
    })),
  };
}

export function contourSentences(contour: Contour): string[] {
  const { of, data: grid, chart } = contour;
  const panel = grid.family.panels[0]!;
  const [unasked] = unaskedNotes([panel]);
  if (unasked) return [unasked];
  const zones = chart.panels[0]!.regions.map(({ zone, words }) => ({ zone, words, along: 'up' as const }));
  return [
    extremes(contour),
    withinSentence(of, grid),
    thinnedSentence(grid, of),
    ...limitNotes([{ zones, outside: [] }]),
    heldNote(grid.family.held),
    outsideNote([grid.now], chart.panels),
    missingSentence(of.progress),
  ];
}

/** "Line pull runs from 20.1 N (line length 21.5 m, tip weight 0 g) to 31 N (…)." */
function extremes({ data: grid, chart }: Contour): string {
  const { info } = grid.family.panels[0]!;
  const all = chart.panels[0]!.field.values.flatMap((row, r) => row.map((value, c) => ({ value, r, c }))).filter(
    (e) => !Number.isNaN(e.value),
  );
  if (all.length < 2) return '';
  const least = all.reduce((a, b) => (b.value < a.value ? b : a));
  const most = all.reduce((a, b) => (b.value > a.value ? b : a));
  const end = ({ value, r, c }: typeof least): string =>
    `${numberText(info, value)} (${placeTexts(grid, r, c).map(inSentence).join(', ')})`;
  return `${info.title} runs from ${end(least)} to ${end(most)}.`;
}

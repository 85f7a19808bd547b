import { type Grid, gridNow, gridReadings, thinnedSentence } from '../frame/grid';
import { withinSentence } from '../frame/grid-limits';
import type { Drawn } from '../frame/kind';
import { limitNotes } from '../frame/limit-words';
import { passedWords } from '../frame/limits';
import { missingSentence } from '../frame/missing-words';
import { heldNote, outsideNote, unaskedNotes } from '../frame/notes';
import type { SweepChartProps } from '../frame/props';
import type { ReadSeries } from '../frame/readings';
import { slopeSentence, spanSentence } from '../frame/slope-words';
import type { CarpetLayout } from './layout';

type Carpet = Drawn<SweepChartProps, Grid, CarpetLayout>;

export const carpetReadings = ({ of, data: grid, chart }: Carpet): ReadSeries[] =>
  chart.panels.flatMap(({ panel, placed, values, box, zones, outside, spots }) =>
    gridReadings(grid, panel, values, (r, c) => placed[r]![c]!, {
      plot: box,
      now: gridNow(of.cell, of, panel, spots),
      passed: (r, c) => passedWords([...zones.map(({ zone }) => zone), ...outside], values[r]![c]!),
    }).map((series): ReadSeries => ({ ...series, upOnly: true })),
  );

export function carpetSentences({ of, data: grid, chart }: Carpet): string[] {
  const { family } = grid;
  const nowX = of.values[of.names.get(of.cell.across)?.slot ?? -1];
  return [
    'Every crossing is one design; its height is read on the scale at the left.',
    slopeSentence(family, of.progress, nowX) || spanSentence(family, of.progress),
    withinSentence(of, grid),
    thinnedSentence(grid, of),
    ...limitNotes(chart.panels),
    ...unaskedNotes(family.panels),
    heldNote(family.held),
    outsideNote(
      family.panels.map(({ now }) => now),
      chart.panels,
    ),
    missingSentence(of.progress),
  ];
}

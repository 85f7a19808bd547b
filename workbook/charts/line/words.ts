import { formatNumber } from '../../../engine/index';
import type { Family, Panel } from '../frame/family';
import type { TableData } from '../frame/figures';
import type { Drawn } from '../frame/kind';
import { limitNotes, limitSentences } from '../frame/limit-words';
import { passedWords, zonesOf } from '../frame/limits';
import { type Measure, sampleAt } from '../frame/measure';
import { missingSentence } from '../frame/missing-words';
import { heldNote, outsideNote, unaskedNotes } from '../frame/notes';
import type { SweepChartProps } from '../frame/props';
import type { Reading, ReadSeries } from '../frame/readings';
import { slopeSentence, spanSentence } from '../frame/slope-words';
import type { LineLayout, LinePanel } from './layout';
import { sharedLimitSentences } from './shared-limits';

/** What to see in the chart, computed from it. */
export function lineSentences({ of, data: family, chart }: Drawn<SweepChartProps, Family, LineLayout>): string[] {
  const { progress, names, values, cell } = of;
  const nowX = values[names.get(cell.across)?.slot ?? -1];
  const told = [
    slopeSentence(family, progress, nowX),
    ...limitSentences(family, of),
    ...sharedLimitSentences(family, of),
  ];
  return [
    ...(told.some((sentence) => sentence !== '') ? told : [spanSentence(family, progress)]),
    ...limitNotes(chart.panels),
    ...unaskedNotes(family.panels),
    heldNote(family.held),
    outsideNote(
      family.panels.map(({ now }) => now),
      chart.panels,
    ),
    missingSentence(progress),
  ];
}

/** "Engine station −150 mm". */
const measured = (of: Measure, si: number): string => `${of.info.title} ${of.text(si)}`;

/** What stands across at one place of the family: a number with its unit, or the option. */
const acrossText = (family: Family, k: number): string => {
  const value = family.acrossValues[k]!;
  const option = family.options?.[value];
  return option === undefined ? measured(family.across, value) : option;
};

/** Every answered point of every line, panel by panel; the present design on its line, or by itself. */
export function lineReadings({ of, data: family, chart }: Drawn<SweepChartProps, Family, LineLayout>): ReadSeries[] {
  const { progress, checks, names, values } = of;
  return chart.panels.flatMap((drawn) =>
    family.panels
      .filter(({ path }) => drawn.panel.shows.includes(path))
      .flatMap((panel) => {
        const zones = zonesOf(panel, checks, names, values);
        const now = nowReading(of, family, panel, drawn);
        const onLine = family.lines.some(({ present }) => present);
        const series = family.lines.map((line): ReadSeries => {
          const points = line.samples.flatMap((sample, k): Reading[] => {
            const value = panel.column && sampleAt(progress, panel.column, sample);
            if (typeof value !== 'number') return [];
            const shown = panel.shown(value);
            const at = { x: chart.x(family.across.shown(family.acrossValues[k]!)), y: drawn.y(shown) };
            return [
              { at, sample, lines: [acrossText(family, k), measured(panel, value), ...passedWords(zones, shown)] },
            ];
          });
          return { name: line.label, plot: drawn.box, points: line.present && now ? between(points, now) : points };
        });
        return onLine || !now ? series : [...series, { name: '', plot: drawn.box, points: [now] }];
      }),
  );
}

/** The present design on one panel; undefined where it lies outside. */
function nowReading(
  { checks, names, values }: SweepChartProps,
  family: Family,
  panel: Panel,
  drawn: LinePanel,
): Reading | undefined {
  const spot = drawn.spots.find(({ kind, of }) => kind === 'now' && of === panel.path);
  const across = names.get(family.across.path);
  const [x, y] = [values[across?.slot ?? -1], values[panel.info.slot]];
  if (!spot || x === undefined || y === undefined) return undefined;
  const where = family.options?.[x] ?? measured(family.across, x);
  const passed = passedWords(zonesOf(panel, checks, names, values), panel.shown(y));
  return { at: spot.at, lines: ['Now', where, measured(panel, y), ...passed] };
}

/** Puts a reading among those of its line, from left to right; one at the same place gives way. */
function between(points: readonly Reading[], now: Reading): readonly Reading[] {
  const others = points.filter(({ at }) => Math.hypot(at.x - now.at.x, at.y - now.at.y) > SAME_PLACE);
  const after = others.filter(({ at }) => at.x > now.at.x);
  return [...others.slice(0, others.length - after.length), now, ...after];
}
/** Pixels within which two readings are one. */
const SAME_PLACE = 1;

/** One row for each value across, one column for each line of each panel. */
export function lineTable(family: Family, { progress }: Pick<SweepChartProps, 'progress'>): TableData {
  const named = family.lines.some((line) => line.label !== '');
  const columns = family.panels.flatMap((panel) => family.lines.map((line) => ({ panel, line })));
  return {
    head: [
      [
        { text: family.across.title, rows: named ? 2 : 1 },
        ...family.panels.map((panel) => ({ text: panel.title, columns: family.lines.length })),
      ],
      ...(named ? [columns.map(({ line }) => ({ text: line.label }))] : []),
    ],
    rows: Array.from(family.acrossValues, (value, k) => ({
      head: family.options?.[value] ?? formatNumber(family.across.shown(value)),
      cells: columns.map(({ panel, line }) => figure(panel, progress, line.samples[k]!)),
    })),
  };
}

/** An empty place where nothing is computed yet, a dash where there is no answer. */
function figure(panel: Panel, progress: SweepChartProps['progress'], sample: number): string {
  const value = panel.column && sampleAt(progress, panel.column, sample);
  if (value === undefined) return '';
  return value === 'gap' ? '–' : formatNumber(panel.shown(value));
}

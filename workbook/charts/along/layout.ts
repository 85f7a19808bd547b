import { fromSI, type TraceAnswer, type TraceColumn } from '../../../engine/index';
import { quantityText } from '../../drawing/index';
import type { Spot } from '../frame/family';
import { titleWithUnit } from '../frame/measure';
import type { TraceChartProps } from '../frame/props';
import { variantText } from '../frame/spots';
import { limitsOfColumn } from '../frame/trace-limits';
import { inSentence } from '../frame/words';
import { byUnit, type Plot, type PlotMark, type PlotPanel, titlesOf } from '../line/plot';

/** A column of a trace as a chart reads it. */
export interface AlongColumn {
  readonly info: TraceColumn;
  readonly index: number;
  /** With unit. */
  readonly title: string;
}
/** What runs along and what is read against it. */
export interface Along {
  readonly across: AlongColumn;
  readonly shown: readonly AlongColumn[];
}

const columnAt = (trace: TraceAnswer, index: number): AlongColumn => {
  const info = trace.columns[index]!;
  return { info, index, title: titleWithUnit(info) };
};

/** Reads the columns that the chart asks for; a sentence where there are none. The first column is across unless another one is named. */
export function readAlong({ trace, cell }: TraceChartProps): Along | string {
  if (trace.columns.length === 0) return trace.message ?? `There is nothing called ${cell.of} to draw.`;
  const find = (name: string): number => trace.columns.findIndex((each) => each.name === name);
  const across = cell.across === '' ? 0 : find(cell.across);
  const shown = cell.up.map(find).filter((index) => index >= 0 && index !== across);
  if (across < 0 || shown.length === 0) {
    const names = trace.columns.map(({ title }) => inSentence(title)).join(', ');
    const wrong = across < 0 ? cell.across : (cell.up[0] ?? '');
    return `${trace.title} does not tell “${wrong}”. It tells ${names}. Choose one of these.`;
  }
  if (trace.present.length === 0) return trace.message ?? `${trace.title} has nothing to show for this design.`;
  return { across: columnAt(trace, across), shown: shown.map((index) => columnAt(trace, index)) };
}

const numbersOf = (arrays: TraceAnswer['present'] | undefined, { index, info }: AlongColumn): number[] =>
  Array.from(arrays?.[index] ?? [], (si) => fromSI(si, info.unit));

/** What the chart draws: quantities of one unit stand together, the others above each other. */
export function plotAlong({ across, shown }: Along, props: TraceChartProps): Plot {
  const { present, baseline } = props.trace;
  const places = { present: numbersOf(present, across), baseline: numbersOf(baseline, across) };
  const points = (of: 'present' | 'baseline', column: AlongColumn): Spot[] => {
    const values = numbersOf(props.trace[of], column);
    return places[of].flatMap((x, k) => (Number.isFinite(x) ? [{ x, y: values[k] ?? Number.NaN }] : []));
  };
  const others = (props.others ?? []).flatMap(({ name, trace }, order) => {
    if (!trace || trace.length === 0) return [];
    const at = numbersOf(trace, across);
    const spots = (column: AlongColumn): Spot[] => {
      const values = numbersOf(trace, column);
      return at.flatMap((x, k) => (Number.isFinite(x) ? [{ x, y: values[k] ?? Number.NaN }] : []));
    };
    return [{ order, name, at, spots }];
  });
  return {
    acrossTitle: across.title,
    across: [...places.present, ...places.baseline, ...others.flatMap(({ at }) => at)],
    panels: byUnit(shown).map((columns): PlotPanel => {
      const { title, labels } = titlesOf(columns);
      const names = columns.map(({ info }) => info.name);
      const ghosts = baseline ? columns.filter((column) => !isSame(props.trace, [across, column])) : [];
      return {
        path: names.join(' '),
        shows: names,
        title,
        lines: columns.map((column, k) => ({
          key: column.info.name,
          label: labels[k]!,
          points: points('present', column),
        })),
        ghosts: [
          ...ghosts.map((column) => ({ points: points('baseline', column) })),
          ...others.flatMap(({ order, spots }) => columns.map((column) => ({ order, points: spots(column) }))),
        ],
        marks: others.flatMap(({ order, name, spots }) =>
          columns.flatMap((column): PlotMark[] => {
            const at = spots(column).findLast(({ y }) => Number.isFinite(y));
            const of = column.info.name;
            return at ? [{ kind: 'variant', order, of, at, text: variantText(name, at.y) }] : [];
          }),
        ),
        zones: columns.length === 0 ? [] : limitsOfColumn(columns[0]!.info, props),
      };
    }),
  };
}

/** The baseline says the same as the present design. */
const isSame = ({ present, baseline }: TraceAnswer, columns: readonly AlongColumn[]): boolean =>
  columns.every(({ index }) => {
    const [now, then] = [present[index]!, baseline?.[index]];
    return then !== undefined && now.length === then.length && now.every((value, k) => Object.is(value, then[k]));
  });

/** A value of a column as people read it. */
export const alongText = ({ info }: AlongColumn, si: number): string =>
  Number.isFinite(si) ? quantityText(info, si) : '–';

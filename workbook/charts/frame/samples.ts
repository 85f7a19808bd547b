import { designAt } from './design-at';
import { type Measure, measure } from './measure';
import type { SweepChartProps } from './props';

/** One result of a sweep, sample by sample, in the unit in which it is shown; NaN where it has no answer or is not computed. */
export interface SampleColumn extends Measure {
  readonly values: readonly number[];
  readonly now: number;
  readonly baseline: number;
  /** Variants, in their order. */
  readonly others: readonly number[];
  /** Missing: the sweep was not asked for it. */
  readonly column: Float64Array | undefined;
}

/** Undefined where there is no such result. */
export function samplesOf(props: SweepChartProps, path: string): SampleColumn | undefined {
  const { progress, names, values, baseline } = props;
  const info = names.get(path);
  if (!info) return undefined;
  const of = measure(info);
  const column = progress.columns[progress.wanted.indexOf(path)];
  const shown = Array.from(column ?? [], (si, sample) => (progress.why[sample] === 0 ? of.shown(si) : Number.NaN));
  const at = (design: Float64Array | undefined): number => of.shown(design?.[info.slot] ?? Number.NaN);
  const others = (props.others ?? []).map((other) => at(other.values));
  return { ...of, values: shown, now: at(values), baseline: at(baseline), others, column };
}

/** Place along one axis of every sample; the last axis runs fastest. */
export function placesAlong({ progress }: SweepChartProps, path: string): number[] | undefined {
  const axis = progress.axes.findIndex((each) => each.path === path);
  if (axis < 0) return undefined;
  const stride = progress.axes.slice(axis + 1).reduce((n, each) => n * each.values.length, 1);
  const count = progress.axes[axis]!.values.length;
  return Array.from({ length: progress.total }, (_, sample) => Math.floor(sample / stride) % count);
}

/** Where every axis of the sweep stands for one sample, as people read it. */
export function designText(props: SweepChartProps, sample: number): string[] {
  const { progress, names, optionTitle, designOf = (at: number) => designAt(progress, at) } = props;
  if (progress.spread) return differingTexts({ progress, names }, sample);
  return designOf(sample).flatMap(({ path, si }) => {
    const info = names.get(path);
    if (!info) return [];
    const option = info.options?.[si];
    const text =
      option === undefined ? measure(info).text(si) : (optionTitle?.(path, option) ?? option.replaceAll('_', ' '));
    return [`${info.title} ${text}`];
  });
}

/** Things that differ, of which a design is told. */
const MOST_TOLD = 5;

/** What of a design of a spread differs, behind its results. */
function differingTexts({ progress, names }: Pick<SweepChartProps, 'progress' | 'names'>, sample: number): string[] {
  const { wanted, columns, spread } = progress;
  const results = spread?.results.length ?? 0;
  return wanted.slice(results, results + MOST_TOLD).flatMap((path, k) => {
    const info = names.get(path);
    return info ? [`${info.title} ${measure(info).text(columns[results + k]![sample]!)}`] : [];
  });
}

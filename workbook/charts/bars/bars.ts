import type { NameInfo, SweepProgress } from '../../../engine/index';
import { valueAt } from '../../drawing/index';
import { type Family, readFamily } from '../frame/family';
import { type Measure, measure, sampleAt } from '../frame/measure';
import type { PartsChartProps, SweepChartProps } from '../frame/props';
import { capital } from '../frame/words';

/** One bar; its number is SI. */
export interface Bar {
  readonly key: string;
  /** What tells it apart within its group; '' where it is alone. */
  readonly label: string;
  readonly si: number;
  /** Standard error of the number, where it is known. */
  readonly error?: number;
  /** What stands at its end instead of its number and label. */
  readonly text?: string;
  /** Place in the order of styles. */
  readonly style: number;
  readonly present: boolean;
  /** Of a trial series: its sample. */
  readonly sample?: number;
}
/** Bars that stand together under one name. */
export interface BarGroup {
  readonly key: string;
  readonly label: string;
  readonly bars: readonly Bar[];
  /** SI value of the baseline, NaN where there is none. */
  readonly baseline: number;
  /** SI values of the variants on the chart, in their order; NaN where one has none. */
  readonly others?: readonly number[];
  /** Bars that go opposite ways share a line. */
  readonly opposed?: true;
}
export interface BarPanel extends Measure {
  /** Greatest number that there can be, as it is shown. */
  readonly most?: number;
  readonly groups: readonly BarGroup[];
  /** Where it is of a sweep: its samples; missing where the sweep was not asked for it. */
  readonly column?: Float64Array | undefined;
}
export interface BarData {
  /** The sweep that it is of, where it is of one. */
  readonly across?: Family;
  readonly panels: readonly BarPanel[];
  /** What the groups are: "Tail stock", "Part". */
  readonly of: string;
  readonly held: readonly string[];
  /** Rows of a table without an answer, and of how many. */
  readonly missing: number;
  readonly total: number;
}

/** Bars of a sweep: a group for each value across, a bar for each line; a sentence where the chart asks for what isn't there. */
export function barsOfSweep(props: SweepChartProps): BarData | string {
  const family = readFamily(props);
  if (typeof family === 'string') return family;
  const { progress, ghost, cell, names, values } = props;
  const now = valueAt(cell.across, names, values);
  const panels = family.panels.map((panel): BarPanel => {
    const ghostColumn =
      ghost?.axes[0]?.path === cell.across ? ghost.columns[ghost.wanted.indexOf(panel.path)] : undefined;
    const groups = Array.from(family.acrossValues, (across, k): BarGroup => {
      const bars = family.lines.flatMap((line, style): Bar[] => {
        const sample = line.samples[k]!;
        const si = panel.column && sampleAt(progress, panel.column, sample);
        const present = line.present && now !== undefined && Math.abs(now - across) <= 1e-9 * Math.abs(across);
        return typeof si === 'number' ? [{ key: line.key, label: line.label, si, style, present, sample }] : [];
      });
      const then = ghost && ghostColumn && sampleAt(ghost, ghostColumn, k);
      const others = (props.others ?? []).map(({ ghost: own }) => valueIn(own, cell.across, panel.path, k));
      return {
        key: String(across),
        label: family.options?.[across] ?? family.across.text(across),
        bars,
        baseline: typeof then === 'number' ? then : Number.NaN,
        others,
      };
    });
    return { ...panel, groups };
  });
  return { across: family, panels, of: family.across.title, held: family.held, missing: 0, total: 0 };
}

/** Result of a variant at one place across. */
function valueIn(own: SweepProgress | undefined, across: string, path: string, k: number): number {
  const column = own?.axes[0]?.path === across ? own.columns[own.wanted.indexOf(path)] : undefined;
  const value = own && column && sampleAt(own, column, k);
  return typeof value === 'number' ? value : Number.NaN;
}

/** Bars of every part, the greatest first. */
export function barsOfParts({ parts, cell, names, values, baseline, others = [] }: PartsChartProps): BarData | string {
  let missing = 0;
  const panels = cell.up.flatMap((name): BarPanel[] => {
    const infos = parts.rows.map((row) => names.get(`${parts.name}.${row.name}.${name}`));
    const first = infos.find((info) => info !== undefined);
    if (!first) return [];
    const groups = parts.rows.flatMap((row, k): BarGroup[] => {
      const info = infos[k];
      const si = info && values[info.slot];
      if (si === undefined || !Number.isFinite(si)) {
        missing += 1 / cell.up.length;
        return [];
      }
      const bars = [{ key: row.name, label: '', si, style: 0, present: false }];
      const then = baseline?.[info!.slot] ?? Number.NaN;
      const own = others.map((other) => other.values[info!.slot] ?? Number.NaN);
      return [{ key: row.name, label: row.title, bars, baseline: then, others: own }];
    });
    groups.sort((a, b) => Math.abs(b.bars[0]!.si) - Math.abs(a.bars[0]!.si));
    return [{ ...measure({ ...first, title: titleOf(first) }), path: `${parts.name}.${name}`, groups }];
  });
  if (panels.length === 0) return `${parts.title} has no parts yet. Add one there.`;
  return { panels, of: 'Part', held: [], missing: Math.round(missing), total: parts.rows.length };
}

/** "Spinner: moment about the CG" is about the CG for every part; the mass of a part is called by the part's own name. */
function titleOf({ title, path }: NameInfo): string {
  const colon = title.lastIndexOf(': ');
  return colon < 0 || path.endsWith('.mass') ? 'Mass' : capital(title.slice(colon + 2));
}

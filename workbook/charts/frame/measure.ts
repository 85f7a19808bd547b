import {
  bound,
  formatNumber,
  fromSI,
  type NameInfo,
  NOT_COMPUTED,
  type SweepProgress,
  withWay,
} from '../../../engine/index';
import { valueText } from '../../drawing/index';
import { capital } from './words';

/** A quantity as an axis shows it. */
export interface Measure {
  readonly path: string;
  readonly info: NameInfo;
  /** Title with unit. */
  readonly title: string;
  /** SI value → number on the axis. */
  shown(si: number): number;
  /** SI value as people read it, with its unit. */
  text(si: number): string;
}

interface Shown {
  readonly title: string;
  readonly unit: string;
  readonly suffix: string;
  readonly ways?: NameInfo['ways'];
}

/** "Line pull, N", "Nose angle (out +), °". */
export function titleWithUnit({ title, unit, suffix, ways }: Shown): string {
  const signed = ways ? `${title} (${ways[0]} +)` : title;
  return capital(suffix || unit ? `${signed}, ${suffix || unit}` : signed);
}

/** A number of an axis with its unit: "26 N". */
export function numberText({ unit, suffix, ways }: Omit<Shown, 'title'>, shown: number): string {
  const size = formatNumber(ways ? Math.abs(shown) : shown);
  const said = suffix || unit ? bound(size, suffix || unit) : size;
  return ways ? withWay(said, shown, ways) : said;
}

/** "24 to 26 N", "0.3° in to 0.4° out". */
export const rangeText = (info: Omit<Shown, 'title'>, from: number, to: number): string =>
  `${info.ways ? numberText(info, from) : formatNumber(from)} to ${numberText(info, to)}`;

export const measure = (info: NameInfo): Measure => ({
  path: info.path,
  info,
  title: titleWithUnit(info),
  shown: (si) => fromSI(si, info.unit),
  text: (si) => valueText(info, si),
});

/** SI value of a sample, `gap` where it has no answer, undefined where it is not computed yet. */
export function sampleAt(progress: SweepProgress, column: Float64Array, sample: number): number | 'gap' | undefined {
  const why = progress.why[sample];
  if (why === undefined || why === NOT_COMPUTED) return undefined;
  const value = column[sample];
  return why !== 0 || value === undefined || !Number.isFinite(value) ? 'gap' : value;
}

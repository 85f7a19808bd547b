import type { NameInfo } from '../../../engine/index';
import type { BarData, BarGroup, BarPanel } from '../bars/bars';
import { measure } from '../frame/measure';
import type { SweepChartProps } from '../frame/props';
import { factorTitle, orderOf } from '../frame/spread-words';
import { inSentence } from '../frame/words';

/** Things that are drawn one by one; what is left of them is counted. */
const MOST_FACTORS = 10;

export interface ShareData extends BarData {
  /** Things that aren't drawn, and what they make together at most. */
  readonly rest: number;
}

/** Bars of what each thing that differs makes of the variance, by itself and with all others; a sentence where there is none. */
export function sharesOf({ progress, cell, names }: SweepChartProps): ShareData | string {
  const { spread } = progress;
  if (!spread) return 'Shares are of tolerances. Choose some for the chart.';
  let rest = 0;
  const panels = cell.up.flatMap((path): BarPanel[] => {
    const info = names.get(path);
    const result = spread.results.find((each) => each.path === path);
    if (!info || !result) return [];
    const order = result.total.every(Number.isFinite) ? orderOf(result) : [];
    rest = Math.max(rest, order.length - MOST_FACTORS);
    const groups = order.slice(0, MOST_FACTORS).map((k): BarGroup => {
      const factor = spread.factors[k]!;
      const key = `${factor.what} ${factor.path}`;
      return {
        key,
        label: factorTitle(factor, names),
        bars: [
          {
            key: `${key} alone`,
            label: 'alone',
            si: result.first[k]!,
            error: result.firstError[k]!,
            style: 0,
            present: false,
          },
          {
            key: `${key} all`,
            label: 'with the others',
            si: result.total[k]!,
            error: result.totalError[k]!,
            style: 1,
            present: false,
          },
        ],
        baseline: Number.NaN,
      };
    });
    return [{ ...measure(shareInfo(info)), groups, most: 100 }];
  });
  if (panels.every(({ groups }) => groups.length === 0)) return 'The shares come when enough designs are computed.';
  return { panels, of: 'What differs', held: [], missing: 0, total: 0, rest };
}

/** A share has no limits of its own, whatever is watched of the result. */
const shareInfo = (info: NameInfo): NameInfo => ({
  ...info,
  path: `${info.path}#share`,
  title: `Share of the variance of ${inSentence(info.title)}`,
  unit: '%',
  suffix: '',
});

import type { BarLayout } from '../bars/layout';
import type { Drawn } from '../frame/kind';
import type { SweepChartProps } from '../frame/props';
import { causesSentence, sharesSentence } from '../frame/spread-words';
import type { ShareData } from './layout';

export function shareSentences({ of, data: { rest } }: Drawn<SweepChartProps, ShareData, BarLayout>): string[] {
  const { cell, names } = of;
  const spread = of.progress.spread!;
  const results = cell.up.flatMap((path) => spread.results.find((each) => each.path === path) ?? []);
  return [
    ...results.map((result) => sharesSentence(spread, result, names)),
    'Shares are of the variance, with one standard error.',
    rest > 0 ? `${rest} smaller causes not shown.` : '',
    causesSentence(spread),
  ];
}

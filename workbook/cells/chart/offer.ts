import { type ChartCell, cellsOf, type Document } from '../../../engine/index';
import { type Contents, cellOf, type Offer } from '../shared/new-cell';

/** Shows the last sweep of the sheet, else its last spread, where it has one. */
function newChart(document: Document): Contents<ChartCell> {
  const sweep = cellsOf(document).findLast((cell) => cell.kind === 'trial_series');
  const spread = cellsOf(document).findLast((cell) => cell.kind === 'tolerances');
  if (!sweep && spread) {
    const up = spread.wanted.slice(0, 1);
    return { kind: 'chart', chart: 'histogram', series: spread.name, across: '', up, lines: '' };
  }
  const across = sweep?.axes.at(-1)?.of ?? '';
  const lines = sweep?.axes.find((axis) => axis.of !== across)?.of ?? '';
  return {
    kind: 'chart',
    chart: 'line',
    series: sweep?.name ?? '',
    across,
    up: sweep?.wanted.slice(0, 1) ?? [],
    lines,
  };
}

export const chartOffers: readonly Offer[] = [
  {
    key: 'chart',
    word: 'Chart',
    about: 'A picture of a trial series, of tolerances or of the parts.',
    make: (document) => cellOf(document, 'new_chart', 'New chart', newChart(document)),
  },
];

import { effect } from '@preact/signals';
import { type Cell, chartSource } from '../../../engine/index';
import { fetchChart, fetchLeverPicture } from '../../charts/index';
import { fetchPicture } from '../../pictures/index';
import { printed } from '../../store/printing';
import type { Sheet } from '../../store/sheet';

/**
 * Asks for what the sheet to be printed draws, on the screen or not, folded or not: a browser that prints of its own accord
 * doesn't wait for it.
 */
export function watchBeforePaper(sheet: Sheet): void {
  effect(() => {
    const sheets = printed.value === 'set' ? sheet.part('sheets') : [sheet.shownSheet.value];
    for (const piece of sheets.flatMap(({ pieces }) => pieces)) askFor(piece, sheet);
  });
}

function askFor(piece: Cell, { sweeps, traces }: Pick<Sheet, 'sweeps' | 'traces'>): void {
  const sampled = (name: string): void => {
    if (name !== '') sweeps.watch(name)();
  };
  switch (piece.kind) {
    case 'chart':
      void fetchChart(piece.chart);
      if (chartSource(piece) === 'sweep') sampled(piece.series);
      if (chartSource(piece) === 'trace' && piece.of) traces.watch(piece.of)();
      return;
    case 'what_helps':
      void fetchLeverPicture();
      sampled(piece.name);
      return;
    case 'trial_series':
    case 'tolerances':
      sampled(piece.name);
      return;
    case 'table':
      sampled(piece.series);
      return;
    case 'model': {
      const trace = fetchPicture(piece.of);
      if (trace !== undefined) traces.watch(`${piece.name}.${trace}`)();
      return;
    }
    default:
  }
}

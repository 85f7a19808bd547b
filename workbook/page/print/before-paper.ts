import { computed, effect, untracked } from '@preact/signals';
import { type Cell, chartSource } from '../../../engine/index';
import { fetchBestPicture, fetchChart, fetchGuessPicture, fetchLeverPicture } from '../../charts/index';
import { fetchPicture } from '../../pictures/index';
import type { Sheet } from '../../store/sheet';

/**
 * Asks for what the open sheet draws, on the screen or not, folded or not: a browser that prints of its own accord doesn't
 * wait for it.
 */
export function watchBeforePaper(sheet: Sheet): void {
  // Each edit makes the sheet another one; what it draws stays the same mostly.
  const drawn = computed(() => JSON.stringify(sheet.shownSheet.value.pieces.flatMap(drawnOf)));
  // In a task of its own: the page itself comes first.
  setTimeout(() =>
    effect(() => {
      const asks = JSON.parse(drawn.value) as Drawn[];
      untracked(() => {
        for (const { sweep, trace } of asks) {
          if (sweep) sheet.sweeps.watch(sweep)();
          if (trace) sheet.traces.watch(trace)();
        }
      });
    }),
  );
}

/** What a piece is drawn from. */
interface Drawn {
  readonly sweep?: string | undefined;
  readonly trace?: string | undefined;
}

/** Brings what draws a piece, and says what that needs. */
function drawnOf(piece: Cell): Drawn[] {
  switch (piece.kind) {
    case 'chart':
      void fetchChart(piece.chart);
      if (chartSource(piece) === 'sweep') return [{ sweep: piece.series }];
      return chartSource(piece) === 'trace' ? [{ trace: piece.of }] : [];
    case 'what_helps':
      void fetchLeverPicture();
      return [{ sweep: piece.name }];
    case 'best_compromises':
      void fetchBestPicture();
      return [];
    case 'guess':
      void fetchGuessPicture();
      return piece.way === 'line' ? [{ sweep: piece.series }] : [];
    case 'trial_series':
    case 'tolerances':
    case 'variants':
      return [{ sweep: piece.name }];
    case 'table':
      return [{ sweep: piece.series }];
    case 'model': {
      const trace = fetchPicture(piece.of);
      return trace === undefined ? [] : [{ trace: `${piece.name}.${trace}` }];
    }
    default:
      return [];
  }
}

import { signal } from '@preact/signals';

/** The sheet is being printed: what is folded on the screen stands whole on paper. */
export const printing = signal(false);

/** Keeps `printing` true while the window is laid out for paper. */
export function watchPrinting(): void {
  const query = window.matchMedia('print');
  query.addEventListener('change', () => {
    printing.value = query.matches;
  });
  window.addEventListener('beforeprint', () => {
    printing.value = true;
  });
  window.addEventListener('afterprint', () => {
    printing.value = query.matches;
  });
}

import { type ReadonlySignal, signal } from '@preact/signals';

/** Widest window that is laid out as a phone, px; the style sheet says the same. */
const PHONE = 760;

/** Whether the window is as narrow as a phone's, kept up to date. */
export function watchNarrow(): ReadonlySignal<boolean> {
  const query = window.matchMedia(`screen and (max-width: ${PHONE}px)`);
  const narrow = signal(query.matches);
  query.addEventListener('change', (event) => {
    narrow.value = event.matches;
  });
  return narrow;
}

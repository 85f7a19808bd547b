import { type ReadonlySignal, signal } from '@preact/signals';

/** How much room a window gives: a phone's, one column of pieces, or two beside the list of sheets. */
export type Room = 'phone' | 'column' | 'wide';

/** Widest window that is laid out as a phone and narrowest with two columns, px; the style sheets say the same. */
const PHONE = 760;
const WIDE = 1500;

/** The room of the window, kept up to date. Paper has a column of its own. */
export function watchRoom(): ReadonlySignal<Room> {
  const phone = window.matchMedia(`screen and (max-width: ${PHONE}px)`);
  const wide = window.matchMedia(`screen and (min-width: ${WIDE}px)`);
  const now = (): Room => (phone.matches ? 'phone' : wide.matches ? 'wide' : 'column');
  const room = signal(now());
  for (const query of [phone, wide]) {
    query.addEventListener('change', () => {
      room.value = now();
    });
  }
  return room;
}

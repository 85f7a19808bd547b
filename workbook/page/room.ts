import { effect, type ReadonlySignal, signal } from '@preact/signals';
import { printing } from '../store/printing';

/** How much room a window gives: a phone's, one column of pieces, or two beside the list of sheets. */
export type Room = 'phone' | 'column' | 'wide';

/** Widest window that is laid out as a phone and narrowest with two columns, px; the style sheets say the same. */
const PHONE = 760;
const WIDE = 1500;

/** The room of the window, kept up to date. While it is laid out for paper it stays: a new layout then would come too late. */
export function watchRoom(): ReadonlySignal<Room> {
  const phone = window.matchMedia(`screen and (max-width: ${PHONE}px)`);
  const wide = window.matchMedia(`screen and (min-width: ${WIDE}px)`);
  const now = (): Room => (phone.matches ? 'phone' : wide.matches ? 'wide' : 'column');
  const room = signal(now());
  const follow = (): void => {
    if (!printing.value) room.value = now();
  };
  for (const query of [phone, wide]) query.addEventListener('change', follow);
  effect(follow);
  return room;
}

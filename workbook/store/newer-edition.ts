import { type Signal, signal } from '@preact/signals';
import { NEWER } from '../newer-edition';

/** A newer edition of the page is there and waits until this one is opened again. */
export const newerWaits: Signal<boolean> = signal(false);

/** Follows what is told by what keeps the page on this machine. */
export function watchNewer(page: Pick<Window, 'addEventListener'>): void {
  page.addEventListener(NEWER, () => {
    newerWaits.value = true;
  });
}

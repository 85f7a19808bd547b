import { type ReadonlySignal, signal } from '@preact/signals';
import type { Place } from './places';

/** Where the reader is, and how it came to that. */
export interface Going {
  readonly place: Place;
  /** Back or forward to a place that was left there, px; missing: to the place itself. */
  readonly y?: number | undefined;
  /** The page has just opened: nobody has pressed anything yet. */
  readonly first: boolean;
}

/** How long the page has to rest before it's kept where it stands, ms. */
const REST = 120;

const leftY = (state: unknown): number | undefined => {
  const y = (state as { readonly y?: unknown } | null)?.y;
  return typeof y === 'number' ? y : undefined;
};

/** Follows the address. Each place keeps how far it was scrolled, since a chapter is drawn anew when somebody goes back to it. */
export function watchAddress(find: (hash: string) => Place): ReadonlySignal<Going> {
  history.scrollRestoration = 'manual';
  const going = signal<Going>({ place: find(location.hash), y: leftY(history.state), first: true });
  let resting: ReturnType<typeof setTimeout> | undefined;
  let back: number | undefined;
  window.addEventListener('popstate', ({ state }) => {
    back = leftY(state);
  });
  window.addEventListener('hashchange', () => {
    clearTimeout(resting);
    going.value = { place: find(location.hash), y: back, first: false };
    back = undefined;
  });
  window.addEventListener(
    'scroll',
    () => {
      clearTimeout(resting);
      resting = setTimeout(() => history.replaceState({ y: window.scrollY }, ''), REST);
    },
    { passive: true },
  );
  return going;
}

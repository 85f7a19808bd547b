import type { Sheet } from '../store/sheet';

/** What is being typed or dragged becomes an edit, and is kept, when the page is left or put behind another. */
export function watchLeaving(sheet: Pick<Sheet, 'settle'>): void {
  window.addEventListener('pagehide', sheet.settle);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') sheet.settle();
  });
}

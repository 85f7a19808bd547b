import type { Keeper } from '../../store/keep/index';
import { settleAndRemember, takeUpWhatWasLeft } from '../../store/left-behind';
import type { Sheet } from '../../store/sheet';

/** What is being typed or dragged becomes an edit when the page is left or put behind another, and is there when it comes back. */
export function watchLeaving(sheet: Sheet, keeper: Keeper): void {
  const leave = (): void => settleAndRemember(sheet, keeper);
  takeUpWhatWasLeft(sheet);
  window.addEventListener('beforeunload', leave);
  // Some browsers tell of these only.
  window.addEventListener('pagehide', leave);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') leave();
  });
}

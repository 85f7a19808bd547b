import { afterEach, beforeEach, vi } from 'vitest';
import { openPage, type Page } from '../drawing/page';

/** A page for each test of a file, on a clock that the test moves; everything on it is on the screen. */
export function onStoppedClock(opened: (page: Page) => void): void {
  let page: Page;
  beforeEach(() => {
    vi.useFakeTimers();
    page = openPage();
    vi.stubGlobal(
      'IntersectionObserver',
      class {
        constructor(private readonly seen: (entries: readonly { isIntersecting: boolean }[]) => void) {}
        observe(): void {
          this.seen([{ isIntersecting: true }]);
        }
        disconnect(): void {}
      },
    );
    opened(page);
  });
  afterEach(() => {
    page.show(null);
    // What is to follow a drawing runs now: a file after this one would wait for it on a clock that has stopped.
    vi.advanceTimersByTime(1000);
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });
}

import { REFERENCE_PAGE } from '../controls/reference-link';
import { BACK, DESIGN_PAGE, keepLeftAt, leftAt } from '../store/left-at';
import type { Sheet } from '../store/sheet';

type Shown = Pick<Sheet, 'part' | 'shownSheet' | 'showSheet'>;

/** Keeps where somebody was when the reference is opened, and goes there when the reference leads back. */
export function watchWayBack(sheet: Shown): void {
  window.name = DESIGN_PAGE;
  const leave = ({ target }: MouseEvent): void => {
    const link = target instanceof Element ? target.closest<HTMLAnchorElement>('a[target]') : null;
    if (link?.target !== REFERENCE_PAGE) return;
    const piece = link.closest('.cell')?.querySelector('.cell-head h2')?.textContent;
    const { id, title } = sheet.shownSheet.peek();
    keepLeftAt({ design: sheet.part('title'), sheet: id, from: piece ?? title, y: window.scrollY });
  };
  // Before a menu that holds the link is closed and gone.
  document.addEventListener('click', leave, { capture: true });
  const goBack = (): void => {
    if (location.hash !== BACK) return;
    history.replaceState(null, '', location.pathname + location.search);
    const place = leftAt();
    if (!place || place.design !== sheet.part('title')) return;
    sheet.showSheet(place.sheet);
    // What was drawn late has to have its room again before the page is as long as it was.
    scrollWhenLong(place.y);
  };
  window.addEventListener('hashchange', goBack);
  goBack();
}

/** Frames for which it's waited that the page gets long enough. */
const PATIENCE = 180;

function scrollWhenLong(y: number, frames = PATIENCE): void {
  requestAnimationFrame(() => {
    const most = document.documentElement.scrollHeight - window.innerHeight;
    if (most < y && frames > 0) scrollWhenLong(y, frames - 1);
    else window.scrollTo({ top: y });
  });
}

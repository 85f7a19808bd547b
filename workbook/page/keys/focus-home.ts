/**
 * When what has the focus goes from the page, or can't have it any longer (a notice that is closed, a row that is removed, Undo
 * with nothing left to undo), the focus goes to what stood nearest to it, so that keys go on from there.
 */
export function keepFocus(): void {
  /** What has the focus, and all that holds it, from the inside out. */
  let chain: readonly Element[] = [];
  let waiting = false;
  const look = (): void => {
    waiting = false;
    if (document.activeElement !== document.body) return;
    const [last, ...around] = chain;
    if (!last || mayHaveFocus(last)) return;
    chain = [];
    homeOf(around)?.focus({ preventScroll: true });
  };
  document.addEventListener('focusin', ({ target }) => {
    chain = target instanceof Element ? chainOf(target) : [];
  });
  // Left on purpose, by a press beside it, it is still there: nothing is to be done then.
  document.addEventListener('pointerdown', ({ target }) => {
    if (target instanceof Element && !target.closest(TAKES_FOCUS)) chain = [];
  });
  const changes = { childList: true, subtree: true, attributeFilter: ['disabled', 'hidden', 'open'] };
  const observer = new MutationObserver(() => {
    if (waiting || document.activeElement !== document.body) return;
    waiting = true;
    // While the focus moves from one place to the next it is nowhere for a moment.
    setTimeout(look);
  });
  observer.observe(document.body, changes);
}

const TAKES_FOCUS = 'button, a[href], input, select, textarea, summary, label, [tabindex], [contenteditable="true"]';
/** Words before entries: an entry with the focus brings up the keyboard of a phone. */
const HOMES = ['button, a[href], summary', 'input, select, textarea, [tabindex="0"]'] as const;

function chainOf(element: Element): readonly Element[] {
  const chain: Element[] = [];
  for (let at: Element | null = element; at && at !== document.body; at = at.parentElement) chain.push(at);
  return chain;
}

const mayHaveFocus = (element: Element): boolean =>
  element.isConnected && !element.matches(':disabled') && element.checkVisibility();

/** The first thing that can have the focus in the nearest of these that is still there. */
function homeOf(around: readonly Element[]): HTMLElement | null {
  for (const element of around) {
    if (!element.isConnected || !element.checkVisibility()) continue;
    for (const home of HOMES) {
      const found = [...element.querySelectorAll<HTMLElement>(home)].find(mayHaveFocus);
      if (found) return found;
    }
  }
  return document.getElementById('pieces');
}

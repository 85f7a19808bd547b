/** As long as what is drawn may still grow, ms. */
const WHILE = 4000;

/** Keeps something in sight while it grows, until the reader does something. */
export function stayInSight(element: Element | null): void {
  if (!element) return;
  const show = (): void => element.scrollIntoView({ block: 'center' });
  const observer = new ResizeObserver(show);
  const leave = (): void => observer.disconnect();
  observer.observe(element);
  setTimeout(leave, WHILE);
  for (const act of ['keydown', 'pointerdown', 'wheel'])
    window.addEventListener(act, leave, { once: true, passive: true });
}

import { effect, type Signal, signal } from '@preact/signals';

/** Papers that the sheet can lie on; `device` follows what the person's system asks for. */
export const paperChoices = [
  { paper: 'device', words: 'as the device' },
  { paper: 'light', words: 'light' },
  { paper: 'blueprint', words: 'blueprint' },
] as const;
export type Paper = (typeof paperChoices)[number]['paper'];

const KEPT = 'tetherwright.paper';

export const isPaper = (text: string | null): text is Paper => paperChoices.some(({ paper }) => paper === text);

/** The paper that was chosen last time in this browser; a browser that keeps nothing gives what the device says. */
function keptPaper(): Paper {
  try {
    const text = localStorage.getItem(KEPT);
    return isPaper(text) ? text : 'device';
  } catch {
    return 'device';
  }
}

function keep(paper: Paper): void {
  try {
    if (paper === 'device') localStorage.removeItem(KEPT);
    else localStorage.setItem(KEPT, paper);
  } catch {
    // The paper holds until the page is left.
  }
}

/** Lays the page on its paper, now and whenever another is chosen here or on another page of this browser. */
export function watchPaper(): Signal<Paper> {
  const paper = signal(keptPaper());
  effect(() => {
    const root = document.documentElement;
    if (paper.value === 'device') delete root.dataset.paper;
    else root.dataset.paper = paper.value;
    keep(paper.value);
    matchFrame();
  });
  window.addEventListener('storage', (event) => {
    if (event.key === KEPT) paper.value = keptPaper();
  });
  window.matchMedia('(prefers-color-scheme: dark)').addEventListener('change', matchFrame);
  return paper;
}

/** The browser's own frame takes the colour of the desk. */
function matchFrame(): void {
  const desk = getComputedStyle(document.documentElement).backgroundColor;
  document.querySelector('meta[name="theme-color"]')?.setAttribute('content', desk);
}

import { type Signal, signal } from '@preact/signals';
import { options } from 'preact';
import type { PrintedKind } from './printed-kinds';

/** What goes on paper: the open sheet, every sheet of the set, some of them, or the weights as one statement. */
const PRINTED_PARTS = ['sheet', 'set', 'some', 'weights'] as const;
export type PrintedPart = (typeof PRINTED_PARTS)[number];

const KEPT = 'tetherwright.printed';

/** The page is laid out for paper: what is folded on the screen stands whole, and entries stand as their texts. */
export const printing = signal(false);

/** On paper stands only what belongs to the design as it is: what was computed for an earlier one of it is left out. */
export const tooOldForPaper = (madeFor: () => number, now: { readonly revision: number } | undefined): boolean =>
  printing.value && madeFor() !== now?.revision;

/** What was chosen last; the browser's own ways to print go by it too. */
export const printed: Signal<PrintedPart> = signal('sheet');

/** Of some sheets, the ids of those that are left out. */
export const leftOut: Signal<ReadonlySet<string>> = signal(new Set());

/** What of the sheets is left out. */
export const notPrinted: Signal<ReadonlySet<PrintedKind>> = signal(new Set());

/** The sheets that go on paper, in their order. */
export function sheetsOnPaper<S extends { readonly id: string }>(set: readonly S[], shown: S): readonly S[] {
  if (printed.value === 'set') return set;
  return printed.value === 'some' ? set.filter(({ id }) => !leftOut.value.has(id)) : [shown];
}

/** The person is asked what to print. */
export const askingToPrint = signal(false);

/** The person is asked which templates are wanted at full size. */
export const askingFullSize = signal(false);

/** Width of every chart and drawing on paper, px at 96 an inch: it fits A4 and Letter beside the balloons. */
export const PAPER_WIDTH = 620;

/** Lays the page out at once: a browser counts the pages as soon as it has said that it prints. */
export function layOutForPaper(paper: boolean): void {
  const { debounceRendering } = options;
  options.debounceRendering = (render) => render();
  try {
    printing.value = paper;
  } finally {
    if (debounceRendering) options.debounceRendering = debounceRendering;
    else delete options.debounceRendering;
  }
}

export function choosePrinted(part: PrintedPart): void {
  printed.value = part;
  try {
    localStorage.setItem(KEPT, part);
  } catch {
    // It holds until the page is left.
  }
}

/** Keeps the page laid out for paper while the browser prints. */
export function watchPrinting(): void {
  try {
    // Which sheets some were is not kept.
    const kept = PRINTED_PARTS.find((part) => part !== 'some' && part === localStorage.getItem(KEPT));
    if (kept) printed.value = kept;
  } catch {
    // A browser that keeps nothing prints the open sheet.
  }
  window.addEventListener('keydown', (event) => {
    if (event.key.toLowerCase() !== 'p' || !(event.ctrlKey || event.metaKey) || event.altKey || event.shiftKey) return;
    event.preventDefault();
    askingToPrint.value = true;
  });
  const query = window.matchMedia('print');
  // A browser may say in the midst of it that the medium is the screen.
  let underWay = false;
  const follow = (): void => layOutForPaper(underWay || query.matches);
  query.addEventListener('change', follow);
  window.addEventListener('beforeprint', () => {
    underWay = true;
    follow();
  });
  window.addEventListener('afterprint', () => {
    underWay = false;
    follow();
  });
}

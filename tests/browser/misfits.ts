import type { Page } from 'playwright-core';
import type { Window } from './rooms';
import { DESK, PHONE } from './sheet';

/** Windows in which every sheet has to fit: phones, tablets upright and lying, small and large desks, a phone lying. */
export const WINDOWS = [
  ...[360, 768, 820, 912, 1024, 1280, 1440, 1920].map((width) => ({ width, height: 900 })),
  { width: 740, height: 360 },
] as const;

/** Those in which every sheet of the demo is looked at, each piece of it open. */
export const DEMO_WINDOWS = [360, 768, 1920].map((width) => ({ width, height: 900 }));

/** A piece is laid out by the room that it has itself: one of two columns, a wide one, a narrow one, a phone. */
export const PIECE_WINDOWS = [1920, 1280, 820, 360].map((width) => ({ width, height: 900 }));

/** A dialog has one width at every desk, and all of a phone, lying or upright. */
export const DIALOG_WINDOWS = [DESK, { width: 740, height: 360 }, PHONE];

/** What does not fit into the window as it is: texts on each other, cut off or broken inside a word, and what reaches beyond. One sentence each. */
export function misfits(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    interface Line {
      readonly text: Text;
      readonly box: DOMRect;
    }
    const found = new Set<string>();
    const LONG = 30;
    const short = (text: string): string => `“${text.trim().replace(/\s+/g, ' ').slice(0, 50)}”`;
    const place = (element: Element): string => {
      const named = element.closest('[id], dialog, header, nav, aside, footer, main');
      return `${named?.id ? `#${named.id}` : (named?.localName ?? 'page')} ${element.localName}.${element.getAttribute('class') ?? ''}`;
    };
    const beyond = document.documentElement.scrollWidth - window.innerWidth;
    if (beyond > 0) found.add(`the page is ${beyond} px wider than the window`);

    const modal = document.querySelector('dialog:modal');
    const root = modal ?? document.body;
    /** Something of its own scrolls or is left out there, or it lies over the page on purpose. */
    const layer = (element: Element): Element => {
      for (let at: Element | null = element; at && at !== root; at = at.parentElement) {
        const { position, overflowX, overflowY } = getComputedStyle(at);
        if (position === 'fixed' || position === 'sticky' || at.matches('[popover], [role="menu"]')) return at;
        if (
          /auto|scroll/.test(overflowX + overflowY) &&
          (at.scrollWidth > at.clientWidth || at.scrollHeight > at.clientHeight)
        )
          return at;
      }
      return root;
    };

    /** There for screen readers alone. */
    const leftOut = (element: Element): boolean => {
      for (let at: Element | null = element; at && at !== root; at = at.parentElement)
        if (getComputedStyle(at).clipPath.startsWith('inset(50%')) return true;
      return false;
    };

    const lines: Line[] = [];
    const walker = document.createTreeWalker(root, NodeFilter.SHOW_TEXT);
    const range = document.createRange();
    for (let node = walker.nextNode() as Text | null; node; node = walker.nextNode() as Text | null) {
      const parent = node.parentElement;
      if (!parent || node.data.trim() === '') continue;
      if (parent.closest('.skip, script, style, option, title, desc, textarea, [hidden]')) continue;
      if (leftOut(parent)) continue;
      if (!parent.checkVisibility({ visibilityProperty: true, opacityProperty: true, contentVisibilityAuto: true }))
        continue;
      range.selectNodeContents(node);
      const boxes = [...range.getClientRects()].filter(({ width, height }) => width > 1 && height > 1);
      if (boxes.length === 0) continue;
      for (const box of boxes) lines.push({ text: node, box });
      if (boxes.length === 1) continue;
      // A soft hyphen shows where it breaks.
      if (node.data.includes('\u00ad')) continue;
      for (const { 0: word, index } of node.data.matchAll(/[\p{L}\p{N}]{2,}/gu)) {
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        const tops = [...range.getClientRects()].filter(({ width }) => width > 0.5).map(({ top }) => top);
        if (tops.length > 1 && Math.max(...tops) - Math.min(...tops) > 4)
          found.add(`broken inside a word: ${short(word)} in ${short(node.data)}, ${place(parent)}`);
      }
    }

    lines.sort((a, b) => a.box.top - b.box.top);
    const layers = new Map<Text, Element>();
    const layerOf = (text: Text): Element => {
      const known = layers.get(text) ?? layer(text.parentElement!);
      layers.set(text, known);
      return known;
    };
    for (const [at, one] of lines.entries()) {
      for (let k = at + 1; k < lines.length && lines[k]!.box.top < one.box.bottom - 3; k++) {
        const other = lines[k]!;
        if (other.text === one.text) continue;
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const down = Math.min(one.box.bottom, other.box.bottom) - other.box.top;
        if (across < 2 || down < 4 || layerOf(one.text) !== layerOf(other.text)) continue;
        found.add(
          `on each other: ${short(one.text.data)} and ${short(other.text.data)}, ${place(one.text.parentElement!)}`,
        );
      }
    }

    for (const element of root.querySelectorAll<HTMLElement>('*')) {
      // What is there for screen readers alone has no room.
      if (element.clientWidth <= 1 || element.clientHeight <= 1) continue;
      if (element.scrollWidth <= element.clientWidth + 1 && element.scrollHeight <= element.clientHeight + 1) continue;
      if (!element.checkVisibility({ visibilityProperty: true }) || element.matches('.unseen, .skip, textarea'))
        continue;
      if (element.closest('.unseen, .skip, svg')) continue;
      const { overflowX, overflowY, display } = getComputedStyle(element);
      if (display === 'inline') continue;
      const [wide, high] = [element.scrollWidth - element.clientWidth, element.scrollHeight - element.clientHeight];
      const cut = (way: string, more: number): boolean => /hidden|clip/.test(way) && more > 1;
      // A title is as long as its author likes, and scrolls in its entry.
      const lost =
        element instanceof HTMLInputElement
          ? wide > 2 && element.value.length < LONG
          : cut(overflowX, wide) || cut(overflowY, high);
      if (!lost) continue;
      const text = element instanceof HTMLInputElement ? element.value : (element.textContent ?? '');
      if (text.trim() !== '') found.add(`cut off by ${wide} × ${high} px: ${short(text)}, ${place(element)}`);
    }
    return [...found].slice(0, 15);
  });
}

/** What doesn't fit in which of some windows; in all of them where none is named. */
export async function inEveryWindow(page: Page, windows: readonly Window[] = WINDOWS): Promise<string[]> {
  const told: string[] = [];
  for (const { width, height } of windows) {
    await page.setViewportSize({ width, height });
    let found = await misfits(page);
    // Charts are drawn anew once their room has another width.
    for (let k = 0; k < 5 && found.length > 0; k++) {
      await page.waitForTimeout(300);
      found = await misfits(page);
    }
    told.push(...found.map((sentence) => `${width} × ${height}: ${sentence}`));
  }
  return told;
}

import { parseHTML } from 'linkedom';
import { type ComponentChild, render } from 'preact';

/** A light page for drawing into; `show` replaces what stands on it. */
export interface Page {
  readonly body: HTMLElement;
  show(what: ComponentChild): void;
}

export function openPage(): Page {
  const { document, window } = parseHTML('<!doctype html><html><body></body></html>');
  // The charts' library asks once, when it is first read, how fine the screen is: the same with a page and without.
  Object.assign(window, { devicePixelRatio: 2 });
  Object.assign(globalThis, { document, window });
  const body = document.body as unknown as HTMLElement;
  return { body, show: (what) => render(what, body) };
}

/** An SVG as text that does not hang on the last digits: one element a line, numbers to one decimal, attributes in order. */
export function normalised(svg: Element): string {
  const short = (text: string): string =>
    text.replace(/-?\d+\.\d+(e-?\d+)?/g, (n) => String(Math.round(Number(n) * 10) / 10 + 0));
  const write = (element: Element, depth: number): string => {
    const name = element.tagName.toLowerCase();
    const attributes = [...element.attributes]
      .map((a) => ` ${a.name}="${short(a.value)}"`)
      .sort()
      .join('');
    const pad = '  '.repeat(depth);
    const children = [...element.children];
    if (children.length === 0) return `${pad}<${name}${attributes}>${element.textContent}</${name}>\n`;
    return `${pad}<${name}${attributes}>\n${children.map((c) => write(c, depth + 1)).join('')}${pad}</${name}>\n`;
  };
  return write(svg, 0);
}

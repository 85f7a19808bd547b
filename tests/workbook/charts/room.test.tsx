import { expect, test } from 'vitest';
import { LABEL_SIZE, textWidth } from '../../../workbook/drawing/index';
import { openPage } from '../drawing/page';
import { charts } from './every-chart';

/** A place of 280 pixels, and the column of a newsletter: 85 mm at 96 pixels an inch. */
const COLUMN = Math.round((85 / 25.4) * 96);
/** Points of a pixel. */
const POINT = 72 / 96;

const number = (element: Element, name: string): number => Number(element.getAttribute(name) ?? Number.NaN);

/** Left and right end of every line of words in a picture. */
function words(svg: Element): { text: string; left: number; right: number }[] {
  return [...svg.querySelectorAll('text')].flatMap((text) => {
    const moved = Number(/translate\(([-\d.]+)/.exec(text.parentElement?.getAttribute('transform') ?? '')?.[1] ?? 0);
    if (moved !== 0 || text.hasAttribute('transform')) return [];
    const spans = [...text.querySelectorAll('tspan')];
    const anchor = text.getAttribute('text-anchor') ?? 'start';
    return (spans.length > 0 ? spans : [text]).flatMap((span) => {
      const x = number(span, 'x');
      const wide = textWidth(span.textContent ?? '', LABEL_SIZE);
      const left = anchor === 'end' ? x - wide : anchor === 'middle' ? x - wide / 2 : x;
      return Number.isNaN(x) ? [] : [{ text: span.textContent ?? '', left, right: left + wide }];
    });
  });
}

test.each(Object.keys(charts).flatMap((kind) => [280, COLUMN].map((width) => [kind, width] as const)))(
  'the %s chart keeps its words within %i px, none smaller than 7 pt',
  (kind, width) => {
    const page = openPage();
    page.show(charts[kind]!(width));
    const svg = page.body.querySelector('svg')!;
    expect(number(svg, 'width')).toBeLessThanOrEqual(width);
    const beyond = words(svg).filter(({ left, right }) => left < -3 || right > width + 3);
    expect(beyond).toEqual([]);
    const sizes = [svg, ...svg.querySelectorAll('[font-size]')].map((element) => number(element, 'font-size'));
    expect(Math.min(...sizes) * POINT).toBeGreaterThanOrEqual(7);
  },
);

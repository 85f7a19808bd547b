import { expect, test } from 'vitest';
import type { SweepProgress } from '../../../engine/index';
import { ContourChart } from '../../../workbook/charts/contour/view';
import { HistogramChart } from '../../../workbook/charts/histogram/view';
import { ScatterChart } from '../../../workbook/charts/scatter/view';
import { openPage } from '../drawing/page';
import { gridProps, twoAxes } from './grid-data';

const WIDE = 501;
const between = (low: number, high: number): Float64Array =>
  Float64Array.from({ length: WIDE }, (_, k) => low + ((high - low) * k) / (WIDE - 1));

/** A quarter of a million designs. */
const many: SweepProgress = {
  ...twoAxes,
  axes: [
    { path: 'engine_station', values: between(-0.18, -0.12) },
    { path: 'tip_weight', values: between(0, 0.05) },
  ],
  columns: [
    Float64Array.from({ length: WIDE ** 2 }, (_, k) => 20 + (k % WIDE) / 100),
    Float64Array.from({ length: WIDE ** 2 }, (_, k) => Math.floor(k / WIDE) / 10000),
  ],
  why: new Uint16Array(WIDE ** 2),
  done: WIDE ** 2,
  total: WIDE ** 2,
};

test('a sweep of a quarter of a million designs is drawn from some of them, and that is said', {
  timeout: 60_000,
}, () => {
  const page = openPage();
  const caption = (): string => page.body.querySelector('figcaption')!.textContent!;
  const across = { across: 'flight.outboard_low', lines: '' };
  page.show(<ScatterChart {...gridProps({ chart: 'scatter', ...across })} progress={many} width={560} />);
  const drawn = Number(/(\d+) of 251001 designs are drawn/.exec(caption())?.[1]);
  expect(drawn).toBeGreaterThan(3500);
  expect(drawn).toBeLessThan(4500);
  const signs = page.body.querySelector('[data-cloud]')!.getAttribute('d')!.match(/M/g)!.length;
  expect(signs).toBe(drawn);

  page.show(<ContourChart {...gridProps({ chart: 'contour' })} progress={many} width={560} />);
  expect(caption()).toContain('Drawn and counted from 10201 of 251001 designs.');

  page.show(<HistogramChart {...gridProps({ chart: 'histogram' })} progress={many} width={560} />);
  const counts = [...page.body.querySelectorAll('[data-count]')].map((bar) => Number(bar.getAttribute('data-count')));
  expect(counts.reduce((a, b) => a + b, 0)).toBe(251001);
});

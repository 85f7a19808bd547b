import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { CarpetChart } from '../../../workbook/charts/carpet/view';
import { ContourChart } from '../../../workbook/charts/contour/view';
import { normalised, openPage, type Page } from '../drawing/page';
import { charts } from './every-chart';
import { coarsely, gridProps } from './grid-data';

let page: Page;
const warned = vi.fn();
beforeEach(() => {
  page = openPage();
  warned.mockReset();
  vi.spyOn(console, 'warn').mockImplementation(warned);
});
afterEach(() => {
  expect(warned).not.toHaveBeenCalled();
  expect(page.body.textContent).not.toContain('⚠');
});

test.each(Object.keys(charts).flatMap((kind) => [560, 320].map((width) => [kind, width] as const)))(
  'the %s chart at %i px is the one that was looked at',
  async (kind, width) => {
    page.show(charts[kind]!(width));
    const svg = page.body.querySelector('svg')!;
    expect(svg).not.toBeNull();
    await expect(normalised(svg)).toMatchFileSnapshot(`pictures/${kind}-${width}.svg.snap`);
    await expect(`${page.body.querySelector('figcaption')!.textContent}\n`).toMatchFileSnapshot(
      `pictures/${kind}-${width}.caption.snap`,
    );
  },
);

test.each([
  ['contour', ContourChart],
  ['carpet', CarpetChart],
] as const)('a %s of the coarse lattice has no holes', (chart, Kind) => {
  page.show(<Kind {...gridProps({ chart })} progress={coarsely} width={560} />);
  const drawn = [...page.body.querySelectorAll('[data-level], path[stroke-width="1.8"]')].map(
    (path) => path.getAttribute('d')!,
  );
  expect(drawn.filter((d) => d !== '').length).toBeGreaterThan(5);
});

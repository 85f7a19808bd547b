import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { LineChart } from '../../../workbook/charts/line/view';
import { normalised, openPage, type Page } from '../drawing/page';
import {
  balanceChart,
  balanceGhost,
  balanceSweep,
  checks,
  designValues,
  optionTitles,
  pullChart,
  pullSweep,
  sweepNames,
} from './sweeps';

const common = { names: sweepNames, checks, optionTitle: (_: string, option: string) => optionTitles[option] };
const balance: SweepChartProps = {
  ...common,
  cell: balanceChart,
  progress: balanceSweep,
  values: designValues(-0.145),
  baseline: designValues(-0.158, 0),
  ghost: balanceGhost,
};
const pull: SweepChartProps = {
  ...common,
  cell: pullChart,
  progress: pullSweep,
  values: designValues(),
  baseline: designValues(-0.15, 1, 17),
};

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

const show = (props: SweepChartProps): Element => {
  page.show(<LineChart {...props} />);
  return page.body.querySelector('svg')!;
};

test.each([
  ['balance', 560],
  ['balance', 320],
  ['pull', 560],
  ['pull', 320],
] as const)('the %s chart at %i px is the one that was looked at', async (kind, width) => {
  const svg = show({ ...(kind === 'balance' ? balance : pull), width });
  await expect(normalised(svg)).toMatchFileSnapshot(`pictures/${kind}-${width}.svg.snap`);
});

test('the chart is an image with its title and what to see in words', () => {
  const svg = show(balance);
  expect(svg.getAttribute('role')).toBe('img');
  expect(svg.getAttribute('aria-label')).toMatch(
    /^CG against engine station, for each tail stock\. Lines of CG aft of the root leading edge, mm and CG on the mean chord, % over engine station, mm; one each: balsa; balsa–ply; light ply\. If engine station goes up by 10\u00a0mm/,
  );
  expect(page.body.querySelector('figcaption')!.textContent).toBe(
    svg.getAttribute('aria-label')!.slice(svg.getAttribute('aria-label')!.indexOf('If engine station')),
  );
});

test('every group that has a name has a role', () => {
  for (const group of show(balance).querySelectorAll('[aria-label]')) expect(group.hasAttribute('role')).toBe(true);
});

test('the present design moves with the hand, and nothing else is drawn anew', () => {
  const lines = (): Element[] => [...page.body.querySelectorAll('path[stroke-width="1.8"]')];
  const now = (): number => Number(page.body.querySelector('[data-mark="now"] circle')!.getAttribute('cx'));
  show(balance);
  const before = lines();
  const places = new Set<number>();
  for (const station of [-0.16, -0.158, -0.156, -0.154, -0.152]) {
    show({ ...balance, values: designValues(station) });
    places.add(now());
  }
  expect(places.size).toBe(5);
  expect(before.length).toBeGreaterThan(0);
  expect(lines()).toEqual(before);
  expect(lines()[0]).toBe(before[0]);
});

test('a new sweep is drawn at once', () => {
  const path = (): string | null => page.body.querySelector('path[stroke-width="1.8"]')!.getAttribute('d');
  show(balance);
  const before = path();
  show({
    ...balance,
    progress: { ...balanceSweep, columns: balanceSweep.columns.map((c) => c.map((v, k) => v + 0.0001 * k)) },
  });
  expect(path()).not.toBe(before);
});

test('points without an answer break the line', () => {
  show(pull);
  const [, , thick] = [...page.body.querySelectorAll('path[stroke-width="1.8"]')];
  const points = thick!.getAttribute('d')!.match(/[ML]/g)!.length;
  expect(points).toBe(19);
});

test('the baseline is a dotted line of its own, unless it is one of the family', () => {
  const ghosts = (props: SweepChartProps): number => {
    show(props);
    return page.body.querySelectorAll('path[data-line="baseline"]').length;
  };
  expect(ghosts(balance)).toBe(2);
  expect(ghosts({ ...balance, ghost: undefined })).toBe(0);
  const balsa = balanceSweep.columns.map((column) => column.filter((_, k) => k % 3 === 0));
  expect(ghosts({ ...balance, ghost: { ...balanceGhost, columns: balsa } })).toBe(0);
  expect(ghosts({ ...balance, ghost: { ...balanceGhost, axes: [balanceSweep.axes[1]!] } })).toBe(0);
});

test('while a hand moves the design the scale stands still as long as everything is on it', () => {
  const ticks = (): string => page.body.querySelector('[aria-label="y-axis tick label"]')!.outerHTML;
  const lifted = (by: number): SweepChartProps => ({
    ...balance,
    ghost: undefined,
    baseline: undefined,
    checks: [],
    progress: { ...balanceSweep, columns: balanceSweep.columns.map((c) => c.map((v) => v + by)) },
  });
  show(lifted(0));
  const before = ticks();
  show({ ...lifted(0.0005), moving: true });
  expect(ticks()).toBe(before);
  show({ ...lifted(0.1), moving: true });
  expect(ticks()).not.toBe(before);
  show(lifted(0));
  expect(ticks()).toBe(before);
});

test('a chart that asks for what is not there shows the sentence', () => {
  page.show(<LineChart {...balance} cell={{ ...balanceChart, across: 'tip_weight' }} />);
  expect(page.body.textContent).toBe('The trial series does not run along “tip_weight”. Choose one of its axes.');
});

test('a result that the sweep was not asked for is said', () => {
  show({ ...balance, cell: { ...balanceChart, up: ['balance.cg_x', 'flight.pull'] } });
  expect(page.body.querySelector('figcaption')!.textContent).toContain(
    'Line pull is not among the results asked for. Add it where this chart is drawn from.',
  );
});

test('a design outside the sweep is said to be outside', () => {
  show({ ...balance, values: designValues(-0.3) });
  expect(page.body.querySelector('[data-mark="now"]')).toBeNull();
  expect(page.body.querySelector('figcaption')!.textContent).toContain('The present design lies outside this picture.');
});

test('the figures behind the chart are folded away until asked for', async () => {
  show(pull);
  const details = page.body.querySelector('details')!;
  expect(details.querySelector('table')).toBeNull();
  Object.assign(details, { open: true });
  details.dispatchEvent(new (globalThis as unknown as { window: { Event: typeof Event } }).window.Event('toggle'));
  await vi.waitFor(() => expect(details.querySelector('table')).not.toBeNull());
  const rows = [...details.querySelectorAll('tbody tr')];
  expect(rows).toHaveLength(25);
  expect(details.querySelectorAll('thead th')).toHaveLength(1 + 3 + 9);
  expect([...rows[0]!.children].map((c) => c.textContent)).toEqual([
    '15',
    ...['–', '30.8', '29.7'],
    ...['–', '3.70', '3.57'],
    ...['–', '3.97', '4.06'],
  ]);
});

test('a count is drawn in steps, a quantity with a unit straight from one design to the next', () => {
  const upright = (): boolean[] =>
    [...page.body.querySelectorAll('path[stroke-width="1.8"]')].map((path) => {
      const places = path
        .getAttribute('d')!
        .slice(1)
        .split('L')
        .map((each) => each.split(',').map(Number));
      return places.some(([x, y], k) => k > 0 && x === places[k - 1]![0] && y !== places[k - 1]![1]);
    });
  const counts = { ...pull, cell: { ...pullChart, up: ['flight.lap_time'] }, checks: [] };
  const whole = counts.progress.columns.map((column) => column.map((_, k) => Math.floor(k / 20)));
  const names = new Map(
    [...sweepNames].map(([path, info]) => [path, path === 'flight.lap_time' ? { ...info, unit: '' } : info]),
  );
  show({ ...counts, progress: { ...pullSweep, columns: whole }, names });
  expect(upright()).toEqual([true, true, true]);
  show({ ...counts, progress: { ...pullSweep, columns: whole } });
  expect(upright()).toEqual([false, false, false]);
});

test('variants stand beside the baseline: each with its sign, its name and its line, at most as many as can be told apart', () => {
  const others = [
    {
      name: 'Nose heavy',
      values: designValues(-0.165, 0),
      ghost: { ...balanceGhost, columns: balanceGhost.columns.map((c) => c.map((y) => y - 0.004)) },
    },
    { name: 'With the engine far aft and a ply tail', values: designValues(-0.135, 2) },
  ];
  const svg = show({ ...balance, others });
  const marks = [...svg.querySelectorAll('[data-panel]')].map((panel) =>
    [...panel.querySelectorAll('[data-mark="variant"]')].map((mark) => mark.getAttribute('d')!.split('L').length),
  );
  // A square and a triangle in each panel.
  for (const of of marks) expect(of).toEqual([4, 3]);
  expect(svg.querySelectorAll('[data-line="variant"]')).toHaveLength(marks.length);
  const dash = (of: string): string | null =>
    svg.querySelector(`[data-line="${of}"]`)!.getAttribute('stroke-dasharray');
  expect(dash('variant')).not.toBe(dash('baseline'));
  const words = [...svg.querySelectorAll('text')].map((text) => text.textContent);
  expect(words.filter((text) => text?.startsWith('Nose heavy '))).toHaveLength(marks.length);
  expect(words.filter((text) => text?.startsWith('With the engine far a… '))).toHaveLength(marks.length);
  expect(page.body.querySelector('figcaption')!.textContent).toContain(
    'Square: Nose heavy. Triangle: With the engine far aft and a ply tail.',
  );
});

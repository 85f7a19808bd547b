import { expect, test, vi } from 'vitest';
import { LineChart } from '../../../workbook/charts/line/view';
import type { Taker } from '../../../workbook/store/taker';
import { openPage } from '../drawing/page';
import { balanceChart, balanceSweep, checks, designValues, sweepNames } from './sweeps';

type Design = Parameters<Taker['variant']>[0];

test('Enter at a value of a chart offers its design, as a variant or to be set', { timeout: 30_000 }, async () => {
  const page = openPage();
  const done: (readonly [string, Design])[] = [];
  const taker: Taker = {
    title: (design) => design.map(({ path }) => path).join(', '),
    variant: (design) => void done.push(['variant', design]),
    set: (design) => void done.push(['set', design]),
  };
  const show = (taken?: Taker) =>
    page.show(
      <LineChart
        cell={balanceChart}
        progress={balanceSweep}
        names={sweepNames}
        values={designValues()}
        checks={checks}
        width={560}
        {...(taken ? { taker: taken } : {})}
      />,
    );
  const press = async (...keys: string[]): Promise<void> => {
    for (const key of keys) {
      page.body
        .querySelector('.chart-read')!
        .dispatchEvent(Object.assign(new window.Event('keydown', { bubbles: true }), { key }));
      await new Promise((resolve) => setTimeout(resolve, 20));
    }
  };
  show();
  await press('ArrowRight', 'Home', 'Enter');
  expect(page.body.querySelector('.take-design')).toBeNull();
  show(taker);
  expect(page.body.querySelector('.chart-read')!.getAttribute('aria-label')).toContain(
    'Enter takes the design of one.',
  );
  await press('Home', 'Enter');
  await vi.waitFor(() => expect(page.body.querySelector('.take-design')).not.toBeNull());
  expect(page.body.querySelector('.take-design legend')!.textContent).toBe(
    balanceSweep.axes.map(({ path }) => path).join(', '),
  );
  const buttons = (): HTMLElement[] => [...page.body.querySelectorAll<HTMLElement>('.take-design button')];
  expect(buttons().map((each) => each.textContent)).toEqual([
    'Take this design as a variant',
    'Set the design to it',
    'Close',
  ]);
  buttons()[0]!.click();
  await vi.waitFor(() => expect(page.body.querySelector('.take-design')).toBeNull());
  const [how, design] = done[0]!;
  expect(how).toBe('variant');
  expect(design[0]!.si).toBe(balanceSweep.axes[0]!.values[0]);
  await press('End', 'Enter');
  await vi.waitFor(() => expect(buttons()).toHaveLength(3));
  buttons()[1]!.click();
  expect(done[1]![0]).toBe('set');
  expect(done[1]![1][0]!.si).toBe(balanceSweep.axes[0]!.values.at(-1));
});

import { expect, test, vi } from 'vitest';
import { Chart } from '../../../workbook/charts/index';
import { chartKinds } from '../../../workbook/charts/kinds';
import { openPage } from '../drawing/page';
import { balanceChart, balanceSweep, checks, designValues, sweepNames } from './sweeps';

test('a chart keeps its room until its code has come, then draws itself', { timeout: 30_000 }, async () => {
  const page = openPage();
  page.show(
    <Chart cell={balanceChart} progress={balanceSweep} names={sweepNames} values={designValues()} checks={checks} />,
  );
  expect(page.body.querySelector('[aria-busy="true"]')).not.toBeNull();
  expect(page.body.querySelector('svg')).toBeNull();
  await vi.waitFor(() => expect(page.body.querySelector('svg')).not.toBeNull(), { timeout: 20_000 });
  expect(page.body.querySelector('[aria-busy]')).toBeNull();
});

test('every kind of chart has its code', { timeout: 30_000 }, async () => {
  for (const load of Object.values(chartKinds)) expect(await load()).toBeTypeOf('function');
});

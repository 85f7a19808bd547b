import { expect, test } from 'vitest';
import type { Cell, ChartCell, PartsCell, SpreadCell, SweepCell } from '../../../engine/index';
import { fitChart, type Offer } from '../../../workbook/cells/chart/fit';

const axis = (of: string) => ({ of, low: '', high: '', count: 9 });
const sweep = (name: string, axes: readonly string[], wanted: readonly string[]): SweepCell => ({
  ...{ kind: 'trial_series', id: name, name, title: name },
  axes: axes.map(axis),
  wanted,
});
const parts: PartsCell = { kind: 'parts', id: 'p', name: 'parts', title: 'Parts', fuel: '', rows: [] };
const ring = {
  ...{ path: 'lap.ring', title: 'Around the lap', round: true },
  columns: [
    { name: 'azimuth', title: 'Azimuth' },
    { name: 'pull', title: 'Pull' },
    { name: 'speed', title: 'Speed' },
  ],
};
const drain = {
  ...{ path: 'tank.drain', title: 'As the tank empties', round: false },
  columns: [
    { name: 'left', title: 'Fuel left' },
    { name: 'head', title: 'Head' },
    { name: 'fuel_x', title: 'Middle' },
  ],
};
const offer = (cells: readonly Cell[], traces: Offer['traces'] = [drain, ring]): Offer => ({
  ...{ cells, traces },
  isChoice: (path) => path === 'tail_stock',
});
const balance = sweep('balance_sweep', ['tail_stock', 'station', 'tip_weight'], ['cg', 'pull', 'roll']);
const lines = sweep('line_sweep', ['line_length'], ['pull', 'lap_time']);
const all = offer([parts, balance, lines]);
const chart = (more: Partial<ChartCell> = {}): ChartCell => ({
  ...{ kind: 'chart', id: 'c', name: 'chart', title: '', chart: 'line' },
  ...{ series: 'balance_sweep', across: 'station', up: ['cg'], lines: 'tail_stock' },
  ...more,
});

test('what still fits stays', () => {
  expect(fitChart(chart(), all)).toEqual(chart());
  expect(fitChart(chart({ chart: 'carpet' }), all)).toEqual(chart({ chart: 'carpet' }));
});

test('a new chart of a sweep takes what there is first', () => {
  const empty = chart({ series: '', across: '', up: [], lines: '' });
  expect(fitChart(empty, all)).toEqual(chart({ across: 'tail_stock', lines: '' }));
  expect(fitChart(empty, offer([]))).toEqual(empty);
});

test('another sweep has other axes and results', () => {
  expect(fitChart(chart({ series: 'line_sweep', up: ['cg', 'pull'] }), all)).toEqual(
    chart({ series: 'line_sweep', across: 'line_length', lines: '', up: ['pull'] }),
  );
});

test('contours run over two different axes of numbers and show one result', () => {
  expect(fitChart(chart({ chart: 'contour', up: ['pull', 'cg'] }), all)).toEqual(
    chart({ chart: 'contour', across: 'station', lines: 'tip_weight', up: ['pull'] }),
  );
});

test('a scatter sets a result against another one', () => {
  expect(fitChart(chart({ chart: 'scatter' }), all)).toEqual(chart({ chart: 'scatter', across: 'cg', up: ['pull'] }));
});

test('bars like the options of a choice across, and the parts where there is no sweep', () => {
  const bars = chart({ chart: 'bars', across: '', lines: '' });
  expect(fitChart(bars, all)).toEqual(chart({ chart: 'bars', across: 'tail_stock', lines: '' }));
  expect(fitChart({ ...bars, series: '' }, offer([parts]))).toMatchObject({ of: 'parts', up: ['mass'] });
  expect(fitChart({ ...bars, of: 'parts', up: ['moment'] }, all)).toMatchObject({ of: 'parts', up: ['moment'] });
});

test('moments and rings have sources of their own, and leave them for a sweep', () => {
  const moments = fitChart(chart({ chart: 'moments' }), all);
  expect(moments).toMatchObject({ of: 'parts', up: [] });
  expect(fitChart({ ...moments, chart: 'line' }, all)).toEqual(chart());
  expect(fitChart(chart({ chart: 'ring' }), all)).toMatchObject({ of: 'lap.ring', up: ['pull'] });
  expect(fitChart(chart({ chart: 'ring', of: 'lap.ring', up: ['speed'] }), all)).toMatchObject({ up: ['speed'] });
  expect(fitChart(chart({ chart: 'ring' }), offer([parts], []))).toMatchObject({ of: '', up: [] });
});

const shop: SpreadCell = {
  ...{ kind: 'tolerances', id: 's', name: 'shop', title: 'Shop', parts: false, samples: 100, seed: 1 },
  rows: [{ of: 'tip_weight', distribution: 'normal', size: '1 g', above: '' }],
  wanted: ['pull', 'lap_time'],
};

test('a histogram and a scatter take a spread too, shares take nothing else', () => {
  const both = offer([balance, shop]);
  expect(fitChart(chart({ chart: 'histogram', series: 'shop', up: ['lap_time', 'tip_weight', 'cg'] }), both)).toEqual(
    chart({ chart: 'histogram', series: 'shop', across: '', lines: '', up: ['lap_time', 'tip_weight'] }),
  );
  expect(fitChart(chart({ chart: 'scatter', series: 'shop', across: 'tip_weight' }), both)).toEqual(
    chart({ chart: 'scatter', series: 'shop', across: 'tip_weight', lines: '', up: ['pull'] }),
  );
  expect(fitChart(chart({ chart: 'shares', up: ['tip_weight'] }), both)).toEqual(
    chart({ chart: 'shares', series: 'shop', across: '', lines: '', up: ['pull'] }),
  );
  expect(fitChart(chart({ series: 'shop' }), both).series).toBe('balance_sweep');
});

test('what runs along something takes a column across and the others up, and only what goes round is a ring', () => {
  const along = fitChart(chart({ chart: 'along' }), all);
  expect(along).toMatchObject({ of: 'tank.drain', across: 'left', up: ['head'] });
  expect(fitChart({ ...along, up: ['head', 'fuel_x'] }, all)).toMatchObject({ across: 'left', up: ['head', 'fuel_x'] });
  expect(fitChart({ ...along, across: 'head' }, all)).toMatchObject({ across: 'head', up: ['left'] });
  expect(fitChart({ ...along, of: 'lap.ring' }, all)).toMatchObject({ across: 'azimuth', up: ['pull'] });
  expect(fitChart({ ...along, chart: 'ring' }, all)).toMatchObject({ of: 'lap.ring', up: ['pull'] });
  expect(fitChart({ ...along, chart: 'line' }, all)).toEqual(chart({ across: 'tail_stock', lines: '' }));
});

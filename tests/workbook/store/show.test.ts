import { expect, test } from 'vitest';
import type { NameInfo } from '../../../engine/index';
import { ONE } from '../../../engine/units/index';
import { inUnit, showChange, showValue } from '../../../workbook/store/show';

const info = (unit: string, more: Partial<NameInfo> = {}): NameInfo => ({
  path: 'p',
  slot: 0,
  kind: 'result',
  cell: 'c',
  title: '',
  symbol: '',
  dimension: ONE,
  unit,
  suffix: '',
  doc: '',
  settable: false,
  ...more,
});
const degree = Math.PI / 180;

test.each([
  [info('mm'), 0.04604, '46.0\u00a0mm'],
  [info('°'), -0.4 * degree, '−0.4°'],
  [info('', { suffix: 'g' }), 3.0581, '3.06\u00a0g'],
  [info(''), Number.NaN, '–'],
  [info('', { options: ['balsa', 'light_ply'] }), 1, 'light ply'],
  [info('', { options: ['balsa'] }), Number.NaN, '–'],
])('a value as people read it: %#', (name, value, words) => expect(showValue(name, value)).toBe(words));

test('bare: the number without what stands behind it', () => {
  expect(showValue(info('mm'), -0.15, { bare: true })).toBe('−150');
  expect(showValue(info('°'), 1.5 * degree, { bare: true })).toBe('1.5');
  expect(showValue(info('', { suffix: 'g' }), 3.0581, { bare: true })).toBe('3.06');
});

test.each([
  ['as many decimals as the value', info('mm'), 0.04604, 0.04301, '+3.0'],
  ['a true minus', info('°'), -0.4 * degree, -0.2 * degree, '−0.2'],
  ['no sign on nothing', info('mm'), 0.04604, 0.04604, '0'],
  ['a change that its value would not show is none', info('mm'), 0.04604, 0.046041, '0'],
  ['the zero of a temperature scale drops out', info('°C'), 298.15, 293.15, '+5'],
  ['without an answer now', info('mm'), Number.NaN, 0.04, ''],
  ['without an answer in the baseline', info('mm'), 0.04, Number.NaN, ''],
  ['a choice has no difference', info('', { options: ['a', 'b'] }), 1, 0, ''],
])('change from the baseline: %s', (_, name, now, before, words) => expect(showChange(name, now, before)).toBe(words));

test('a slide gets the number that was typed, without the digits of conversion', () => {
  expect(inUnit(-0.15, 'mm')).toBe(-150);
  expect(inUnit(0.1 + 0.2, 'm')).toBe(0.3);
  expect(inUnit(Number.NaN, 'mm')).toBeNaN();
});

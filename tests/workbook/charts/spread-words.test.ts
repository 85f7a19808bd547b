import { expect, test } from 'vitest';
import type { SpreadTold } from '../../../engine/index';
import {
  causesSentence,
  factorTitle,
  percentilesSentence,
  sharesSentence,
  shareText,
} from '../../../workbook/charts/frame/spread-words';
import { told } from './spread-data';
import { sweepNames } from './sweeps';

const result = told.results[0]!;
const said = (change: Partial<SpreadTold['results'][number]>) =>
  sharesSentence(told, { ...result, ...change }, sweepNames);

test('the greatest share is said first, then the next', () => {
  expect(said({})).toBe('Engine station makes 58\u00a0% of the uncertainty of the line pull, line length 39\u00a0%.');
  expect(said({ first: [0.01, 0.9, 0] })).toBe('Engine station makes 90\u00a0% of the uncertainty of the line pull.');
  expect(said({ first: [0.2, 1.02, 0] })).toBe('Engine station makes nearly all of the uncertainty of the line pull.');
});
test('shares that may be chance are not said', () => {
  expect(said({ first: [0.05, 0.08, 0.01] })).toBe(
    'No single thing makes much of the uncertainty of the line pull: they work together, or there are too few designs to tell.',
  );
  expect(said({ first: [], total: [] })).toBe('');
  expect(said({ first: [Number.NaN, Number.NaN, Number.NaN], deviation: 0 })).toBe(
    'Nothing that differs moves the line pull.',
  );
});
test('a part is called by what of it differs', () => {
  const names = new Map(sweepNames);
  const info = names.get('flight.pull')!;
  names.set('parts.tank.mass', { ...info, title: 'Tank' });
  names.set('parts.tank.x', { ...info, title: 'Tank: station' });
  expect(factorTitle({ path: 'parts.tank.mass', what: 'mass' }, names)).toBe('Weight of tank');
  expect(factorTitle({ path: 'parts.tank.x', what: 'station' }, names)).toBe('Station x of tank');
  expect(factorTitle({ path: 'parts.tank.x', what: 'place' }, names)).toBe('Place of tank');
});
test('small shares, percentiles and what has no answer are said in words', () => {
  expect([0.003, 0.006, 0.625, 0, -0.004].map(shareText)).toEqual([
    'less than 1\u00a0%',
    '1\u00a0%',
    '63\u00a0%',
    '0\u00a0%',
    '0\u00a0%',
  ]);
  expect(percentilesSentence(told, result, sweepNames.get('flight.pull')!)).toBe(
    'Line pull: of 288 designs 5\u00a0% lie below 25.2\u00a0N, half below 25.7\u00a0N, 95\u00a0% below 26.2\u00a0N.',
  );
  expect(causesSentence(told)).toBe(
    '12 of 300 designs have no answer and are left out. Too little thrust: … N are missing.',
  );
});

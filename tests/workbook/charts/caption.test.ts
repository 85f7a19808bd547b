import { expect, test } from 'vitest';
import { readFamily } from '../../../workbook/charts/frame/family';
import { limitSentences } from '../../../workbook/charts/frame/limit-words';
import { missingSentence } from '../../../workbook/charts/frame/missing-words';
import type { SweepChartProps } from '../../../workbook/charts/frame/props';
import { slopeSentence } from '../../../workbook/charts/frame/slope-words';
import { capital, inSentence, listed } from '../../../workbook/charts/frame/words';
import {
  balanceChart,
  balanceSweep,
  checks,
  designValues,
  optionTitles,
  pullChart,
  pullSweep,
  sweepNames,
} from './sweeps';

const balance: SweepChartProps = {
  cell: balanceChart,
  progress: balanceSweep,
  names: sweepNames,
  values: designValues(),
  checks,
  optionTitle: (_, option) => optionTitles[option],
};
const pull: SweepChartProps = { ...balance, cell: pullChart, progress: pullSweep };

function captions(props: SweepChartProps): { slope: string; limits: string } {
  const family = readFamily(props);
  if (typeof family === 'string') throw new Error(family);
  const nowX = props.values[sweepNames.get(props.cell.across)!.slot];
  return {
    slope: slopeSentence(family, props.progress, nowX),
    limits: limitSentences(family, props).join(' '),
  };
}

test('straight lines that run alike have one slope, from the numbers of the sweep', () => {
  // Made-up data: 0.29 m of CG for a metre of engine, over a mean chord of 213 mm.
  expect(captions(balance).slope).toBe(
    'If engine station goes up by 10\u00a0mm, CG aft of the root leading edge rises by 2.9\u00a0mm and CG on the mean chord rises by 1.4\u00a0%.',
  );
});

test('bent lines have the slope beside the present design', () => {
  expect(captions(pull).slope).toBe(
    'Near the present design, if line length goes up by 1\u00a0m, line pull falls by 1.4\u00a0N, line pull per weight falls by 0.17\u00a0g and lap time rises by 0.29\u00a0s.',
  );
});

test('the slope follows the present design along a bent line', () => {
  expect(captions({ ...pull, values: designValues(-0.15, 1, 16) }).slope).toContain('line pull falls by 1.7\u00a0N');
});

test('in inches the step is a round number of inches', () => {
  const inches = new Map([...sweepNames].map(([path, n]) => [path, n.unit === 'mm' ? { ...n, unit: 'in' } : n]));
  expect(captions({ ...balance, names: inches }).slope).toContain('If engine station goes up by 0.1\u00a0in, ');
});

test('for each line it is said where it keeps within the limits', () => {
  expect(captions(balance).limits).toBe(
    'CG aft of the root leading edge in limits: with balsa from −160\u00a0mm; with balsa–ply from −178\u00a0mm; with light ply up to −136\u00a0mm.',
  );
  expect(captions(pull).limits).toBe(
    'Line pull per weight in its limit: with 0.30 mm stranded from 15.5\u00a0m; with 0.38 mm stranded up to 21.3\u00a0m; with 0.46 mm stranded up to 19.9\u00a0m.',
  );
});

test('where every line does the same, it is said once', () => {
  const wide = designValues();
  wide[sweepNames.get('cg_check.low')!.slot] = 0.03;
  wide[sweepNames.get('cg_check.high')!.slot] = 0.07;
  expect(captions({ ...balance, values: wide }).limits).toBe('CG aft of the root leading edge in limits everywhere.');
});

test('designs without an answer are counted with their reasons', () => {
  expect(missingSentence(balanceSweep)).toBe('');
  expect(missingSentence(pullSweep)).toBe(
    '8 of 75 designs have no answer and are left out. ' +
      '6: Lines slack at 15.0 m/s: the pull of the circle is used up. 2: Too little thrust by 0.6 N.',
  );
  const one = { ...pullSweep, why: pullSweep.why.map((_, k) => (k === 4 ? 2 : 0)) };
  expect(missingSentence(one)).toBe('1 of 75 designs has no answer and is left out. Too little thrust by 0.6 N.');
});

test('a slope says the way of a result that has ways in words, and what stays as it is', () => {
  const out = new Map(
    [...sweepNames].map(([path, n]) => [path, { ...n, ways: ['out', 'in', 'straight'] as const, suffix: '' }]),
  );
  expect(captions({ ...balance, names: out }).slope).toContain('changes by 2.9\u00a0mm out');
  const flat = { ...balanceSweep, columns: balanceSweep.columns.map((column) => column.map(() => 0.03)) };
  expect(captions({ ...balance, progress: flat }).slope).toContain('CG aft of the root leading edge stays as it is');
});

test('reasons that differ in their numbers alone are one, with the range of the numbers', () => {
  const slack = {
    ...pullSweep,
    sentences: [
      'The lines go slack 97.5° past downwind, in a wind of 11.9\u00a0m/s.',
      'The lines go slack 90° past downwind, in a wind of 13\u00a0m/s.',
      'Too little thrust by 0.6 N.',
    ],
    why: pullSweep.why.map((_, k) => (k < 7 ? (k % 3) + 1 : 0)),
  };
  expect(missingSentence(slack)).toBe(
    '7 of 75 designs have no answer and are left out. ' +
      '5: The lines go slack 90 to 97.5° past downwind, in a wind of 11.9 to 13\u00a0m/s. 2: Too little thrust by 0.6 N.',
  );
});

test('many reasons are named only as far as they can be read', () => {
  const many = {
    ...pullSweep,
    sentences: ['A.', 'B.', 'C.'],
    why: pullSweep.why.map((_, k) => (k < 6 ? (k % 3) + 1 : 0)),
  };
  expect(missingSentence(many)).toBe(
    '6 of 75 designs have no answer and are left out. 2: A. 2: B. 2 for other reasons.',
  );
});

test('a sample that is not computed yet is no missing answer', () => {
  expect(missingSentence({ ...pullSweep, why: pullSweep.why.map(() => 65535) })).toBe('');
});

test('titles keep their capitals where they are letters of their own', () => {
  expect([inSentence('CG'), inSentence('Lap time'), inSentence('engine')]).toEqual(['CG', 'lap time', 'engine']);
});

test('lists and beginnings', () => {
  expect(listed([])).toBe('');
  expect(listed(['a'])).toBe('a');
  expect(listed(['a', 'b', 'c'])).toBe('a, b and c');
  expect([capital('engine station, mm'), capital('CG')]).toEqual(['Engine station, mm', 'CG']);
});

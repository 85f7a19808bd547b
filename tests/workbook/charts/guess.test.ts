import { expect, test } from 'vitest';
import type { NameInfo } from '../../../engine/index';
import { FORCE, LENGTH } from '../../../engine/units/index';
import { drawnBetween, keyed } from '../../../workbook/charts/guess/draw';
import { type Guessed, layOutGuess } from '../../../workbook/charts/guess/layout';

const info = (path: string, unit: string, dimension: NameInfo['dimension']): NameInfo => ({
  ...{ path, slot: 0, kind: 'result', cell: 'c', title: path, symbol: '', dimension, unit, suffix: '', doc: '' },
  settable: false,
});
const guessed = (ys: readonly number[], more: Partial<Guessed> = {}): Guessed => ({
  ...{ across: info('reach', 'mm', LENGTH), up: info('pull', 'N', FORCE), xs: [1, 2, 3], ys, lines: [], shown: false },
  ...{ now: { x: 2, y: ys[1]! }, ...more },
});
const rangeOf = (ys: readonly number[]) => layOutGuess(guessed(ys), 560).up.range;

test('where the axis ends says nothing of the answer: it has zero in it and goes well beyond', () => {
  expect(rangeOf([4, 8, 12])).toEqual([0, 20]);
  expect(rangeOf([12, 8, 4])).toEqual([0, 20]);
  expect(rangeOf([-1, 0, 2])).toEqual([-4, 4]);
  expect(rangeOf([Number.NaN, 8, Number.NaN])).toEqual([0, 14]);
});

test('the answer stands on it only when it is shown, and every line has its name then', () => {
  const lines = [{ by: 'Ann', heights: [1, 2, 3, 4, 5, 6, 7, 8, 9] }];
  const covered = layOutGuess(guessed([4, 8, 12], { lines }), 560);
  expect([covered.answer.length, covered.ends.length]).toEqual([0, 0]);
  const shown = layOutGuess(guessed([4, 8, 12], { lines, shown: true }), 560);
  expect(shown.answer.map(({ x }) => x)).toEqual([
    shown.box.left,
    (shown.box.left + shown.box.right) / 2,
    shown.box.right,
  ]);
  expect(shown.ends.map(({ lines: words }) => words)).toEqual([['answer'], ['Ann']]);
  expect(shown.up.range).toEqual(covered.up.range);
});

test('a height in pixels is the value that is drawn there, and is kept within the plot', () => {
  const chart = layOutGuess(guessed([4, 8, 12]), 560);
  expect(chart.valueAt(chart.y(7))).toBeCloseTo(7, 9);
  expect(chart.valueAt(chart.box.top - 50)).toBe(20);
  expect(chart.valueAt(chart.box.bottom + 50)).toBe(0);
});

const level = [5, 5, 5, 5, 5];
const paper = { places: [0, 10, 20, 30, 40], valueAt: (y: number) => 100 - y };

test('the pen leaves at every place that it passed the height at which it did', () => {
  expect(drawnBetween(level, paper, { x: 11, y: 50 }, { x: 11, y: 50 })).toEqual([5, 50, 5, 5, 5]);
  expect(drawnBetween(level, paper, { x: 0, y: 100 }, { x: 40, y: 60 })).toEqual([0, 10, 20, 30, 40]);
  expect(drawnBetween(level, paper, { x: 40, y: 60 }, { x: 18, y: 82 })).toEqual([5, 5, 18, 30, 40]);
});

test('keys go from place to place and raise and lower the line, and no other key does anything', () => {
  expect(keyed('ArrowRight', 0, level, [0, 40])).toEqual({ at: 1, heights: level });
  expect(keyed('ArrowLeft', 0, level, [0, 40])).toEqual({ at: 0, heights: level });
  expect(keyed('End', 1, level, [0, 40])?.at).toBe(4);
  expect(keyed('Home', 3, level, [0, 40])?.at).toBe(0);
  expect(keyed('ArrowUp', 2, level, [0, 40])?.heights).toEqual([5, 5, 6, 5, 5]);
  expect(keyed('PageDown', 2, level, [0, 40])?.heights).toEqual([5, 5, 0, 5, 5]);
  expect(keyed('PageDown', 2, level, [3, 40])?.heights[2]).toBe(3);
  expect(keyed('a', 2, level, [0, 40])).toBeUndefined();
});

import { describe, expect, it } from 'vitest';
import { coarsePoints, lattice, positions } from '../../../engine/study/sweep/lattice';

describe('order of a grid', () => {
  it.each([
    [
      [25, 3],
      [false, true],
    ],
    [[1], [false]],
    [
      [10, 7, 2, 11],
      [false, false, true, false],
    ],
  ] as const)('visits every sample of %j once', (counts, choice) => {
    const total = counts.reduce<number>((product, count) => product * count, 1);
    const { order } = lattice(counts, choice);
    expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: total }, (_, k) => k));
  });

  it('begins with both ends of every axis and all options of a choice', () => {
    const { order, coarse } = lattice([25, 3], [false, true]);
    const first = [...order.subarray(0, coarse)];
    expect(coarse).toBe(27);
    for (const row of [0, 1, 2, 72, 73, 74]) expect(first).toContain(row);
  });

  it('keeps a short axis whole', () => {
    expect(coarsePoints(5)).toEqual([true, true, true, true, true]);
    expect(lattice([5, 4], [false, false]).coarse).toBe(20);
  });

  it('spreads the lattice evenly', () => {
    const chosen = coarsePoints(25).flatMap((is, k) => (is ? [k] : []));
    expect(chosen).toEqual([0, 3, 6, 9, 12, 15, 18, 21, 24]);
  });

  it('runs the last axis fastest', () => {
    const at = new Uint32Array(2);
    positions(4, [25, 3], at);
    expect([...at]).toEqual([1, 1]);
    positions(74, [25, 3], at);
    expect([...at]).toEqual([24, 2]);
  });
});

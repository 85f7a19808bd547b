import { describe, expect, it } from 'vitest';
import type { Program, Step } from '../../../engine/sheet/program';
import { cone } from '../../../engine/study/run/cone';

const step = (path: string, reads: number[], writes: number[]): Step => ({
  key: path,
  kind: 'formula',
  cell: path,
  path,
  reads,
  writes,
  reasons: [],
  bind: () => () => {},
});

/**
 *   a(0) ──> f0 ──> 2 ──> f2 ──> 4 ──> f4 ──> 6
 *   b(1) ──> f1 ──> 3 ──> f3 ──> 5 ──────┘
 *                   └─> f2
 */
const program: Program = {
  shape: 'test',
  size: 7,
  slotOf: new Map(),
  steps: [
    step('f0', [0], [2]),
    step('f1', [1], [3]),
    step('f2', [2, 3], [4]),
    step('f3', [3], [5]),
    step('f4', [4, 5], [6]),
  ],
  start: new Float64Array(7),
  constants: new Map(),
  inputs: new Map(),
};

describe('steps that a sweep runs', () => {
  it('are downstream of the axes and upstream of what is wanted', () => {
    expect([...cone(program, [0], [6])]).toEqual([0, 2, 4]);
    expect([...cone(program, [1], [6])]).toEqual([1, 2, 3, 4]);
    expect([...cone(program, [0], [4])]).toEqual([0, 2]);
    expect([...cone(program, [1], [5])]).toEqual([1, 3]);
    expect([...cone(program, [0, 1], [6])]).toEqual([0, 1, 2, 3, 4]);
  });

  it('are none where the axis does not reach what is wanted', () => {
    expect([...cone(program, [0], [5])]).toEqual([]);
  });

  it('leave out the formula of a swept slot and what only it needs', () => {
    expect([...cone(program, [2], [6])]).toEqual([2, 4]);
    expect([...cone(program, [2, 0], [6])]).toEqual([2, 4]);
    expect([...cone(program, [3, 1], [4])]).toEqual([2]);
  });
});

import { describe, expect, it } from 'vitest';
import { determine, type LeastSquares, leastSquares } from '../../../engine/numerics/index';

type Model = (p: Float64Array) => readonly number[];

function leastOf(
  model: Model,
  start: readonly number[],
  ends: readonly (readonly [number, number])[] = start.map(() => [-1e9, 1e9]),
): LeastSquares {
  const problem = {
    start: Float64Array.from(start),
    low: Float64Array.from(ends, ([low]) => low),
    high: Float64Array.from(ends, ([, high]) => high),
    scale: Float64Array.from(start, () => 1),
  };
  return leastSquares(problem, (points) => points.map((p) => Float64Array.from(model(p))));
}

describe('the way to the least', () => {
  it('finds the bottom of a bent valley', () => {
    // H. H. Rosenbrock's function, Computer J. 3 (1960) 175 (from memory): least at (1, 1).
    const found = leastOf(([x, y]) => [10 * (y! - x! * x!), 1 - x!], [-1.2, 1]);
    expect(found.status).toBe('settled');
    expect(found.parameters[0]).toBeCloseTo(1, 8);
    expect(found.parameters[1]).toBeCloseTo(1, 8);
    expect(found.sum).toBeLessThan(1e-14);
  });

  it('stops at an end and says so', () => {
    const found = leastOf(
      ([x, y]) => [x! - 5, y! - 2],
      [1, 0],
      [
        [0, 3],
        [-9, 9],
      ],
    );
    expect(found).toMatchObject({ status: 'settled', held: [true, false] });
    expect(found.parameters[0]).toBe(3);
    expect(found.parameters[1]).toBeCloseTo(2, 9);
  });

  it('leaves an end again when the way down leads inward', () => {
    const found = leastOf(([x]) => [x! - 1], [3], [[0, 3]]);
    expect(found).toMatchObject({ status: 'settled', held: [false] });
    expect(found.parameters[0]).toBeCloseTo(1, 9);
  });

  it('says when there is no answer at the start', () => {
    expect(leastOf(() => [Number.NaN], [1])).toMatchObject({ status: 'no answer', iterations: 0 });
  });

  it('goes round where predictions end, and is stuck where the way down leads there', () => {
    const wall: Model = ([x]) => [x! > 2 ? Number.NaN : x! - 5];
    const found = leastOf(wall, [1]);
    expect(found.status).toBe('stuck');
    expect(found.parameters[0]).toBeCloseTo(2, 3);
    const beyond: Model = ([x]) => [x! > 2 ? Number.NaN : Math.sin(x!) - 0.5];
    const short = leastOf(beyond, [1.4]);
    expect(short.status).toBe('settled');
    expect(short.parameters[0]).toBeCloseTo(Math.PI / 6, 9);
  });

  it('leaves alone what changes nothing', () => {
    const found = leastOf(([x, y]) => [x! + 0 * y! - 3, 2 * x! - 6], [1, 7]);
    expect(found.parameters[0]).toBeCloseTo(3, 9);
    expect(found.parameters[1]).toBe(7);
    expect(determine(found.jacobian)).toMatchObject({ rank: 1, determined: [true, false], silent: [false, true] });
  });
});

describe('what the observations tell', () => {
  it('two parameters with the same effect are blind together, a third is not', () => {
    const found = leastOf(
      ([x, y, z]) => [x! + 2 * y! - 3, 2 * x! + 4 * y! - 6, z! - 1, x! + 2 * y! + z! - 4],
      [0, 0, 0],
    );
    const told = determine(found.jacobian);
    expect(told.rank).toBe(2);
    expect(told.determined).toEqual([false, false, true]);
    const [blind] = told.blind as [number[]];
    expect(Math.abs(blind[0]!)).toBeCloseTo(Math.SQRT1_2, 6);
    expect(blind[0]! * blind[1]!).toBeCloseTo(-0.5, 6);
    expect(told.covariance[0]).toEqual([Number.NaN, Number.NaN, Number.NaN]);
    expect(told.covariance[2]![2]).toBeGreaterThan(0);
  });

  it('one observation tells one direction of three', () => {
    const found = leastOf(([x, y, z]) => [x! + y! + z! - 3], [0, 0, 0]);
    expect(determine(found.jacobian)).toMatchObject({ rank: 1, determined: [false, false, false] });
    // The least change from the start that meets it.
    for (const value of found.parameters) expect(value).toBeCloseTo(1, 8);
  });

  it('the covariance of a weighted mean is one over the sum of the weights', () => {
    const errors = [0.5, 1, 2];
    const { covariance } = determine([Float64Array.from(errors, (error) => 1 / error)]);
    expect(covariance[0]![0]).toBeCloseTo(1 / (4 + 1 + 0.25), 12);
  });

  it('nothing is told without any effect', () => {
    expect(determine([new Float64Array(3)])).toMatchObject({ rank: 0, determined: [false], silent: [true], blind: [] });
  });
});

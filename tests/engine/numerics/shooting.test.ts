import { describe, expect, it } from 'vitest';
import { type BoundaryProblem, shoot } from '../../../engine/numerics/index';

/** y'' = f(y) from y(0) = near to y(1) = far; unknown: y'(0). */
const between = (bend: (y: number) => number, near: number, far: number, steps = 40): BoundaryProblem => ({
  size: 2,
  from: 0,
  to: 1,
  steps,
  begin(p, y) {
    y[0] = near;
    y[1] = p[0]!;
  },
  slope(_, y, out) {
    out[0] = y[1]!;
    out[1] = bend(y[0]!);
  },
  miss(y, out) {
    out[0] = y[0]! - far;
  },
});

describe('shoot', () => {
  it('solves a linear problem in one step', () => {
    const p = Float64Array.of(0);
    const shot = shoot(
      between((y) => y, 0, 1),
      p,
    );
    expect(shot.status).toBe('settled');
    expect(shot.residual).toBeLessThan(1e-10);
    expect(shot.iterations).toBeLessThanOrEqual(2);
    expect(p[0]).toBeCloseTo(1 / Math.sinh(1), 7);
  });

  it('finds unknowns at either end together: the length of an arc of given height and slope', () => {
    // A circle of radius 1 from its top: turned by a over the length a; the far end is to stand at the height cos 1, unknown a and the start's x.
    const p = Float64Array.of(0.4, 0.3);
    let length = 0;
    const shot = shoot(
      {
        size: 3,
        from: 0,
        to: 1,
        steps: 20,
        begin(unknowns, y) {
          length = unknowns[0]!;
          y[0] = unknowns[1]!;
          y[1] = 1;
          y[2] = 0;
        },
        slope(_, y, out) {
          out[0] = length * Math.cos(y[2]!);
          out[1] = -length * Math.sin(y[2]!);
          out[2] = length;
        },
        miss(y, out) {
          out[0] = y[0]! - 2;
          out[1] = y[1]! - Math.cos(1);
        },
      },
      p,
    );
    expect(shot.status).toBe('settled');
    expect(p[0]).toBeCloseTo(1, 7);
    expect(p[1]).toBeCloseTo(2 - Math.sin(1), 7);
  });

  it('gives nearer answers with more steps', () => {
    const error = (steps: number): number => {
      const p = Float64Array.of(0);
      shoot(
        between((y) => y, 0, 1, steps),
        p,
      );
      return Math.abs(p[0]! - 1 / Math.sinh(1));
    };
    expect(error(5) / error(10)).toBeGreaterThan(12);
  });

  // y = p x, missing by atan p: from p = 3 whole steps of Newton's method run away.
  const flat = (goal: (p: number) => number): BoundaryProblem => ({
    ...between(() => 0, 0, 0, 1),
    miss(y, out) {
      out[0] = goal(y[0]!);
    },
  });

  it('shortens its steps where a whole one would miss by more', () => {
    const p = Float64Array.of(3);
    expect(shoot(flat(Math.atan), p).status).toBe('settled');
    expect(p[0]).toBeCloseTo(0, 9);
  });

  it('says what went wrong and keeps the best unknowns', () => {
    const none = shoot(
      between(() => Number.NaN, 0, 1),
      Float64Array.of(0),
    );
    expect(none.status).toBe('not a number');
    const deaf = shoot({ ...between((y) => y, 0, 1), miss: (_, out) => out.fill(1) }, Float64Array.of(0));
    expect(deaf).toEqual({ status: 'singular', iterations: 0, residual: 1 });
    const p = Float64Array.of(3);
    const short = shoot(flat(Math.atan), p, { iterations: 1 });
    expect(short).toMatchObject({ status: 'too many steps', iterations: 1 });
    expect(short.residual).toBeCloseTo(Math.abs(Math.atan(p[0]!)), 14);
    // 1 + p² has no zero: the search comes to its least value.
    const lost = shoot(
      flat((value) => 1 + value * value),
      Float64Array.of(0.3),
    );
    expect(['stuck', 'singular']).toContain(lost.status);
    expect(lost.residual).toBeGreaterThanOrEqual(1);
  });
});

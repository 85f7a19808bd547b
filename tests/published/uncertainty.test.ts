import { describe, expect, it } from 'vitest';
import {
  latinHypercube,
  percentile,
  quantileOf,
  type Spread,
  seededRandom,
  sobolIndices,
  summarize,
} from '../../engine/numerics/index';
import { jsonOf } from './aero-rows';

/*
 * JCGM 101:2008, clauses 9.2.2, 9.2.3, 9.2.4 (from memory, reproduced by simulation) and 9.3 (from memory); T. Ishigami and T. Homma 1990 with A. Saltelli et
 * al., Global Sensitivity Analysis (2008); I. M. Sobol's g-function with its closed form. Each within the scatter of a run of that size: four standard
 * errors of a mean, of a deviation (σ/√(2n)), and of a percentile (√(p (1 − p)/n) over the density there, taken from the run).
 */
const file = jsonOf('uncertainty_examples.json');
const N = 200_000;
const SIGMAS = 4;

function run(spreads: readonly Spread[], model: (x: readonly number[]) => number): Float64Array {
  const random = seededRandom(20081);
  return Float64Array.from({ length: N }, () =>
    model(spreads.map((spread) => quantileOf(spread, Math.max(random(), 1e-300)))),
  );
}
const sum = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0);

/** Standard error of a percentile of a run: the slope of its own quantiles gives the density. */
function percentileError(sorted: Float64Array, p: number): number {
  const step = 0.005;
  const slope = (percentile(sorted, p + step) - percentile(sorted, p - step)) / (2 * step);
  return slope * Math.sqrt((p * (1 - p)) / N);
}

function expectLike(values: Float64Array, u: number, interval: readonly [number, number], printed = 0.005): void {
  const told = summarize(values);
  expect(Math.abs(told.deviation - u)).toBeLessThan((SIGMAS * told.deviation) / Math.sqrt(2 * N) + printed);
  for (const [p, end] of [
    [0.025, interval[0]],
    [0.975, interval[1]],
  ] as const) {
    const scatter = SIGMAS * percentileError(told.sorted, p);
    expect(Math.abs(percentile(told.sorted, p) - end)).toBeLessThan(scatter + printed);
  }
}

const rectangular = (deviation: number): Spread => ({
  kind: 'uniform',
  low: -deviation * Math.sqrt(3),
  high: deviation * Math.sqrt(3),
});

describe('propagation as published', () => {
  it('JCGM 101, 9.2.2: four normals', () => {
    const { u, interval95 } = file.jcgm101_9_2_2_normal.published;
    expectLike(run(Array(4).fill({ kind: 'normal', middle: 0, deviation: 1 }), sum), u, interval95);
  });
  it('JCGM 101, 9.2.3: four rectangular', () => {
    const { u, interval95 } = file.jcgm101_9_2_3_rectangular.published;
    expectLike(run(Array(4).fill(rectangular(1)), sum), u, interval95);
  });
  it('JCGM 101, 9.2.4: one of them ten times wider', () => {
    const { u_mc, interval95_mc } = file.jcgm101_9_2_4_unequal.published;
    expectLike(run([rectangular(1), rectangular(1), rectangular(1), rectangular(10)], sum), u_mc, interval95_mc, 0.06);
  });
  it('JCGM 101, 9.3: comparison of masses, which no first-order formula gets', () => {
    const values = run(
      [
        { kind: 'normal', middle: 100_000, deviation: 0.05 },
        { kind: 'normal', middle: 1.234, deviation: 0.02 },
        { kind: 'uniform', low: 1.1, high: 1.3 },
        { kind: 'uniform', low: 7000, high: 9000 },
        { kind: 'uniform', low: 7950, high: 8050 },
      ],
      ([mR, dmR, air, w, r]) => (mR! + dmR!) * (1 + (air! - 1.2) * (1 / w! - 1 / r!)) - 100_000,
    );
    const { y, u } = file.jcgm101_9_3_mass.published.mc;
    expectLike(values, u, file.jcgm101_9_3_mass.computed_here_4e6_samples.symmetric_interval95, 0.0005);
    expect(Math.abs(summarize(values).mean - y)).toBeLessThan((SIGMAS * u) / Math.sqrt(N) + 0.0001);
    expect(summarize(values).deviation).toBeGreaterThan(1.3 * file.jcgm101_9_3_mass.published.first_order.u);
  });
});

function indices(inputs: number, low: number, high: number, f: (x: readonly number[]) => number) {
  const n = 60_000;
  const u = latinHypercube(n, 2 * inputs, seededRandom(1990));
  const at = (column: Float64Array, k: number): number => low + (high - low) * column[k]!;
  const of = (columns: readonly Float64Array[]): Float64Array =>
    Float64Array.from({ length: n }, (_, k) => f(columns.map((column) => at(column, k))));
  const [a, b] = [u.slice(0, inputs), u.slice(inputs)];
  return sobolIndices(
    of(a),
    of(b),
    a.map((_, i) => of(a.map((column, j) => (j === i ? b[j]! : column)))),
  );
}

describe('sensitivity as published', () => {
  it.each([
    ['Ishigami', 3, -Math.PI, Math.PI, file.sobol_ishigami],
    ['g-function', 8, 0, 1, file.sobol_g_function],
  ] as const)('%s', (name, inputs, low, high, row) => {
    const ishigami = ([x, y, z]: readonly number[]) =>
      Math.sin(x!) + row.a * Math.sin(y!) ** 2 + row.b * z! ** 4 * Math.sin(x!);
    const g = (x: readonly number[]) =>
      x.reduce((product, value, k) => (product * (Math.abs(4 * value - 2) + row.a[k])) / (1 + row.a[k]), 1);
    const told = indices(inputs, low, high, name === 'Ishigami' ? ishigami : g);
    expect(Math.abs(told.variance / (row.variance ?? row.V) - 1)).toBeLessThan(0.03);
    for (let k = 0; k < inputs; k++) {
      expect(Math.abs(told.first[k]! - row.S1[k])).toBeLessThan(SIGMAS * told.firstError[k]! + 0.001);
      expect(Math.abs(told.total[k]! - row.ST[k])).toBeLessThan(SIGMAS * told.totalError[k]! + 0.001);
    }
  });
});

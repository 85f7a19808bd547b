import { expect, it } from 'vitest';
import { determine, leastSquares } from '../../engine/numerics/index';

/** Fit of y = f(x; p) with errors of one; the standard errors by the scatter of the residuals. */
function fitted(
  x: readonly number[],
  y: readonly number[],
  f: (x: number, p: Float64Array) => number,
  start: readonly number[],
) {
  const ends = start.map(() => Number.POSITIVE_INFINITY);
  const scale = Float64Array.from(start, (value) => Math.abs(value) || 1);
  const problem = {
    start: Float64Array.from(start),
    low: Float64Array.from(ends, (end) => -end),
    high: Float64Array.from(ends),
    scale,
  };
  const found = leastSquares(problem, (points) =>
    points.map((p) => Float64Array.from(x, (each, i) => f(each, p) - y[i]!)),
  );
  const { covariance } = determine(found.jacobian);
  const variance = found.sum / (x.length - start.length);
  const error = start.map((_, j) => Math.sqrt(variance * covariance[j]![j]!) * scale[j]!);
  const correlation = covariance[0]![1]! / Math.sqrt(covariance[0]![0]! * covariance[1]![1]!);
  return { ...found, error, correlation, deviation: Math.sqrt(variance) };
}

/*
 * JCGM 100:2008, H.3: calibration of a thermometer by a straight line, b = y1 + y2 (t − 20 °C). Data of table H.6 and results from
 * memory; the data give the results, so neither is misremembered. Half a unit of the last printed digit.
 */
it('straight line of the thermometer, JCGM 100 H.3', () => {
  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  const found = fitted(t, b, (x, p) => p[0]! + p[1]! * (x - 20), [0.1, -0.01]);
  expect(found.status).toBe('settled');
  expect(Math.abs(found.parameters[0]! - -0.1712)).toBeLessThan(0.00005);
  expect(Math.abs(found.parameters[1]! - 0.00218)).toBeLessThan(0.000005);
  expect(Math.abs(found.error[0]! - 0.0029)).toBeLessThan(0.00005);
  expect(Math.abs(found.error[1]! - 0.00067)).toBeLessThan(0.000005);
  expect(Math.abs(found.correlation - -0.93)).toBeLessThan(0.0005);
  expect(Math.abs(found.deviation - 0.0035)).toBeLessThan(0.00005);
});

/*
 * NIST Statistical Reference Datasets, nonlinear regression, Misra1a: y = b1 (1 − exp(−b2 x)), both starting values. Data and
 * certified values from memory; the residuals of the certified values give the certified sum of squares to all its digits.
 */
it.each([
  [500, 1e-4],
  [250, 5e-4],
])('Misra1a from %d, %d', (...start) => {
  const x = [77.6, 114.9, 141.1, 190.8, 239.9, 289, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1, 689.1, 760];
  const y = [10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.4, 75.47, 81.78];
  const found = fitted(x, y, (each, p) => p[0]! * (1 - Math.exp(-p[1]! * each)), start);
  const near = (value: number, certified: number, share: number): void =>
    expect(Math.abs(value / certified - 1)).toBeLessThan(share);
  expect(found.status).toBe('settled');
  near(found.parameters[0]!, 2.3894212918e2, 1e-6);
  near(found.parameters[1]!, 5.5015643181e-4, 1e-6);
  near(found.error[0]!, 2.7070075241, 1e-5);
  near(found.error[1]!, 7.2668688436e-6, 1e-5);
  near(found.sum, 1.2455138894e-1, 1e-9);
  near(found.deviation, 1.018787633e-1, 1e-9);
});

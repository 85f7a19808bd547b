import { describe, expect, it } from 'vitest';
import { datcomSlope, liftingLine, liftingLineOfChords, type Planform } from '../../../engine/physics/index';

const rectangle = (aspectRatio: number): Planform => ({
  inboardSpan: aspectRatio / 2,
  outboardSpan: aspectRatio / 2,
  rootChord: 1,
  inboardTipChord: 1,
  outboardTipChord: 1,
  inboardSweep: 0,
  outboardSweep: 0,
});
const quern: Planform = {
  inboardSpan: 0.515,
  outboardSpan: 0.485,
  rootChord: 0.23,
  inboardTipChord: 0.2,
  outboardTipChord: 0.2,
  inboardSweep: 0,
  outboardSweep: 0,
};
const mirror = (w: Planform): Planform => ({
  ...w,
  inboardSpan: w.outboardSpan,
  outboardSpan: w.inboardSpan,
  inboardTipChord: w.outboardTipChord,
  outboardTipChord: w.inboardTipChord,
});

/**
 * The same wing on horseshoe vortices along the quarter chord with downwash at each, straight wake: lifting-line theory again, by another
 * method (midpoints of a lattice), with the local speed V (1 + y/R).
 */
function horseshoes(w: Planform, a0: number, turn: number, n: number) {
  const b = w.inboardSpan + w.outboardSpan;
  const middle = (w.outboardSpan - w.inboardSpan) / 2;
  const edge = (k: number): number => middle - (b / 2) * Math.cos((k * Math.PI) / n);
  const y = Array.from({ length: n }, (_, k) => middle - (b / 2) * Math.cos(((k + 0.5) * Math.PI) / n));
  const chord = (at: number): number =>
    at < 0
      ? w.rootChord + ((w.inboardTipChord - w.rootChord) * -at) / w.inboardSpan
      : w.rootChord + ((w.outboardTipChord - w.rootChord) * at) / w.outboardSpan;
  // Γ_j/(½ c a0) + w_j = V_j α, w_j = Σ Γ_k/(4π) [1/(y_j − left_k) − 1/(y_j − right_k)].
  const rows = y.map((at, j) =>
    y.map(
      (_, k) =>
        (1 / (at - edge(k)) - 1 / (at - edge(k + 1))) / (4 * Math.PI) + (j === k ? 1 / (0.5 * chord(at) * a0) : 0),
    ),
  );
  const gamma = solve(
    rows,
    y.map((at) => 1 + at * turn),
  );
  let lift = 0;
  let moment = 0;
  let area = 0;
  gamma.forEach((g, k) => {
    const width = edge(k + 1) - edge(k);
    const local = g * (1 + y[k]! * turn) * width;
    lift += 2 * local;
    moment += 2 * local * y[k]!;
    area += chord(y[k]!) * width;
  });
  return { slope: lift / area, station: moment / lift };
}
function solve(rows: number[][], right: number[]): number[] {
  const n = right.length;
  const a = rows.map((row, i) => [...row, right[i]!]);
  for (let k = 0; k < n; k++) {
    const pivot = a.reduce((best, row, j) => (j >= k && Math.abs(row[k]!) > Math.abs(a[best]![k]!) ? j : best), k);
    [a[k], a[pivot]] = [a[pivot]!, a[k]!];
    for (let j = 0; j < n; j++) {
      if (j === k) continue;
      const factor = a[j]![k]! / a[k]![k]!;
      for (let c = k; c <= n; c++) a[j]![c]! -= factor * a[k]![c]!;
    }
  }
  return a.map((row, k) => row[n]! / row[k]!);
}

describe('a rectangular wing', () => {
  it('lifts in the middle in straight flight, and outboard of it in a circle', () => {
    for (const aspectRatio of [3, 5, 8]) {
      const line = liftingLine(rectangle(aspectRatio), 5.7);
      expect(line.station).toBeCloseTo(0, 14);
      expect(line.turn).toBeGreaterThan(0);
    }
  });
  it('grows toward the section slope', () => {
    const long = liftingLine(rectangle(400), 2 * Math.PI, 400).slope;
    expect(long).toBeGreaterThan(0.97 * 2 * Math.PI);
    expect(long).toBeLessThan(2 * Math.PI);
  });
});

describe('a wing of unequal panels', () => {
  it('has its mirror image on the other side', () => {
    const skew: Planform = { ...quern, inboardTipChord: 0.15, outboardSpan: 0.4 };
    const [one, other] = [liftingLine(skew, 5.7), liftingLine(mirror(skew), 5.7)];
    expect(other.slope).toBeCloseTo(one.slope, 12);
    expect(other.delta).toBeCloseTo(one.delta, 12);
    expect(other.station).toBeCloseTo(-one.station, 12);
    expect(other.turn).toBeCloseTo(one.turn, 12);
  });
  it('keeps slope and stations when all lengths are scaled', () => {
    const scale = (k: number): Planform => ({
      ...quern,
      inboardSpan: k * quern.inboardSpan,
      outboardSpan: k * quern.outboardSpan,
      rootChord: k * quern.rootChord,
      inboardTipChord: k * quern.inboardTipChord,
      outboardTipChord: k * quern.outboardTipChord,
    });
    const [one, big] = [liftingLine(quern, 5.7), liftingLine(scale(10), 5.7)];
    expect(big.slope).toBeCloseTo(one.slope, 11);
    expect(big.station / 10).toBeCloseTo(one.station, 11);
    expect(big.turn / 100).toBeCloseTo(one.turn, 11);
  });
  it('agrees with horseshoe vortices in slope and, through the change of V (1 + y/R), in lift station', () => {
    const line = liftingLine(quern, 5.7, 60);
    const R = 200;
    const [straight, turning] = [horseshoes(quern, 5.7, 0, 160), horseshoes(quern, 5.7, 1 / R, 160)];
    expect(line.slope / straight.slope).toBeCloseTo(1, 2);
    expect(line.station).toBeCloseTo(straight.station, 4);
    expect(line.turn / ((turning.station - straight.station) * R)).toBeCloseTo(1, 2);
  });
  it('has with 20 terms what it has with 200: slope within 1e-4, lift station in the circle within 0.01 mm', () => {
    const [few, many] = [liftingLine(quern, 5.7), liftingLine(quern, 5.7, 200)];
    expect(Math.abs(few.slope / many.slope - 1)).toBeLessThan(1e-4);
    expect(Math.abs(few.station + few.turn / 19.4 - many.station - many.turn / 19.4)).toBeLessThan(1e-5);
  });
});

describe('an elliptical wing', () => {
  const [b, rootChord, a0] = [1.2, 0.25, 5.7];
  const chordAt = (y: number): number => rootChord * Math.sqrt(1 - ((2 * y) / b) ** 2);
  const area = (Math.PI / 4) * b * rootChord;
  const A = (b * b) / area;
  const mu = (rootChord * a0) / (4 * b);
  it('has exactly the slope a0/(1 + a0/(π A)) and no more than the least induced drag, with any number of terms', () => {
    for (const terms of [3, 8, 25]) {
      const line = liftingLineOfChords(chordAt, b / 2, b / 2, area, a0, terms);
      expect(line.slope).toBeCloseTo(a0 / (1 + a0 / (Math.PI * A)), 12);
      expect(line.delta).toBeCloseTo(0, 20);
      expect(line.station).toBeCloseTo(0, 14);
    }
  });
  it('moves its lift outboard in a circle by b²/(16 R) [1 + (1 + μ)/(1 + 2 μ)], the closed form of the second term', () => {
    for (const terms of [3, 8, 25]) {
      const line = liftingLineOfChords(chordAt, b / 2, b / 2, area, a0, terms);
      expect(line.turn).toBeCloseTo(((b * b) / 16) * (1 + (1 + mu) / (1 + 2 * mu)), 13);
    }
  });
});

describe('closed forms of the lift slope', () => {
  it('of Helmbold and DATCOM are the same without sweep', () => {
    for (const [a0, A] of [
      [5.7, 4.65],
      [2 * Math.PI, 6],
      [6.1, 1.2],
    ] as const) {
      const x = a0 / (Math.PI * A);
      expect(datcomSlope(a0, A, 0)).toBeCloseTo(a0 / (Math.sqrt(1 + x * x) + x), 13);
    }
  });
  it('tend to π A/2 for short wings and to the section for long ones', () => {
    expect(datcomSlope(2 * Math.PI, 1e-4, 0) / ((Math.PI * 1e-4) / 2)).toBeCloseTo(1, 4);
    expect(datcomSlope(5.7, 1e6, 0)).toBeCloseTo(5.7, 4);
  });
  it('lose lift with sweep, either way alike', () => {
    expect(datcomSlope(5.7, 5, 0.4)).toBeLessThan(datcomSlope(5.7, 5, 0));
    expect(datcomSlope(5.7, 5, -0.4)).toBe(datcomSlope(5.7, 5, 0.4));
  });
});

it('refuses too few terms and a section that does not lift', () => {
  expect(() => liftingLine(quern, 5.7, 2)).toThrow(
    new RangeError('terms is 2; it must be a whole number of 3 or more'),
  );
  expect(() => liftingLine(quern, 0)).toThrow(new RangeError('section slope is 0; it must be greater than 0'));
});

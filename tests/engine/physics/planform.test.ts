import { describe, expect, it } from 'vitest';
import { chordLoadStation, measurePlanform, type Planform } from '../../../engine/physics/index';

const unequal: Planform = {
  inboardSpan: 0.7,
  outboardSpan: 0.5,
  rootChord: 0.25,
  inboardTipChord: 0.15,
  outboardTipChord: 0.2,
  inboardSweep: 0.2,
  outboardSweep: -0.1,
};
const rectangle: Planform = {
  inboardSpan: 0.5,
  outboardSpan: 0.5,
  rootChord: 0.2,
  inboardTipChord: 0.2,
  outboardTipChord: 0.2,
  inboardSweep: 0,
  outboardSweep: 0,
};

/** ∫ g(y, chord, leading edge) dy over the span by the midpoint rule. */
function overSpan(w: Planform, g: (y: number, c: number, edge: number) => number): number {
  const n = 20000;
  let sum = 0;
  for (const [span, tip, sweep, sign] of [
    [w.inboardSpan, w.inboardTipChord, w.inboardSweep, -1],
    [w.outboardSpan, w.outboardTipChord, w.outboardSweep, 1],
  ] as const) {
    for (let k = 0; k < n; k++) {
      const s = (span * (k + 0.5)) / n;
      const c = w.rootChord + ((tip - w.rootChord) * s) / span;
      sum += (g(sign * s, c, s * Math.tan(sweep)) * span) / n;
    }
  }
  return sum;
}

describe('a wing of two unequal panels', () => {
  const m = measurePlanform(unequal);
  it('has the area, mean chord, edge and moments that integration over the span gives', () => {
    expect(m.area).toBeCloseTo(
      overSpan(unequal, (_, c) => c),
      10,
    );
    expect(m.meanChord).toBeCloseTo(overSpan(unequal, (_, c) => c * c) / m.area, 9);
    expect(m.meanChordEdge).toBeCloseTo(overSpan(unequal, (_, c, edge) => c * edge) / m.area, 9);
    expect(m.quarterChord).toBeCloseTo(overSpan(unequal, (_, c, edge) => c * (edge + c / 4)) / m.area, 9);
    expect(m.centroidY).toBeCloseTo(overSpan(unequal, (y, c) => c * y) / m.area, 9);
    expect(m.secondMomentY).toBeCloseTo(
      overSpan(unequal, (y, c) => c * y * y),
      9,
    );
  });
  it('has span² over area as aspect ratio', () => {
    expect(m.aspectRatio).toBeCloseTo(1.2 ** 2 / m.area, 12);
  });
  it('puts a load on chord and local speed squared where integration puts it, to first order in span over radius', () => {
    const { station, turn } = chordLoadStation(m);
    const R = 40;
    const load = (y: number, c: number): number => c * (1 + y / R) ** 2;
    const exact = overSpan(unequal, (y, c) => y * load(y, c)) / overSpan(unequal, load);
    expect(station + turn / R).toBeCloseTo(exact, 4);
    expect(Math.abs(exact - station)).toBeGreaterThan(20 * Math.abs(station + turn / R - exact));
  });
});

describe('a rectangle', () => {
  const m = measurePlanform(rectangle);
  it('has its chord as mean chord and b²/12 as square of its radius', () => {
    expect(m.meanChord).toBeCloseTo(0.2, 15);
    expect(m.centroidY).toBe(0);
    expect(m.secondMomentY / m.area).toBeCloseTo(1 / 12, 15);
    expect(m.halfChordSweep).toBe(0);
  });
});

describe('a swept, untapered wing', () => {
  it('has the sweep of its edge at half chord', () => {
    const m = measurePlanform({ ...rectangle, inboardSweep: 0.3, outboardSweep: 0.3 });
    expect(m.halfChordSweep).toBeCloseTo(0.3, 14);
    expect(m.meanChordEdge).toBeCloseTo(0.25 * Math.tan(0.3), 14);
  });
});

it('refuses a panel without length or chord', () => {
  expect(() => measurePlanform({ ...rectangle, inboardSpan: 0 })).toThrow(
    new RangeError('panel span is 0; it must be greater than 0'),
  );
  expect(() => measurePlanform({ ...rectangle, outboardTipChord: -0.1 })).toThrow(
    new RangeError('tip chord is -0.1; it must be greater than 0'),
  );
});

import { describe, expect, it } from 'vitest';
import { chordLoadStation, liftingLine, measurePlanform, type Planform } from '../../../engine/physics/index';

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

describe('a wing whose panels are given by their edges', () => {
  const edgeOf = (span: number, tip: number, sweep: number): number[] => {
    const x = span * Math.tan(sweep);
    return [span, x, span, x + tip];
  };
  const edged: Planform = {
    ...unequal,
    inboardEdge: edgeOf(unequal.inboardSpan, unequal.inboardTipChord, unequal.inboardSweep),
    outboardEdge: edgeOf(unequal.outboardSpan, unequal.outboardTipChord, unequal.outboardSweep),
  };
  it('is that of spans, tip chords and sweeps for the edges of those', () => {
    const [by, as] = [measurePlanform(edged), measurePlanform(unequal)];
    for (const [key, value] of Object.entries(as)) {
      expect(Math.abs(by[key as keyof typeof by] - value)).toBeLessThan(1e-12 * Math.max(1, Math.abs(value)));
    }
    const [line, straight] = [liftingLine(edged, 5.7), liftingLine(unequal, 5.7)];
    for (const key of ['slope', 'delta', 'station', 'turn'] as const) expect(line[key]).toBeCloseTo(straight[key], 12);
  });
  it('may have one panel by its edge alone', () => {
    const one = measurePlanform({ ...unequal, inboardEdge: edged.inboardEdge! });
    expect(one.area).toBeCloseTo(measurePlanform(unequal).area, 14);
    expect(one.centroidY).toBeCloseTo(measurePlanform(unequal).centroidY, 14);
  });
  it('of half an ellipse has its area, chord and, with the same section, the slope of an elliptic wing', () => {
    const n = 160;
    const [half, root] = [0.6, 0.2];
    const edge = Array.from({ length: n + 1 }, (_, k) => {
      const angle = (Math.PI * k) / n;
      return [half * Math.sin(angle), (root / 2) * (1 - Math.cos(angle))];
    })
      .slice(1, -1)
      .flat();
    const ellipse: Planform = { ...rectangle, rootChord: root, inboardEdge: edge, outboardEdge: edge };
    const m = measurePlanform(ellipse);
    expect(m.span).toBe(1.2);
    expect(m.area / ((Math.PI / 4) * 1.2 * root)).toBeCloseTo(1, 3);
    expect(m.meanChord / ((8 / (3 * Math.PI)) * root)).toBeCloseTo(1, 3);
    expect(m.halfChordSweep).toBeCloseTo(0, 12);
    expect(m.quarterChord).toBeCloseTo(root / 2 - m.meanChord / 4, 4);
    const a0 = 5.7;
    const line = liftingLine(ellipse, a0);
    // Glauert, The Elements of Aerofoil and Airscrew Theory, ch. XI: a = a_0/(1 + a_0/(π A)) of elliptic loading.
    expect(line.slope / (a0 / (1 + a0 / (Math.PI * m.aspectRatio)))).toBeCloseTo(1, 2);
    expect(line.delta).toBeLessThan(2e-3);
  });
  it('refuses a corner on the other side of the centreline', () => {
    expect(() => measurePlanform({ ...rectangle, inboardEdge: [0.5, 0, 0.5, 0.2, -0.1, 0.3] })).toThrow(
      new RangeError('least distance of a corner from the centreline is -0.1; it must be 0 or greater'),
    );
  });
});

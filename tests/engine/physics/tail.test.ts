import { describe, expect, it } from 'vitest';
import { downwashGradient, flapEffect, hingedEffect, neutralPoint, tailVolume } from '../../../engine/physics/index';

describe('downwash', () => {
  it('far behind an elliptical wing is twice that at the wing, which is what the wing loses of its section slope', () => {
    const [a0, A] = [5.7, 6];
    const a = a0 / (1 + a0 / (Math.PI * A));
    // At the wing α_i = C_L/(π A); a = a0 (1 − dα_i/dα).
    expect(downwashGradient(a, A) / 2).toBeCloseTo(1 - a / a0, 14);
  });
});

describe('a flap', () => {
  it('does nothing without chord and all with the whole chord', () => {
    expect(flapEffect(0)).toBeCloseTo(0, 14);
    expect(flapEffect(1)).toBeCloseTo(1, 14);
  });
  it('of half the chord does 1/2 + 1/π, of a small chord 4 √E/π', () => {
    expect(flapEffect(0.5)).toBeCloseTo(0.5 + 1 / Math.PI, 14);
    expect(flapEffect(1e-6) / ((4 / Math.PI) * 1e-3)).toBeCloseTo(1, 5);
  });
  it('agrees with the integral of thin-aerofoil theory', () => {
    // dα_0/dδ = (1/π) ∫ slope (1 − cos θ) dθ over the flap, slope 1 from the hinge at x = ½ (1 − cos θ) back.
    const E = 0.3;
    const n = 20000;
    const hinge = Math.acos(1 - 2 * (1 - E));
    let sum = 0;
    for (let k = 0; k < n; k++) {
      const theta = hinge + ((Math.PI - hinge) * (k + 0.5)) / n;
      sum += ((1 - Math.cos(theta)) * (Math.PI - hinge)) / n / Math.PI;
    }
    expect(flapEffect(E)).toBeCloseTo(sum, 8);
  });
  it('loses some of it at the hinge gap, and nothing where all of it turns', () => {
    expect(hingedEffect(0.4)).toBeCloseTo(0.85 * flapEffect(0.4), 14);
    expect(hingedEffect(1)).toBe(1);
  });
  it('cannot be longer than the chord', () => {
    expect(() => flapEffect(1.2)).toThrow(new RangeError('flap share of the chord is 1.2; it must lie from 0 to 1'));
  });
});

describe('the neutral point', () => {
  const wing = { x: 0.054, strength: 0.215 * 3.9 };
  const tail = { x: 0.47, strength: 0.036 * 3.8 * (1 - 0.53) };
  it('of one piece is where that piece is', () => {
    expect(neutralPoint([wing], 0)).toBeCloseTo(0.054, 15);
  });
  it('is where a small change of angle makes no moment', () => {
    const x = neutralPoint([wing, tail], 0.002);
    expect(wing.strength * (x - wing.x) + tail.strength * (x - tail.x) + 0.002).toBeCloseTo(0, 15);
  });
  it('moves aft with the tail and forward with the fuselage', () => {
    expect(neutralPoint([wing, tail], 0)).toBeGreaterThan(neutralPoint([wing], 0));
    expect(neutralPoint([wing, tail], 0.002)).toBeLessThan(neutralPoint([wing, tail], 0));
  });
  it('is the textbook form exactly when the tail arm runs from the neutral point', () => {
    const [chord, area, edge] = [0.215, 0.215, 0];
    const x = neutralPoint([wing, tail], 0);
    const volume = tailVolume(tail.x - x, 0.036, chord, area);
    // J. D. Anderson, Introduction to Flight, ch. 7: h_n = h_ac + V_H (a_t/a)(1 − dε/dα).
    expect((wing.x - edge) / chord + volume * (3.8 / 3.9) * (1 - 0.53)).toBeCloseTo((x - edge) / chord, 14);
  });
  it('needs something that lifts', () => {
    expect(() => neutralPoint([], 0)).toThrow(new RangeError('total lift strength is 0; it must be greater than 0'));
  });
});

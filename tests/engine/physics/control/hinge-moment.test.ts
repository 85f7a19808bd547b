import { describe, expect, it } from 'vitest';
import { integrate } from '../../../../engine/numerics/index';
import {
  flapEffect,
  hingeByDeflection,
  hingeByIncidence,
  hingeMoment,
  lineDifference,
  pullToHold,
  tailLiftAfter,
} from '../../../../engine/physics/index';

/** Moment about the hinge of the pressures that thin-aerofoil theory gives, by the Fourier series of a bent plate, summed and integrated. */
function bySeries(share: number, incidence: number, deflection: number): number {
  const hinge = Math.acos(2 * share - 1);
  const terms = 4000;
  const first = incidence + (deflection * (Math.PI - hinge)) / Math.PI;
  // ∫ (cos θ_h − cos θ) sin θ sin nθ dθ from hinge to trailing edge, by its antiderivative.
  const part = (n: number): number => {
    const inside = (t: number): number => {
      const cosines = (k: number): number => (k === 0 ? t : Math.sin(k * t) / k);
      const flat = 0.5 * Math.cos(hinge) * (cosines(n - 1) - cosines(n + 1));
      return flat - 0.25 * (cosines(Math.abs(n - 2)) - cosines(n + 2));
    };
    return inside(Math.PI) - inside(hinge);
  };
  let sum = first * integrate((t) => (1 + Math.cos(t)) * (Math.cos(hinge) - Math.cos(t)), hinge, Math.PI, 24);
  for (let n = 1; n <= terms; n++) sum += ((2 * deflection * Math.sin(n * hinge)) / (n * Math.PI)) * part(n);
  return -sum / (share * share);
}

describe('hinge moment coefficients', () => {
  it('are those of a flat plate about its leading edge where all of it turns', () => {
    expect(hingeByIncidence(1)).toBeCloseTo(-Math.PI / 2, 12);
    expect(hingeByDeflection(1)).toBeCloseTo(-Math.PI / 2, 12);
  });
  it('are the moments of the pressures, summed term by term', () => {
    for (const share of [0.2, 0.34, 0.5, 0.8]) {
      expect(hingeByIncidence(share)).toBeCloseTo(bySeries(share, 1, 0), 9);
      expect(hingeByDeflection(share)).toBeCloseTo(bySeries(share, 0, 1), 5);
    }
  });
  it('refuse no elevator at all', () => {
    expect(() => hingeByIncidence(0)).toThrow('elevator share of the chord is 0; it must be greater than 0');
    expect(() => hingeByDeflection(1.1)).toThrow('elevator share of the chord is 1.1; it must lie from 0 to 1');
  });
});

const elevator = {
  area: 0.036,
  meanChord: 0.09,
  chordShare: 0.4,
  sectionSlope: 5.7,
  effect: flapEffect(0.4),
  byIncidence: hingeByIncidence(0.4),
  byDeflection: hingeByDeflection(0.4),
};

describe('hinge moment', () => {
  it('presses the trailing edge down where it is up, and grows with the square of the speed', () => {
    const one = hingeMoment(elevator, 100, tailLiftAfter(0, 3.8, elevator.effect, 0.3), 0.3);
    expect(one).toBeGreaterThan(0);
    expect(hingeMoment(elevator, 400, tailLiftAfter(0, 3.8, elevator.effect, 0.3), 0.3)).toBeCloseTo(4 * one, 12);
    expect(hingeMoment(elevator, 100, tailLiftAfter(0, 3.8, elevator.effect, -0.3), -0.3)).toBeCloseTo(-one, 15);
  });
  it('is that of the section where the tail is endlessly long', () => {
    // a_t = a_0: the section's incidence stays 0 while the elevator goes.
    const lift = tailLiftAfter(0, 5.7, elevator.effect, 0.2);
    const q = 300;
    expect(hingeMoment(elevator, q, lift, 0.2)).toBeCloseTo(
      -q * 0.4 * 0.4 * 0.036 * 0.09 * elevator.byDeflection * 0.2,
      15,
    );
  });
  it('of a plate that turns as a whole is its lift at the quarter chord', () => {
    const whole = { ...elevator, chordShare: 1, effect: 1, byIncidence: -Math.PI / 2, byDeflection: -Math.PI / 2 };
    const slope = 2 * Math.PI;
    const lift = tailLiftAfter(0, slope, 1, 0.1);
    const up = hingeMoment({ ...whole, sectionSlope: slope }, 200, lift, 0.1);
    expect(up).toBeCloseTo(200 * 0.036 * slope * 0.1 * (0.09 / 4), 12);
  });
});

describe('what the lines hold', () => {
  const held = { moment: 0.1, upLever: 0.038, downLever: 0.038, pivotFriction: 0 };
  it('takes the whole pull in one line at the least', () => {
    const least = pullToHold(held);
    expect(least).toBeCloseTo(0.1 / 0.038, 12);
    expect(lineDifference(held, least)).toBeCloseTo(least, 12);
    expect(lineDifference({ ...held, moment: -0.1 }, least)).toBeCloseTo(-least, 12);
  });
  it('keeps the balance about the pivot, friction and unlike arms with it', () => {
    const uneven = { moment: 0.08, upLever: 0.036, downLever: 0.03, pivotFriction: 0.0004 };
    const difference = lineDifference(uneven, 20);
    const [up, down] = [(20 + difference) / 2, (20 - difference) / 2];
    expect(up * 0.036 - down * 0.03).toBeCloseTo(0.08 + 20 * 0.0004, 12);
    const least = pullToHold(uneven);
    expect(lineDifference(uneven, least)).toBeCloseTo(least, 12);
  });
  it('holds nothing where friction takes the arm, and needs nothing for nothing', () => {
    expect(pullToHold({ ...held, pivotFriction: 0.04 })).toBe(Number.POSITIVE_INFINITY);
    expect(pullToHold({ ...held, moment: 0 })).toBe(0);
  });
});

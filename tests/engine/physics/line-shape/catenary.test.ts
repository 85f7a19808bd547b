import { describe, expect, it } from 'vitest';
import { catenary } from '../../../../engine/physics/index';

describe('catenary', () => {
  it('is the parabola where it hangs little', () => {
    const { sag, length, nearSlope, farSlope } = catenary(18.3, 0, 25, 0.012);
    expect(sag / ((0.012 * 18.3 ** 2) / (8 * 25))).toBeCloseTo(1, 5);
    expect((length - 18.3) / ((8 * sag ** 2) / (3 * 18.3))).toBeCloseTo(1, 4);
    expect(nearSlope).toBeCloseTo(-farSlope, 15);
    expect(farSlope).toBeCloseTo((4 * sag) / 18.3, 6);
  });

  it('balances its own weight, between ends of any height', () => {
    for (const rise of [0, 3, -8, 40]) {
      const { length, nearSlope, farSlope, nearTension, farTension } = catenary(20, rise, 5, 0.6);
      expect(5 * (farSlope - nearSlope)).toBeCloseTo(0.6 * length, 10);
      // Tension grows by weight times height.
      expect(farTension - nearTension).toBeCloseTo(0.6 * rise, 10);
      expect(nearTension).toBeCloseTo(5 * Math.hypot(1, nearSlope), 12);
    }
  });

  it('sags most where it runs along the straight line', () => {
    const [span, rise, H, w] = [20, 6, 5, 0.6];
    const { sag, nearSlope, parameter } = catenary(span, rise, H, w);
    const start = parameter * Math.asinh(nearSlope);
    const below = (x: number) =>
      (rise / span) * x - parameter * (Math.cosh((start + x) / parameter) - Math.cosh(start / parameter));
    expect(below(span)).toBeCloseTo(0, 12);
    let most = 0;
    for (let x = 0; x <= span; x += 0.001) most = Math.max(most, below(x));
    expect(sag).toBeCloseTo(most, 7);
  });

  it('is mirrored by exchanging its ends', () => {
    const [up, down] = [catenary(20, 6, 5, 0.6), catenary(20, -6, 5, 0.6)];
    expect(down.length).toBeCloseTo(up.length, 12);
    expect(down.sag).toBeCloseTo(up.sag, 12);
    expect(down.nearSlope).toBeCloseTo(-up.farSlope, 12);
    expect(down.nearTension).toBeCloseTo(up.farTension, 12);
  });

  it('refuses a line without weight or pull', () => {
    expect(() => catenary(20, 0, 0, 0.6)).toThrow(new RangeError('level pull is 0; it must be greater than 0'));
    expect(() => catenary(20, 0, 5, 0)).toThrow(new RangeError('weight per length is 0; it must be greater than 0'));
    expect(() => catenary(20, Number.NaN, 5, 1)).toThrow(new RangeError('rise is NaN; it must be a finite number'));
  });
});

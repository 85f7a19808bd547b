import { describe, expect, it } from 'vitest';
import { shutOffs } from '../../../../engine/physics/wind/index';

const TURN = 2 * Math.PI;
const misses = (azimuth: number, whole: number, goal: number): number => {
  const left = (azimuth + whole - goal) / TURN;
  return Math.abs(left - Math.round(left)) * TURN;
};

describe('where to shut off', () => {
  it('is one place where the glide is the same from everywhere', () => {
    const { ways } = shutOffs(() => 5, 1);
    expect(ways).toHaveLength(1);
    expect(ways[0]!.whole).toBeCloseTo(5, 9);
    expect(misses(ways[0]!.azimuth, 5, 1)).toBeLessThan(1e-6);
  });
  it('are several places where the glide hangs strongly on where it begins; the latest comes first, and all are met', () => {
    const whole = (azimuth: number): number => 6 - 2.5 * Math.sin(azimuth);
    const { ways } = shutOffs(whole, 6);
    expect(ways).toHaveLength(3);
    for (const way of ways) {
      expect(way.whole).toBeCloseTo(whole(way.azimuth), 5);
      expect(misses(way.azimuth, whole(way.azimuth), 6)).toBeLessThan(1e-5);
    }
    expect(ways[0]!.whole).toBeLessThan(ways[1]!.whole);
    expect(ways[1]!.whole).toBeLessThan(ways[2]!.whole);
  });
  it('moves little when a little changes', () => {
    const at = (size: number): number => shutOffs((azimuth) => size - 0.9 * Math.sin(azimuth), 2).ways[0]!.whole;
    for (let size = 5; size < 12; size += 0.1) expect(Math.abs(at(size + 0.001) - at(size))).toBeLessThan(0.011);
  });
  it('is nowhere where no glide can be flown, and passes over a step', () => {
    expect(shutOffs(() => Number.NaN, 1).ways).toEqual([]);
    const stepped = (azimuth: number): number => (azimuth < 2 ? 3 : 7);
    for (const way of shutOffs(stepped, 1).ways)
      expect(misses(way.azimuth, stepped(way.azimuth), 1)).toBeLessThan(1e-3);
  });
});

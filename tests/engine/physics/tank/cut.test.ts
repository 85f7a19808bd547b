import { describe, expect, it } from 'vitest';
import { cutCorner, type Place, solidOf, tankShape } from '../../../../engine/physics/index';

const [L, W, H] = [0.07, 0.03, 0.04];
const box = tankShape({ length: L, width: W, height: H, edgeHeight: H, taper: 0 });
const half: Place = [L / 2, W / 2, H / 2];
const NO = Number.NaN;
const taken = (...cuts: Place[]): number =>
  L * W * H - solidOf(cuts.reduce((left, cut) => cutCorner(left, half, cut), box)).volume;
const close = (found: number, wanted: number): void => expect(found / wanted).toBeCloseTo(1, 9);

describe('cuts of a tank', () => {
  it('leave it whole where nothing is typed', () => {
    expect(cutCorner(box, half, [NO, NO, NO])).toBe(box);
  });
  it('take off a corner, an edge or an end, by the closed forms', () => {
    close(taken([0.02, 0.01, 0.015]), (0.02 * 0.01 * 0.015) / 6);
    close(taken([0.02, 0.01, NO]), (0.02 * 0.01 * H) / 2);
    close(taken([NO, NO, 0.005]), L * W * 0.005);
  });
  it('take off the corner that the signs say', () => {
    const rear = solidOf(cutCorner(box, half, [0.02, 0.01, NO])).centroid;
    const front = solidOf(cutCorner(box, half, [-0.02, -0.01, NO])).centroid;
    expect(rear[0]).toBeLessThan(0);
    for (const k of [0, 1, 2]) expect(front[k]).toBeCloseTo(-rear[k]!, 12);
  });
  it('narrow the front end over the whole length', () => {
    close(taken([-L, 0.01, NO]), (L * 0.01 * H) / 2);
  });
  it('add up where they do not meet, and make a pyramid of a box', () => {
    close(taken([0.01, 0.01, 0.01], [-0.01, -0.01, -0.01]), 2 * taken([0.01, 0.01, 0.01]));
    // Past the middle of the box: what is left is the opposite corner.
    const left = cutCorner(box, half, [3 * L - 0.03, 3 * W - (0.03 * W) / L, 3 * H - (0.03 * H) / L]);
    close(solidOf(left).volume, (0.03 * ((0.03 * W) / L) * ((0.03 * H) / L)) / 6);
  });
});

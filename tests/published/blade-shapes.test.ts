import { describe, expect, it } from 'vitest';
import { bladeShapes } from '../../engine/library/index';
import { measuredPropellers } from './propeller-rows';

/*
 * The blade shapes of the library are means of measured outlines (UIUC Propeller Database, as in `propeller-rows.ts`): chord over radius, and the
 * pitch of each station over the marked one, with all angles moved so that the one at 75 % radius is that of the mark.
 */
const MADE_FROM: Readonly<Record<string, readonly string[]>> = {
  sport: ['9x6 thick sport', '10x6 thick sport', '9x4 thick free-flight'],
  moulded: ['10x6 nylon gf combustion', '9x5 nylon combustion'],
  narrow: ['10x5 thin', 'NR640'],
  even: ['DA4002'],
  broad: ['10x4.7 thin slow', '10x7 thin slow'],
};
const measured = (name: string) => {
  const found = measuredPropellers.filter((each) => each.name.startsWith(name) && each.blade.length > 0);
  expect(found.length, name).toBe(1);
  return found[0]!;
};
/** Straight between the stations on either side. */
function between(xs: readonly number[], ys: readonly number[], x: number): number {
  const k = Math.max(
    1,
    xs.findIndex((each) => each >= x - 1e-9),
  );
  const share = (x - xs[k - 1]!) / (xs[k]! - xs[k - 1]!);
  return ys[k - 1]! + share * (ys[k]! - ys[k - 1]!);
}
const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

describe.each(bladeShapes.map((shape) => [shape.name, shape] as const))('blade shape %s', (name, shape) => {
  const made = MADE_FROM[name]!.map(measured);
  it('has the chords that were measured', () => {
    for (const [k, share] of shape.radiusShare.entries()) {
      const chords = made.map(({ blade }) =>
        between(
          blade.map((each) => each.radiusShare),
          blade.map((each) => each.chordShare),
          share,
        ),
      );
      expect(Math.abs(shape.chordShare[k]! - mean(chords)), `${share}`).toBeLessThan(0.00051);
    }
  });
  it('has the pitch that was measured', () => {
    for (const [k, share] of shape.radiusShare.entries()) {
      const pitches = made.map(({ blade, diameter, pitch }) => {
        const angle = (at: number): number =>
          between(
            blade.map((each) => each.radiusShare),
            blade.map((each) => each.angle),
            at,
          );
        const marked = Math.atan(pitch / (0.75 * Math.PI * diameter));
        return (Math.PI * diameter * share * Math.tan(angle(share) - angle(0.75) + marked)) / pitch;
      });
      expect(Math.abs(shape.pitchShare[k]! - mean(pitches)), `${share}`).toBeLessThan(0.0051);
    }
  });
});

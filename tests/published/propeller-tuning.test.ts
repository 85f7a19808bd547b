import { describe, expect, it } from 'vitest';
import { newTuning, type PulledState, THRUST_BAND, tunedBlade, tunePropeller } from '../../engine/physics/index';
import { computedPropeller, computedState, designPoint } from './propeller-agreement';
import { type MeasuredPropeller, type MeasuredState, measuredPropellers } from './propeller-rows';

/*
 * UIUC Propeller Database, as in `propeller-rows.ts`. Of each measured propeller one or two points tune the computed one; the rows left out judge it.
 * The flight is the row nearest to 0.95 of the advance ratio of best efficiency; the flying range is taken from 0.7 of it to a little beyond the best
 * efficiency, 1.07. Further up the thrust runs out and the share of it that is off grows.
 */
const AIR = { kinematicViscosity: 1.4607e-5, soundSpeed: 340.29 };
const nearest = (rows: readonly MeasuredState[], off: (row: MeasuredState) => number): MeasuredState =>
  rows.reduce((near, row) => (Math.abs(off(row)) < Math.abs(off(near)) ? row : near));
const pulled = ({ rpm, J, CT }: MeasuredState): PulledState => ({ turns: rpm / 60, advanceRatio: J, thrust: CT });

function points(propeller: MeasuredPropeller) {
  const wanted = 0.95 * designPoint(propeller).J;
  const flying = nearest(propeller.moving, (row) => row.J - wanted);
  const still = nearest(propeller.still, (row) => row.rpm - flying.rpm);
  const between = (low: number, high: number) =>
    propeller.moving.filter((row) => row !== flying && row.J >= low * flying.J && row.J <= high * flying.J);
  return { flying, still, rest: between(0.7, 1.07), beyond: between(1.07, 1.15) };
}

type Which = readonly ('still' | 'flying')[];

function tunedBy(propeller: MeasuredPropeller, which: Which) {
  const at = points(propeller);
  const blade = computedPropeller(propeller);
  const tuning = newTuning();
  if (which.length > 0) {
    tunePropeller(
      blade,
      AIR,
      which.map((name) => pulled(at[name])),
      tuning,
    );
    expect(tuning.status).toBe('settled');
  }
  return tunedBlade(blade, tuning.shift, tuning.chordFactor);
}

/** Errors of thrust of the rows left out, as shares. */
function leftOut(propeller: MeasuredPropeller, which: Which): number[] {
  const tuned = tunedBy(propeller, which);
  return points(propeller).rest.map((row) => computedState(tuned, row).thrust / row.CT - 1);
}

const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
const overAll = (which: Which): number =>
  rootMeanSquare(measuredPropellers.map((each) => rootMeanSquare(leftOut(each, which))));

describe('a propeller tuned by its pull at rest and in flight', () => {
  it.each(measuredPropellers)('$name: rows left out come back within 6 % over the flying range', (propeller) => {
    const errors = leftOut(propeller, ['still', 'flying']);
    expect(errors.length).toBeGreaterThanOrEqual(2);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(0.06);
    const tuned = tunedBy(propeller, ['still', 'flying']);
    for (const row of points(propeller).beyond) {
      expect(Math.abs(computedState(tuned, row).thrust / row.CT - 1)).toBeLessThan(0.13);
    }
  });
  it('was off by as much as 28 % before', () => {
    const before = measuredPropellers.map((each) => Math.max(...leftOut(each, []).map(Math.abs)));
    expect(Math.max(...before)).toBeGreaterThan(0.28);
    expect(before.filter((error) => error > 0.06).length).toBeGreaterThan(8);
  });
  it.each([
    [[], THRUST_BAND.nothing],
    [['still'], THRUST_BAND.still],
    [['flying'], THRUST_BAND.flying],
    [['still', 'flying'], THRUST_BAND.both],
  ] as const)('by %j the band that is told is that over all propellers', (which, band) => {
    const found = overAll(which);
    expect(found).toBeLessThanOrEqual(band);
    expect(found).toBeGreaterThan(band - 0.012);
  });
});

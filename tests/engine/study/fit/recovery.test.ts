import { describe, expect, it } from 'vitest';
import type { LogRow } from '../../../../engine/sheet/document';
import { setLive } from '../../../../engine/sheet/live';
import { fitNow } from '../../../../engine/study/fit/index';
import { library } from '../../../../engine/study/index';
import { FLIGHTS, fitOf, fitted, flown, LAP, logOf, openWith, rowsOf } from './flown';

const TRUE = { flight: { drag_factor: '1.18' }, engine: { power_factor: '0.93' } };
const FACTORS = ['flight.drag_factor', 'engine.power_factor'];
const HARDLY =
  /^The log hardly tells the drag factor of Level flight and the power factor of Engine and propeller apart: their correlation is 0\.99\d\. Each may be far off as long as the other makes up for it\.$/;
/** Texts of the rows by their paths. */
const textsOf = (rows: readonly LogRow[]): [string, string][] =>
  rows.flatMap((row, k) =>
    Object.entries({ time: row.time, ...row.values }).map(([name, text]): [string, string] => [
      `flown.row${k + 1}.${name}`,
      text,
    ]),
  );
const made = flown(FLIGHTS, TRUE);

describe('factors that made the flights', () => {
  it('are found again without noise', () => {
    const found = fitted([logOf(rowsOf(FLIGHTS, made)), fitOf(FACTORS)]);
    // A racer at nearly one speed: true of flights, and said.
    expect(found.sentences).toEqual([expect.stringMatching(HARDLY)]);
    expect(found).toMatchObject({ state: 'settled', takeable: true, freedom: 22, errors: 'stated' });
    expect(Math.abs(found.factors[0]!.value / 1.18 - 1)).toBeLessThan(1e-6);
    expect(Math.abs(found.factors[1]!.value / 0.93 - 1)).toBeLessThan(1e-6);
    expect(found.scatter).toBeLessThan(1e-5);
    expect(found.scatterBefore).toBeGreaterThan(1);
    expect(found.iterations).toBeLessThan(12);
  });

  it('are found in wind too, from the mean time of a lap', () => {
    const flights = [17, 19].map((lines, k) => ({ lines, wind: 2 + 2 * k }));
    const rows = rowsOf(flights, flown(flights, { flight: TRUE.flight }, 'thrust_law'));
    const refit = (of: readonly LogRow[]) =>
      fitted(
        [LAP, logOf(of, { time: 'lap.lap_time' }), fitOf(['flight.drag_factor'], { wanted: ['lap.lap_time'] })],
        {},
        'thrust_law',
      );
    const found = refit(rows);
    expect(Math.abs(found.factors[0]!.value / 1.18 - 1)).toBeLessThan(1e-5);
    // Without the wind of the day the laps tell of another model.
    const calm = refit(rows.map((row) => ({ ...row, values: { ...row.values, wind: '' } })));
    expect(Math.abs(calm.factors[0]!.value / 1.18 - 1)).toBeGreaterThan(1e-3);
  }, 180_000);

  it('are covered by the standard errors as often as these say', () => {
    /*
     * Noise of exactly the stated errors: (found − true)/error is nearly standard normal. Of n runs the share within one error is
     * 0.683 with a deviation of √(0.683 · 0.317/n); the mean square of the whole is 1 with √(2/n). Both within four deviations. The
     * weighted sum of squares at the fit is χ² of the freedom: mean f, deviation √(2 f/n) of the mean.
     */
    const n = 30;
    // An engine by thrust law, which says nothing of rpm, is flown fast.
    const fast = flown(FLIGHTS, TRUE, 'thrust_law');
    const counted = { wanted: ['flight.lap_time', 'flight.pull_at_handle'] };
    let live = openWith([logOf(rowsOf(FLIGHTS, fast)), fitOf(FACTORS, counted)], {}, 'thrust_law');
    const offs: number[][] = [[], []];
    let sum = 0;
    for (let seed = 1; seed <= n; seed++) {
      live = setLive(live, textsOf(rowsOf(FLIGHTS, fast, { seed })), library).live;
      const found = fitNow(live, 'found');
      expect(found.takeable).toBe(true);
      for (const [j, truth] of [1.18, 0.93].entries()) {
        offs[j]!.push((found.factors[j]!.value - truth) / found.factors[j]!.error);
      }
      sum += found.scatter ** 2 * found.freedom;
    }
    for (const off of offs) {
      const within = off.filter((each) => Math.abs(each) < 1).length / n;
      expect(Math.abs(within - 0.6827)).toBeLessThan(4 * Math.sqrt((0.6827 * 0.3173) / n));
      const square = off.reduce((total, each) => total + each * each, 0) / n;
      expect(Math.abs(square - 1)).toBeLessThan(4 * Math.sqrt(2 / n));
    }
    expect(Math.abs(sum / n - 14)).toBeLessThan(4 * Math.sqrt((2 * 14) / n));
  }, 180_000);

  it('by the scatter of the laps have errors that grow with it', () => {
    const rows = rowsOf(FLIGHTS, made, { seed: 7 });
    const stated = fitted([logOf(rows), fitOf(FACTORS)]);
    const scattered = fitted([logOf(rows), fitOf(FACTORS, { errors: 'scatter' })]);
    expect(scattered.errors).toBe('scatter');
    expect(scattered.factors[0]!.value).toBeCloseTo(stated.factors[0]!.value, 9);
    expect(scattered.factors[0]!.error / stated.factors[0]!.error).toBeCloseTo(stated.scatter, 6);
  });

  it('counts ten laps as ten times as sure as one', () => {
    const time = { wanted: ['flight.lap_time'] };
    const one = fitted([logOf(rowsOf(FLIGHTS, made, { laps: 1 })), fitOf(['flight.drag_factor'], time)], {
      engine: TRUE.engine,
    });
    const ten = fitted([logOf(rowsOf(FLIGHTS, made, { laps: 10 })), fitOf(['flight.drag_factor'], time)], {
      engine: TRUE.engine,
    });
    expect(one.numbers).toHaveLength(8);
    expect(one.factors[0]!.error / ten.factors[0]!.error).toBeCloseTo(10, 4);
  });

  it('begins from what a block estimates where the field is blank', () => {
    const rows = rowsOf(FLIGHTS, flown(FLIGHTS, { wing: { profile_drag: '0.021' } }));
    const found = fitted([logOf(rows), fitOf(['wing.profile_drag'])]);
    expect(found.factors[0]!.before).toBeGreaterThan(0.005);
    expect(found.factors[0]!.value).toBeCloseTo(0.021, 8);
  });
});

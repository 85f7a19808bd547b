import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  atNeedle,
  bestNeedle,
  correctedLapTime,
  lapsOfFilling,
  type Race,
  raceOf,
  stintsOf,
  thrustInStandardAir,
} from '../../../../engine/physics/index';

/** 20 laps under power a filling, no run, no glide: sums that can be done in the head. */
const PLAIN: Race = {
  laps: 100,
  lapTime: 4,
  fuelPerLap: 2e-6,
  usable: 40e-6,
  reserve: 0,
  runLaps: 0,
  runTime: 0,
  glideLaps: 0,
  glideTime: 0,
  catchTime: 2,
  restartTime: 3,
  refuelRate: 10e-6,
};
const REAL: Race = { ...PLAIN, reserve: 2, runLaps: 0.2, runTime: 2.5, glideLaps: 1.5, glideTime: 9 };

const races = fc
  .record({
    laps: fc.integer({ min: 1, max: 300 }),
    usable: fc.double({ min: 10e-6, max: 200e-6, noNaN: true }),
    reserve: fc.double({ min: 0, max: 3, noNaN: true }),
    glideLaps: fc.double({ min: 0, max: 6, noNaN: true }),
    runTime: fc.double({ min: 0, max: 4, noNaN: true }),
  })
  .map((some): Race => ({ ...REAL, ...some }));

describe('a race', () => {
  it('of laps that divide evenly stops four times in a hundred laps of twenty', () => {
    // Five fillings of 20 laps: 400 s in the air, four stops of 2 + 40/10 + 3 s.
    expect(raceOf(PLAIN)).toMatchObject({
      status: 'settled',
      stops: 4,
      lapsPerTank: 20,
      time: 436,
      pitTime: 36,
      slowTime: 0,
      left: 0,
    });
  });

  it('takes at the last stop only what the rest needs', () => {
    const taken = stintsOf({ ...PLAIN, laps: 101 }).map((stint) => stint.taken * 1e6);
    expect(taken).toHaveLength(6);
    expect(taken.at(-1)).toBeCloseTo(2, 9);
  });

  it('is so many laps when nothing has to stop', () => {
    const answer = raceOf({ ...PLAIN, usable: 1 });
    expect(answer).toMatchObject({ stops: 0, time: 400, pitTime: 0, lacking: 0 });
  });

  it('costs nothing but the laps when stops take no time', () => {
    const free = { ...PLAIN, catchTime: 0, restartTime: 0, refuelRate: 1e9 };
    expect(raceOf(free).time).toBeCloseTo(400, 6);
  });

  it('adds runs and glides as they are, at each release and each landing', () => {
    // 40 mL = 20 laps − 2 in reserve; run 0.2 laps in 2.5 s burns as 0.625 laps: 17.575 to the flag, 19.075 to a stop.
    const { toFlag, toStop } = lapsOfFilling(REAL);
    expect([toFlag, toStop]).toEqual([expect.closeTo(17.575, 9), expect.closeTo(19.075, 9)]);
    const answer = raceOf(REAL);
    expect(answer).toMatchObject({ stops: 5, lapsPerTank: 19 });
    // Six runs lose 2.5 − 0.8 s each, five glides 9 − 6 s.
    expect(answer.slowTime).toBeCloseTo(6 * 1.7 + 5 * 3, 9);
  });

  it('tells how many laps a tank lacks for one stop less', () => {
    const answer = raceOf(REAL);
    const more = (laps: number): Race => ({ ...REAL, usable: REAL.usable + laps * REAL.fuelPerLap });
    expect(raceOf(more(answer.lacking + 1e-6)).stops).toBe(4);
    expect(raceOf(more(answer.lacking - 1e-6)).stops).toBe(5);
  });

  it('lasts no lap on too small a tank, and says so', () => {
    expect(raceOf({ ...PLAIN, usable: 1.9e-6 })).toMatchObject({ status: 'no laps', lapsPerTank: 0 });
    expect(() => raceOf({ ...PLAIN, fuelPerLap: 0 })).toThrow('fuel a lap is 0; it must be greater than 0');
  });

  it('flies every lap once, never below its reserve, and balances its fuel', () => {
    fc.assert(
      fc.property(races, (race) => {
        const stints = stintsOf(race);
        if (stints.length === 0) return;
        const sum = (of: (k: number) => number): number => stints.reduce((total, _, k) => total + of(k), 0);
        expect(sum((k) => stints[k]!.laps)).toBe(race.laps);
        for (const stint of stints) {
          expect(stint.laps).toBeGreaterThanOrEqual(1);
          expect(stint.taken).toBeGreaterThanOrEqual(0);
          expect(stint.before).toBeLessThanOrEqual(race.usable * (1 + 1e-9));
          expect(stint.after / race.fuelPerLap).toBeGreaterThanOrEqual(race.reserve - 1e-6);
        }
        const burnt = race.usable + sum((k) => stints[k]!.taken) - stints.at(-1)!.after;
        expect(raceOf(race).fuel).toBeCloseTo(burnt, 12);
      }),
    );
  });

  it('never needs more stops with a larger tank', () => {
    fc.assert(
      fc.property(races, fc.double({ min: 1, max: 2, noNaN: true }), (race, factor) => {
        const small = raceOf(race);
        if (small.status === 'settled') {
          expect(raceOf({ ...race, usable: race.usable * factor }).stops).toBeLessThanOrEqual(small.stops);
        }
      }),
    );
  });
});

describe('the needle', () => {
  const needle = { slower: 0.04, saves: 0.15 };
  it('is the two settings that were flown at its ends', () => {
    expect(atNeedle(REAL, needle, 1)).toEqual(REAL);
    expect(atNeedle(REAL, needle, 0)).toMatchObject({ lapTime: 4.16, fuelPerLap: expect.closeTo(1.7e-6, 12) });
  });
  it('stays at the fastest where range saves no stop and fuel costs no time', () => {
    const race = { ...PLAIN, usable: 1 };
    expect(bestNeedle(race, needle).needle).toBe(1);
  });
  it('wins a stop by range where a filling lacks little', () => {
    const race = { ...PLAIN, usable: 49.8e-6 };
    const best = bestNeedle(race, needle);
    expect(raceOf(race).stops).toBe(4);
    expect(best.answer.stops).toBe(3);
    expect(best.answer.time).toBeLessThan(raceOf(race).time);
    // 25 laps a filling: as fast as that allows, to a 200th.
    expect(best.needle).toBeGreaterThan(0.9);
  });
  it('is never beaten by a setting between', () => {
    fc.assert(
      fc.property(races, fc.integer({ min: 0, max: 200 }), (race, k) => {
        const other = raceOf(atNeedle(race, needle, k / 200));
        if (other.status === 'settled') expect(bestNeedle(race, needle).answer.time).toBeLessThanOrEqual(other.time);
      }),
      { numRuns: 50 },
    );
  });
});

describe('standard air', () => {
  it('changes no thrust where the day is standard, or the power is held', () => {
    expect(thrustInStandardAir(1.225, 1.225, 1)).toBe(1);
    expect(thrustInStandardAir(1.1, 1.225, 0)).toBe(1);
    expect(thrustInStandardAir(1.1, 1.21, 1)).toBeCloseTo(1.1, 12);
  });
  it('scales a timed lap as the model says', () => {
    expect(correctedLapTime(5, 4.9, 4.9)).toBe(5);
    expect(correctedLapTime(5, 5, 4.8)).toBeCloseTo(4.8, 12);
  });
});

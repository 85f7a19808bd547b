import { describe, expect, test } from 'vitest';
import { hear, type Told } from '../../../../engine/physics/index';
import { cases } from '../../../cases';
import { heardIn, type Verdict, verdictOn } from './answer';
import { drawFlight } from './draw';
import { type Flight, type Recording, synthesise, truthOf } from './flights';

const ALL = 200;
const CLEAR_FLIGHT = 13;
const BATCH = 10;
/** Of all answers so many may be wrong; of all flights so many must have one. */
const WRONG = 0.01;
const TELLS_TURNS = 0.8;
const TELLS_LAP = 0.65;

describe('flights made by computation', () => {
  const seeds = Array.from({ length: cases(ALL) }, (_, k) => k + 1);
  const batches = Array.from({ length: Math.ceil(seeds.length / BATCH) }, (_, b) => [
    seeds.slice(b * BATCH, (b + 1) * BATCH),
  ]);
  const verdicts: Verdict[] = [];
  let flown = 0;

  test.each(batches)('are listened to: %j', (batch) => {
    for (const drawn of batch.map(drawFlight)) {
      const verdict = verdictOn(drawn);
      verdicts.push(verdict);
      if (drawn.flight) flown += 1;
      // Noise without a flight in it tells nothing.
      else expect(verdict).toMatchObject({ tellsTurns: false, tellsLap: false });
    }
  });

  test('fewer than one in a hundred answers is wrong', () => {
    const wrong = verdicts.flatMap((each) => each.wrong);
    expect({ wrong, few: wrong.length < WRONG * verdicts.length || wrong.length === 0 }).toMatchObject({ few: true });
  });

  test('most have an answer', () => {
    expect(verdicts.filter(({ tellsTurns }) => tellsTurns).length / flown).toBeGreaterThan(TELLS_TURNS);
    expect(verdicts.filter(({ tellsLap }) => tellsLap).length / flown).toBeGreaterThan(TELLS_LAP);
  });

  const scatter = (offs: readonly number[]): number =>
    Math.sqrt(offs.reduce((sum, off) => sum + off * off, 0) / offs.length);

  test('they are off by about as much as their standard errors say', () => {
    const laps = scatter(verdicts.flatMap((each) => each.offs));
    expect(laps).toBeGreaterThan(0.5);
    expect(laps).toBeLessThan(1.4);
    expect(scatter(verdicts.flatMap(({ turnsOff = [] }) => turnsOff))).toBeLessThan(1.6);
    expect(scatter(verdicts.flatMap(({ machOff = [] }) => machOff))).toBeLessThan(1.6);
  });
});

describe('rpm that is expected far from what it is', () => {
  // A clear two-stroke, heard from outside.
  const drawn = drawFlight(CLEAR_FLIGHT);

  test.each([0.5, 1.5, 2])('%d times: it tells nothing or what is true', (by) => {
    expect(verdictOn(drawn, by * drawn.flight!.rpm).wrong).toEqual([]);
  });
});

describe('sounds that tell nothing', () => {
  const question = { about: 180, cycles: 1 };
  const noise = (rate: number, seconds: number) =>
    Float32Array.from({ length: rate * seconds }, (_, k) => Math.sin(k * k));

  test.each([
    ['short', noise(12_000, 2), 12_000, question],
    ['silent', new Float32Array(60_000), 12_000, question],
    ['coarse', noise(4000, 5), 4000, { about: 500, cycles: 1 }],
    ['no tone', noise(12_000, 5), 12_000, question],
  ] as const)('%s', (why, samples, rate, asked) => {
    expect(heardIn({ samples, rate }, asked)).toMatchObject({ turns: why, laps: [], lap: 'few' });
  });

  test.each([
    [{ about: 0, cycles: 1 }, 'turns a second expected is 0; it must be greater than 0'],
    [{ about: 180, cycles: Number.NaN }, 'cycles a turn is NaN; it must be greater than 0'],
  ])('a question without sense is refused: %o', (asked, message) => {
    expect(() => heardIn({ samples: noise(12_000, 5), rate: 12_000 }, asked)).toThrow(new RangeError(message));
  });
});

describe('flights of their own kind', () => {
  const flight: Flight = {
    ...{ radius: 18.3, distance: 34, height: 0.5, lap: 5.02, drift: 0.03, swing: 0.01, start: 0.6 },
    ...{ rpm: 9800, rpmDrift: -0.02, rpmSwing: 0.003 },
    timbre: { motor: false, blades: 2, falls: 0.8, propeller: 0.5, halves: 0 },
  };
  const recording = { seconds: 20, rate: 8000, noise: 12, wind: 0.8, sound: 340, clip: 2, seed: 7 };
  const heardOf = (flown: Flight, recorded: Recording, cycles: number) =>
    heardIn(
      { samples: synthesise([{ flight: flown, quieter: 0 }], recorded), rate: recorded.rate },
      { about: 160, cycles },
    );

  test('a four-stroke is told by half as many firings', () => {
    const fours = { ...flight, timbre: { ...flight.timbre, halves: 1.2 } };
    const { turns } = heardOf(fours, recording, 0.5);
    expect(60 * (turns as Told).value).toBeCloseTo(truthOf(fours, recording).rpm(0, 20), -2);
  });

  test('every lap of a long flight is told, though they grow longer', () => {
    const long = { ...recording, seconds: 60 };
    const { laps } = heardOf(flight, long, 1);
    const { passes } = truthOf(flight, long);
    expect(laps.length).toBeGreaterThanOrEqual(passes.length - 2);
    for (const { from, time } of laps) {
      const k = passes.findIndex((at) => Math.abs(at - from) < 0.5);
      expect(Math.abs(time.value - passes[k + 1]! + passes[k]!)).toBeLessThan(0.02);
    }
  });
});

test('work done is told on the way, and only ever grows', () => {
  const drawn = drawFlight(CLEAR_FLIGHT);
  const told = [
    ...hear({ samples: drawn.sound(), rate: drawn.recording.rate }, { about: drawn.about / 60, cycles: 1 }),
  ];
  expect(told.length).toBeGreaterThan(3);
  expect(told).toEqual([...told].sort((a, b) => a - b));
  expect(told.at(-1)).toBeLessThan(1);
});

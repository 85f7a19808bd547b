import { describe, expect, test } from 'vitest';
import { hear } from '../../../../engine/physics/index';
import { cases } from '../../../cases';
import { heardIn, type Verdict, verdictOn } from './answer';
import { drawFlight } from './draw';

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
    expect(scatter(verdicts.flatMap(({ turnsOff }) => (turnsOff === undefined ? [] : [turnsOff])))).toBeLessThan(1.6);
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

test('work done is told on the way, and only ever grows', () => {
  const drawn = drawFlight(CLEAR_FLIGHT);
  const told = [
    ...hear({ samples: drawn.sound(), rate: drawn.recording.rate }, { about: drawn.about / 60, cycles: 1 }),
  ];
  expect(told.length).toBeGreaterThan(3);
  expect(told).toEqual([...told].sort((a, b) => a - b));
  expect(told.at(-1)).toBeLessThan(1);
});

import { describe, expect, it } from 'vitest';
import type { DayCard } from '../../../engine/index';
import {
  bandWords,
  bearingWords,
  lapsWords,
  pullWords,
  setUpWords,
  stopWords,
  wheelWords,
} from '../../../workbook/field/words';

const plain = (words: string): string => words.replaceAll('\u00a0', ' ');
const SET_UP = { tip: 0.021, guide: 0.062, least: 12, lapTime: 5, longer: 0, now: true };
const CARD: DayCard = {
  ok: true,
  form: {
    day: '2026-09-05',
    temperature: 288,
    elevation: 0,
    wind: 4,
    gusts: 5,
    from: 0,
    pit: 3,
    ground: 'short_grass',
  },
  ...{ weight: 8, least: 15, leastInGust: 13, leastBearing: 0, greatest: 38, floor: 8, testLoad: 80, lapTime: 5 },
  ...{ tightUpTo: 9, clockwise: false, release: 3, leastInRun: 1, shutOff: 2.9, shutOffBefore: 1 },
  now: { tip: 0.021, guide: 0.062 },
  setUp: SET_UP,
  bands: [
    { from: 0, to: 2, setUp: SET_UP },
    { from: 2, to: 4, setUp: SET_UP },
    { from: 4, to: 6, setUp: { ...SET_UP, now: false, tip: 0.026, longer: 0.04 } },
    { from: 6, to: 8 },
    { from: 8, to: 10 },
  ],
  gear: { margin: 3.6, axle: -0.018, wanted: 0.02, marginWanted: 1.5 },
  laps: { likely: 42.6, fewest: 21.3, most: 85.2 },
  broken: ['Nose in: move the guide.'],
};

describe('the words of the day card', () => {
  it.each([
    [0, '0° N'],
    [Math.PI / 4, '45° NE'],
    [(359.8 * Math.PI) / 180, '0° N'],
    [(247 * Math.PI) / 180, '247° SW'],
    [Number.NaN, '–'],
  ])('a bearing of %d rad is %s', (bearing, words) => expect(bearingWords(bearing)).toBe(words));

  it('has a pull in newtons, pounds and weights', () => {
    expect(pullWords(16, 8).map(plain)).toEqual(['16 N', '3.6 lbf', '2 ×']);
    expect(pullWords(Number.NaN, 8)).toEqual(['–', '–', '–']);
  });

  it('says a set-up with what it costs, and one that the model cannot change as it is', () => {
    expect(plain(setUpWords(SET_UP, 'metric'))).toBe('tip 21 g, guide 62 mm, as it is');
    expect(plain(setUpWords({ ...SET_UP, now: false, longer: 0.043 }, 'metric'))).toBe(
      'tip 21 g, guide 62 mm, a lap +0.04 s',
    );
    expect(plain(setUpWords({ ...SET_UP, now: false, longer: -0.043 }, 'inch_pound'))).toBe(
      'tip 0.74 oz, guide 2.44 in, a lap −0.04 s',
    );
    expect(setUpWords({ ...SET_UP, tip: Number.NaN, guide: Number.NaN }, 'metric')).toBe('as it is');
  });

  it('puts bands of one set-up together, and says stop where nothing keeps the pull', () => {
    expect(bandWords(CARD, 'metric').map(plain)).toEqual([
      '0–4 m/s: as it is',
      '4–6 m/s: tip 26 g, guide 62 mm, a lap +0.04 s',
      '6–10 m/s: stop',
    ]);
  });

  it('says where the wheels stand for the ground', () => {
    const wheels = (gear: Partial<DayCard['gear']>): string =>
      plain(wheelWords({ ...CARD, gear: { ...CARD.gear, ...gear } }, 'metric'));
    expect(wheels({})).toBe('Wheels, short grass: margin 3.6, axle stays at −18 mm');
    expect(wheels({ margin: 1.2, wanted: -0.03 })).toBe(
      'Wheels, short grass: margin 1.2: axle 12 mm forward, to −30 mm',
    );
    expect(wheels({ margin: 0.4, wanted: Number.NaN })).toBe('Wheels, short grass: margin 0.4: it noses over');
    expect(wheels({ margin: Number.NaN })).toBe('Wheels: no answer for short grass');
  });

  it('counts laps down', () => {
    expect(lapsWords(CARD)).toBe('Laps on a tank or charge: 42 (21 to 85)');
    expect(lapsWords({ laps: { likely: 20, fewest: 20, most: 20 } })).toBe('Laps on a tank or charge: 20');
  });

  it('says every stop that there is, the test of the day first, and never go', () => {
    const stops = (card: Partial<DayCard>, tested: boolean): string[] =>
      stopWords({ ...CARD, ...card }, tested).map(plain);
    expect(stops({}, true)).toEqual([
      ': Nose in: move the guide',
      ' if the wind is over the rule book or club practice',
      ' if there is lightning, or somebody in the circle',
    ]);
    const { setUp: _, ...without } = CARD;
    expect(
      stopWords({ ...without, leastInGust: 5, greatest: 90, broken: [] }, false)
        .map(plain)
        .slice(0, 4),
    ).toEqual([
      ': no pull test of 80 N in the log today',
      ': the pull in gusts comes under the floor',
      ': gusts pull harder than the pull test',
      ': nothing on hand keeps the pull between floor and pull test',
    ]);
  });
});

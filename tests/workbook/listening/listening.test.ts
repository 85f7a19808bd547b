import { describe, expect, test } from 'vitest';
import type { Cell, HeardFlight } from '../../../engine/index';
import { airOf, expectedOf, questionOf, radiusOf } from '../../../workbook/listening/from-design';
import { readingsOf } from '../../../workbook/listening/readings';
import { layOutTrack } from '../../../workbook/listening/track-layout';
import { wavOf } from '../../../workbook/listening/wav';
import { heardSentences } from '../../../workbook/listening/words';

const NO_TRACK = { times: new Float64Array(0), heard: new Float64Array(0), fitted: new Float64Array(0) };
const HEARD: HeardFlight = {
  turns: { value: 180, error: 0.1 },
  laps: [
    { from: 1, time: { value: 5.02, error: 0.004 }, turns: 179.5, sure: true },
    { from: 6.02, time: { value: 5.04, error: 0.003 }, turns: 180.5, sure: true },
  ],
  lap: { value: 5.03, error: 0.0025 },
  mach: { value: 0.067, error: 0.001 },
  speed: { value: 23, error: 0.4 },
  radius: { value: 18.4, error: 0.3 },
  track: NO_TRACK,
};

describe('what was heard', () => {
  test('is said with its uncertainty, in the units of the design', () => {
    expect(heardSentences(HEARD, 'metric', 18.1).join(' ').replaceAll('\u00a0', ' ')).toBe(
      'Engine speed 10\u202f800 rpm ± 6 rpm. Lap 5.03 s ± 0.003 s, mean of 2 laps. By its swing it flies at 82.8 km/h ± 1 km/h on a circle of 18.4 m ± 0.3 m radius; the design has 18.1 m. ± is one standard deviation.',
    );
    expect(heardSentences(HEARD, 'inch_pound', Number.NaN).join(' ').replaceAll('\u00a0', ' ')).toContain('mph');
  });

  test('another circle than that of the design is asked about', () => {
    expect(heardSentences(HEARD, 'metric', 14).join(' ')).toContain(
      'That is another circle: was another model heard, or did the phone stand inside it?',
    );
  });

  test('what can’t be told says why, and what helps', () => {
    const nothing: HeardFlight = { turns: 'no tone', laps: [], lap: 'few', mach: undefined, track: NO_TRACK };
    expect(heardSentences(nothing, 'metric', 18)).toEqual([
      'Can’t tell. No engine stands out of the noise near the rpm expected. Go out of the wind, take a quieter moment, or expect another rpm.',
    ]);
    const inside: HeardFlight = { ...nothing, turns: HEARD.turns, lap: 'no swing' };
    expect(heardSentences(inside, 'metric', 18)[1]).toBe(
      'The pitch doesn’t swing, so laps can’t be told. Stand outside the circle for laps.',
    );
  });

  test('goes into a log as single laps where each is sure, else as one time', () => {
    expect(readingsOf(HEARD)).toMatchObject({ splits: [5.02, 5.04], shaftSpeed: 360 * Math.PI });
    const unsure = { ...HEARD, laps: HEARD.laps.map((lap) => ({ ...lap, sure: false })) };
    expect(readingsOf(unsure)).toMatchObject({ timed: { laps: 2, time: 10.06 } });
    expect(readingsOf({ ...HEARD, laps: [], lap: 'no swing' })).not.toHaveProperty('timed');
    expect(readingsOf({ ...HEARD, turns: 'near' })).toBeUndefined();
  });
});

describe('what is expected', () => {
  const values: Readonly<Record<string, number>> = {
    'level.shaft_speed': (2 * Math.PI * 10_823) / 60,
    'level.radius': 18.2,
    'prop.blades': 3,
    'sky.pressure': 101_000,
    'sky.density': 1.2,
  };
  const names: Readonly<Record<string, string>> = { flight: 'level', engine: 'e', propeller: 'prop', air: 'sky' };
  const reads = {
    value: (path: string) => values[path] ?? Number.NaN,
    namesOfRole: (role: string) => (names[role] ? [names[role]] : []),
  };
  const bare = { value: () => Number.NaN, namesOfRole: () => [] };
  const motor = [{ kind: 'model', of: 'electric', name: 'e', id: '1', title: '', fields: {} }] as unknown as Cell[];

  test('comes from the design', () => {
    expect(expectedOf(reads, [])).toEqual({ drive: 'two_stroke', blades: 3, rpm: '10820' });
    expect(expectedOf(reads, motor).drive).toBe('motor');
    expect(airOf(reads)).toEqual({ pressure: 101_000, density: 1.2 });
    expect(radiusOf(reads)).toBe(18.2);
  });

  test('is left to be typed where the design has nothing', () => {
    expect(expectedOf(bare, [])).toEqual({ drive: 'two_stroke', blades: 2, rpm: '' });
    expect(airOf(bare)).toBeUndefined();
    expect(radiusOf(bare)).toBeNaN();
  });

  test.each([
    [
      { drive: 'two_stroke', blades: 2, rpm: '12,000 rpm' },
      { about: 200, cycles: 1 },
    ],
    [
      { drive: 'four_stroke', blades: 2, rpm: '9 000' },
      { about: 150, cycles: 0.5 },
    ],
    [
      { drive: 'motor', blades: 3, rpm: '9000' },
      { about: 150, cycles: 3 },
    ],
    [
      { drive: 'two_stroke', blades: 2, rpm: ' ' },
      'Type the rpm that you expect, roughly: it tells the tone from its octaves.',
    ],
    [{ drive: 'two_stroke', blades: 2, rpm: '90' }, 'The rpm expected is “90”. Type a number from 1000 to 50000.'],
    [{ drive: 'motor', blades: 9, rpm: '9000' }, 'The number of blades must be from 1 to 6.'],
  ] as const)('%o', (listened, question) => {
    expect(questionOf(listened, undefined)).toEqual(question);
  });
});

test('a sound is kept as linear PCM of 16 bits', () => {
  const view = new DataView(wavOf({ samples: Float32Array.of(0, 1, -1, 2), rate: 48_000 }));
  expect(String.fromCharCode(...new Uint8Array(view.buffer, 0, 4))).toBe('RIFF');
  expect(view.getUint32(24, true)).toBe(48_000);
  expect(view.getUint32(40, true)).toBe(8);
  expect([0, 1, 2, 3].map((n) => view.getInt16(44 + 2 * n, true))).toEqual([0, 32_767, -32_767, 32_767]);
});

describe('the track', () => {
  const times = Float64Array.from({ length: 100 }, (_, k) => k / 10);
  const heard = times.map((t) => 180 + 10 * Math.sin(t));

  test('has its dots and its curve inside its frame, and a stray pitch doesn’t stretch it', () => {
    const strayed = heard.slice();
    strayed[50] = 900;
    const laid = layOutTrack({ times, heard: strayed, fitted: heard }, 320)!;
    expect(laid.dots).toHaveLength(99);
    for (const { x, y } of laid.dots) {
      expect(x).toBeGreaterThanOrEqual(laid.frame.left);
      expect(x).toBeLessThanOrEqual(laid.frame.right);
      expect(y).toBeGreaterThanOrEqual(laid.frame.top);
      expect(y).toBeLessThanOrEqual(laid.frame.bottom);
    }
    expect(laid.up.map(({ text }) => text)).toContain('11\u202f000');
  });

  test('outside the laps there is no curve, and without a sound no picture', () => {
    expect(layOutTrack({ times, heard, fitted: heard.map(() => Number.NaN) }, 320)!.curve).toBe('');
    expect(layOutTrack(NO_TRACK, 320)).toBeUndefined();
  });
});

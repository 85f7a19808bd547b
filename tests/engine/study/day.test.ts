import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Cell, Document, LogCell } from '../../../engine/sheet/document';
import { openText } from '../../../engine/sheet/file';
import { type Live, openLive } from '../../../engine/sheet/live';
import { putText } from '../../../engine/sheet/paths';
import { daySteps } from '../../../engine/study/day/day';
import type { DayAnswer, DayCard, DayForm } from '../../../engine/study/day/told';
import { library } from '../../../engine/study/index';
import { read } from '../blocks/engine-designs';
import { logOf, row } from './fit/flown';
import { begun, forms } from './place/begun';

const opened = openText(readFileSync(new URL('../../designs/quern.tetherwright.json', import.meta.url), 'utf8'));
if (!opened.ok) throw new Error(opened.message);
const { document } = opened;
const quern: Live = openLive(document, library);
const [SOUTH, EAST] = [Math.PI, Math.PI / 2];

function answerOf(live: Live, form: Partial<DayForm>): DayAnswer {
  const steps = daySteps(live, { day: '2026-09-05', ...form }, library);
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
function card(form: Partial<DayForm>, live = quern): DayCard {
  const answer = answerOf(live, form);
  if (!answer.ok) throw new Error(answer.message);
  return answer;
}
const withPieces = (of: Document, pieces: readonly Cell[]): Document => ({
  ...of,
  sheets: of.sheets.map((sheet, k) => (k === 0 ? { ...sheet, pieces: [...sheet.pieces, ...pieces] } : sheet)),
});
const model = (of: string, fields: Readonly<Record<string, string>> = {}): Cell => ({
  ...{ kind: 'model', id: `own_${of}`, name: `own_${of}`, title: of, of, fields },
});

describe('the card of a day', () => {
  const day = { wind: 4, gusts: 5, from: EAST, pit: SOUTH, temperature: 298.15, elevation: 300 };
  const told = card(day);

  it('says what the pieces of the design say when the day is typed into them', () => {
    const texts = [
      ['air.temperature', '25 °C'],
      ['air.elevation', '300 m'],
      ['air.wind', '4 m/s'],
      ['air.gust', '1.25'],
      ['air.wind_from', '90°'],
    ] as const;
    const grown = withPieces(document, [model('lap'), model('launch'), model('glide', { pit: '180°' }), model('gear')]);
    const live = openLive(
      texts.reduce((now, [path, text]) => putText(now, path, text)!, grown),
      library,
    );
    const expected = {
      least: 'own_lap.least_pull',
      leastInGust: 'own_lap.least_pull_in_gust',
      greatest: 'own_lap.greatest_pull_met',
      floor: 'own_lap.floor',
      lapTime: 'own_lap.lap_time',
      release: 'own_launch.best_release',
      shutOff: 'own_glide.shut_off_bearing',
      testLoad: 'flight.test_load',
    } as const;
    for (const [key, path] of Object.entries(expected)) {
      expect([key, told[key as keyof typeof expected]]).toEqual([key, expect.closeTo(read(live, path), 6)]);
    }
    expect(told.gear.margin).toBeCloseTo(read(live, 'own_gear.margin_short_grass'), 9);
    expect(told.laps.likely).toBeCloseTo(read(live, 'flight.laps_per_filling'), 9);
    expect(told.weight).toBeCloseTo(read(live, 'flight.pull') / read(live, 'flight.pull_per_weight'), 9);
  });

  it('has a set-up for every band of wind until nothing on hand keeps the pull, and none for a storm', () => {
    const pulls = told.bands.flatMap(({ setUp }) => setUp?.least ?? []);
    expect(pulls.length).toBeGreaterThan(2);
    expect(pulls).toEqual(pulls.toSorted((a, b) => b - a));
    expect(told.bands.at(-1)!.setUp).toBeUndefined();
    const storm = card({ wind: 20, gusts: 25 });
    expect(storm.setUp).toBeUndefined();
    expect(storm.broken.join(' ')).toMatch(/slack|overtakes|stalls/);
  });

  it('takes what is on hand alone, and says what it costs in lap time', () => {
    const { setUp, now } = card({ ...day, tips: [0.03], guides: [0.09] });
    expect([0.03, now.tip]).toContain(setUp!.tip);
    expect([0.09, now.guide]).toContain(setUp!.guide);
    expect(setUp!.longer).toBeLessThanOrEqual(0.011);
  });

  it('moves the axle as far aft as the ground allows', () => {
    const { gear } = card({ ground: 'long_grass' });
    const at = (x: number): number => {
      const moved = putText(withPieces(document, [model('gear')]), 'body.wheel_x', `${x * 1000} mm`)!;
      return read(openLive(moved, library), 'own_gear.margin_long_grass');
    };
    expect(at(gear.wanted)).toBeGreaterThanOrEqual(gear.marginWanted);
    expect(at(gear.wanted + 0.006)).toBeLessThan(gear.marginWanted);
  });

  it('races with the laps and the fuel of the day, where the log has them', () => {
    const predicted = told.race!;
    expect(predicted).toMatchObject({ timed: false, measured: false });
    const flown = row(
      '1',
      {},
      { date: '2026-09-05', time: '48 s', all_laps: '20', fuel_in: '50 mL', fuel_left: '10 mL' },
    );
    const before = row('2', {}, { date: '2026-09-04', time: '90 s' });
    const log: LogCell = logOf([flown, before], { columns: [] });
    const { race } = card(day, openLive(withPieces(document, [log]), library));
    expect(race).toMatchObject({ timed: true, lapTime: expect.closeTo(4.8, 9) });
    if (race!.measured) expect(race!.fuelPerLap).toBeCloseTo(2e-6, 12);
    expect(race!.shutOffLap).toBeGreaterThan(0);
  });

  it('leaves the open design as it is', () => expect(quern.compiled.document).toBe(document));

  it.each([
    ['an electric', 6, false],
    ['an inch-pound stunt model', 4, true],
    ['a racer', 11, true],
  ])('works on %s that has just been begun', (_what, k, burns) => {
    const answer = card({ wind: 3, gusts: 4 }, openLive(begun(forms[k]!), library));
    expect(answer.race !== undefined).toBe(burns);
    const numbers = [
      answer.least,
      answer.greatest,
      answer.lapTime,
      answer.testLoad,
      answer.gear.margin,
      answer.laps.likely,
    ];
    expect(numbers.filter((each) => !Number.isFinite(each))).toEqual([]);
  });

  it('says why a design has none', () => {
    const heavy = putText(document, 'flight.drag_factor', '0')!;
    expect(answerOf(openLive(heavy, library), {})).toMatchObject({ ok: false, message: expect.stringContaining('0') });
  });
});

import { describe, expect, it } from 'vitest';
import { openLive } from '../../../../engine/sheet/live';
import { fitNow } from '../../../../engine/study/fit/index';
import { library, startEngine } from '../../../../engine/study/index';
import { planFor } from '../../../../engine/study/kinds/index';
import { read } from '../../blocks/engine-designs';
import { fitOf, logOf, row, withCells } from './flown';

const LAW = 'thrust_law';
const ROWS = [
  row('a', { pull: '25 N', lines: '17 m' }, { time: '47 s' }),
  row('b', { lines: '20 m' }, { time: '56 s' }),
];
const fitTo = (rows: Parameters<typeof logOf>[0], factors: readonly string[], more: Parameters<typeof fitOf>[1] = {}) =>
  fitNow(openLive(withCells([logOf(rows), fitOf(factors, more)], {}, LAW), library), 'found');

describe('what laps do not tell', () => {
  it('one lap for two factors', () => {
    const found = fitTo([row('a', {}, { time: '50 s' })], ['flight.drag_factor', 'engine.power_factor']);
    expect(found).toMatchObject({
      state: 'settled',
      takeable: false,
      factors: [{ determined: false }, { determined: false }],
    });
    expect(found.sentences).toEqual([
      'One measured number is too few for 2 factors: the drag factor of Level flight and the power factor of Engine and propeller are not determined. Log more flights, or remove a factor.',
    ]);
    expect(found.factors.every(({ error }) => Number.isNaN(error))).toBe(true);
  });

  it('two factors with the same effect', () => {
    const found = fitTo(ROWS, ['lines.drag_factor', 'lines.drag_coefficient']);
    expect(found.takeable).toBe(false);
    expect(found.sentences).toEqual([
      'The log cannot tell the line drag factor of Lines and the line drag coefficient of Lines apart: what a rise of one does, a rise of the other does as well. Remove one of them, or log flights in which they work differently (other lines, another result).',
    ]);
  });

  it('drag and power of flights at one length of line, which differ by less than anybody measures', () => {
    const rows = ['50.5 s', '50.4 s', '50.7 s'].map((time, k) => row(`${k}`, { pull: '24 N' }, { time }));
    const found = fitTo(rows, ['flight.drag_factor', 'engine.power_factor']);
    expect(found).toMatchObject({ state: 'settled', takeable: false });
    expect(found.iterations).toBeLessThan(12);
    expect(found.sentences).toEqual([
      'The log cannot tell the drag factor of Level flight and the power factor of Engine and propeller apart: what a rise of one does, a rise of the other takes back. Remove one of them, or log flights in which they work differently (other lines, another result).',
    ]);
  });

  it('a factor without effect, beside one that has', () => {
    const found = fitTo(ROWS, ['flight.drag_factor', 'flight.test_factor']);
    expect(found.sentences).toEqual([
      'The pull test over weight of Level flight is not determined: nothing that was measured changes with it. Remove it, or log a result that it moves.',
    ]);
    expect(found.factors).toMatchObject([{ determined: true }, { determined: false, value: 10, before: 10 }]);
    expect(found.takeable).toBe(false);
  });

  it('no number to spare', () => {
    const found = fitTo([row('a', {}, { time: '50 s' })], ['flight.drag_factor'], { errors: 'scatter' });
    expect(found).toMatchObject({ errors: 'stated', freedom: 0, takeable: true });
    expect(found.sentences).toEqual([
      'There is no measured number to spare, so the fit meets the log exactly and its scatter says nothing: the standard errors rest on the measuring errors as stated.',
    ]);
    expect(found.numbers[0]!.fitted).toBeCloseTo(5, 8);
  });
});

describe('a fit that meets trouble', () => {
  it('leaves out a row that cannot fly, and names it', () => {
    const found = fitTo(
      [...ROWS, row('storm', { lines: '18 m', wind: '60 m/s' }, { time: '50 s' })],
      ['flight.drag_factor'],
    );
    expect(found.numbers.map(({ row: k }) => k)).toEqual([0, 0, 1]);
    expect(found.sentences).toEqual([
      'Row 3 (storm) is left out with the lap time of Level flight, since the model has no answer there. The wind of Air of the day is 60\u00a0m/s. Allowed: 0\u00a0m/s to 20\u00a0m/s. Type a value within that.',
    ]);
  });

  it('has no fit where no row flies', () => {
    const found = fitTo([row('storm', { wind: '60 m/s' }, { time: '50 s' })], ['flight.drag_factor']);
    expect(found).toMatchObject({ state: 'fault' });
    expect(found.message).toMatch(
      /^No flight of Laps flown has an answer in the model, so there is nothing to fit\. The first says: The wind of Air of the day is 60\u00a0m\/s\./,
    );
  });

  it('says where a factor would go beyond its end', () => {
    const found = fitTo([row('a', {}, { time: '200 s' }), row('b', {}, { time: '200 s' })], ['lines.drag_coefficient']);
    expect(found.factors[0]).toMatchObject({ end: 'high', determined: false });
    expect(found.takeable).toBe(false);
    expect(found.sentences).toEqual([
      'The line drag coefficient of Lines stands at the greatest value allowed, 5, and would go on beyond it: the log does not fit the model there. Look at the log, or at what else of the design may be off.',
    ]);
  });

  it.each([
    [
      [row('a', {})],
      'flown holds no measured number that counts here. Type a time, a pull or another result into one of its rows.',
    ],
    [
      [row('a', {}, { time: '50 s', laps: '0' })],
      'The number of laps in flight a of Laps flown is 0. Type a value greater than 0.',
    ],
    [[row('a', { pull: '2 g' })], /^flown\.row1\.pull: /],
  ] as const)('says what is wrong with the log', (rows, message) => {
    const found = fitTo(rows, ['flight.drag_factor']);
    expect(found.state).toBe('fault');
    expect(found.message).toMatch(message);
  });

  it('asks for a number where a formula stands', () => {
    const live = openLive(withCells([logOf(ROWS), fitOf(['lines.length'])], {}, LAW), library);
    expect(fitNow(live, 'found').message).toBe(
      'The line length of Lines is a formula. A fit needs a number there: fit what the formula names, or type a number.',
    );
    expect(fitNow(live, 'fund').message).toBe('There is no fit called “fund”. The fits are found.');
  });

  it('is nothing that runs like a sweep: who asks for one by its name is told so', () => {
    const live = openLive(withCells([logOf(ROWS), fitOf(['flight.drag_factor'])], {}, LAW), library);
    expect(planFor(live, 1, 'found')).toMatch(/^There is no trial series called “found”\. /);
  });
});

describe('the engine', () => {
  const document = withCells([logOf(ROWS), fitOf(['flight.drag_factor'])], {}, LAW);

  it('answers for its revision, and a newer edit stops it', async () => {
    let pauses = 0;
    // Every look at the clock is later than a turn is long: it rests after each piece.
    let clock = 0;
    const engine = startEngine(library, {
      now: () => (clock += 100),
      async pause() {
        pauses++;
      },
    });
    const { revision } = await engine.open(document);
    const found = await engine.fit('found');
    expect(found).toMatchObject({ revision, state: 'settled' });
    expect(pauses).toBeGreaterThan(3);
    const running = engine.fit('found');
    await engine.set([['flight.drag_factor', '1.1']]);
    expect((await running).state).toBe('stopped');
    const after = await engine.fit('found');
    expect(after.factors[0]!.before).toBeCloseTo(1.1, 12);
    expect(after.factors[0]!.value).toBeCloseTo(found.factors[0]!.value, 6);
    const [older, newer] = await Promise.all([engine.fit('found'), engine.fit('found')]);
    expect([older.state, newer.state]).toEqual(['stopped', 'settled']);
  });

  it('leaves the design as it is', () => {
    const live = openLive(document, library);
    const before = live.state.m.slice();
    fitNow(live, 'found');
    expect(live.state.m).toEqual(before);
    expect(read(live, 'flight.drag_factor')).toBe(1);
  });
});

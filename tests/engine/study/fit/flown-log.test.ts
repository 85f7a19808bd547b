import { describe, expect, it } from 'vitest';
import { openLive } from '../../../../engine/sheet/live';
import { flownSteps } from '../../../../engine/study/fit/flown';
import { library } from '../../../../engine/study/index';
import { fitOf, logOf, openWith, row, withCells } from './flown';

/** The answer of steps, run one after another. */
function toEnd<T>(steps: Generator<void, T, void>): T {
  let step = steps.next();
  while (!step.done) step = steps.next();
  return step.value;
}
const plain = (words: string): string => words.replaceAll('\u00a0', ' ');

describe('what the design would have done on the flights of a log', () => {
  it('stands beside each measured number, with what was set on the day', () => {
    const rows = [row('1', { lines: '18.3 m' }, { time: '51 s' }), row('2', { pull: '20 N', lines: '16 m' })];
    const answer = toEnd(flownSteps(openWith([logOf(rows)]), 'flown'));
    expect(answer).toMatchObject({ state: 'settled', leftOut: [] });
    expect(answer.numbers.map(({ row: at, path }) => [at, path])).toEqual([
      [0, 'flight.lap_time'],
      [1, 'flight.pull_at_handle'],
    ]);
    expect(answer.numbers[0]!.value).toBeCloseTo(5.1, 9);
    const [long, short] = ['18.3 m', '16 m'].map((lines) => {
      const { numbers } = toEnd(flownSteps(openWith([logOf([row('1', { lines }, { time: '51 s' })])]), 'flown'));
      return numbers[0]!.predicted;
    });
    expect(answer.numbers[0]!.predicted).toBe(long);
    expect(short).toBeLessThan(long!);
  });

  it('is that of the variant that was flown, and says of what it knows no variant', () => {
    const rows = [
      row('1', {}, { time: '51 s' }),
      row('2', {}, { time: '45 s', flown_as: 'Short lines' }),
      row('3', {}, { time: '45 s', flown_as: 'Old tail' }),
      row('4', {}, { time: '45 s', flown_as: 'By formula' }),
    ];
    const variants = [
      { name: 'Short lines', changes: { line_length: '15 m' } },
      { name: 'By formula', changes: { line_length: '2 × 8 m' } },
    ];
    const document = { ...withCells([logOf(rows), fitOf(['flight.drag_factor'])]), variants };
    const answer = toEnd(flownSteps(openLive(document, library), 'flown'));
    const [whole, short] = answer.numbers;
    expect(short!.row).toBe(1);
    expect(short!.predicted).toBeLessThan(0.9 * whole!.predicted);
    expect(answer.leftOut.map(({ row: at, why }) => [at, plain(why)])).toContainEqual([
      2,
      'It was flown as “Old tail”, and the design has no variant of that name.',
    ]);
  });

  it('says what is wrong with the log', () => {
    expect(toEnd(flownSteps(openWith([logOf([row('1', {}, { time: '0 s' })])]), 'flown'))).toMatchObject({
      state: 'fault',
      numbers: [],
    });
    expect(toEnd(flownSteps(openWith([]), 'flown'))).toMatchObject({ state: 'fault', message: 'flown is no log.' });
  });
});

import type { LineSet, LogCell } from '../../../engine/index';

/** What a set of lines has been through, in a sentence; warnings come as "stop". */
export function lineSetWords({ rows }: LogCell, set: LineSet, day: string): string {
  if (set.retired !== '') return `Thrown away on ${set.retired}: stop if it is on the handle.`;
  const before = Number.parseInt(set.flights, 10);
  const here = rows.filter(({ line_set }) => line_set === set.name && set.name !== '').length;
  const flights = (Number.isNaN(before) ? 0 : before) + here;
  const flown = flights === 1 ? '1 flight' : `${flights} flights`;
  const last = set.pull_tests
    .filter(({ date, load }) => date !== '' && load !== '')
    .toSorted((a, b) => (a.date < b.date ? 1 : -1))[0];
  const test =
    last === undefined
      ? 'no pull test yet'
      : last.date === day
        ? `pull test today${held(last.load)}`
        : `last pull test ${last.date}${held(last.load)}`;
  const kinks = set.kinks.trim() === '' ? '' : ' Kinks are noted: look at them before the pull test.';
  const stop = last?.date === day ? '' : ' Stop until it is pull-tested today.';
  return `${flown}, ${test}.${stop}${kinks}`;
}

const held = (load: string): string => (load === '' ? '' : ` with ${load.replace(' ', '\u00a0')}`);

import { describe, expect, it } from 'vitest';
import type { FittedFactor, LogCell, LogRow } from '../../../../engine/index';
import { foundWords, isTaken, takenText } from '../../../../workbook/cells/fit/words';
import { logCsv, rowsFromCsv } from '../../../../workbook/cells/log/csv';
import { nextLabel, withColumn, withoutColumn, withRowBelow } from '../../../../workbook/cells/log/edits';
import { withReadings } from '../../../../workbook/cells/log/readings';

const row = (label: string, more: Partial<LogRow> = {}): LogRow => ({
  ...{ label, date: '', flown_as: '', line_set: '', laps: '10', time: '', splits: '', all_laps: '' },
  ...{ fuel_in: '', fuel_left: '', propeller: '', needle: '', plug: '', values: {}, note: '', ...more },
});
const LOG: LogCell = {
  ...{ kind: 'log', id: 'l', name: 'flown', title: 'Laps', time: 'flight.lap_time', stopwatch: '0.05 s' },
  columns: [
    { name: 'pull', of: 'flight.pull_at_handle', error: '2 N' },
    { name: 'wind', of: 'air.wind', error: '' },
  ],
  rows: [row('1', { time: '50.2 s', values: { pull: '24 N', wind: '2 m/s' }, note: 'calm, then "gusty"' }), row('2')],
  line_sets: [],
  taken: [],
};
const TITLES = new Map([
  ['pull', 'Pull at the handle'],
  ['wind', 'Wind'],
]);
const paste = (text: string, between: ',' | ';' | '\t' = ',', decimal: '.' | ',' = '.') =>
  rowsFromCsv(LOG, TITLES, text, { between, decimal });

describe('rows of a log as CSV', () => {
  it('come back as they went', () => {
    const text = logCsv(LOG);
    expect(text).toBe(
      'flight,laps,time,pull,wind,note\r\n1,10,50.2 s,24 N,2 m/s,"calm, then ""gusty"""\r\n2,10,,,,\r\n',
    );
    expect(paste(text)).toEqual({ ok: true, rows: LOG.rows });
  });

  it('are known by title, take the unit of the heading, and may come from copied cells', () => {
    expect(paste('Flight\t"Pull at the handle, lbf"\tTime\n7\t5.5\t50\n8\t24 N\t', '\t')).toEqual({
      ok: true,
      rows: [
        row('7', { laps: '', time: '50', values: { pull: '5.5 lbf' } }),
        row('8', { laps: '', values: { pull: '24 N' } }),
      ],
    });
  });

  it('have the separators that were chosen', () => {
    expect(paste('flight;time;note\n7;50,2;hot, calm', ';', ',')).toEqual({
      ok: true,
      rows: [row('7', { laps: '', time: '50.2', note: 'hot, calm' })],
    });
    expect(paste('flight;time\n7;50\n8;50.2', ';', ',')).toEqual({
      ok: false,
      message:
        'Row 2, time: “50.2” has a point between its digits, where decimals have a comma. Write it so, or choose the other sign.',
    });
  });

  it.each([
    ['flight,time', 'There are no rows. The first line names the columns, each line below it is a flight.'],
    ['', 'There are no rows. The first line names the columns, each line below it is a flight.'],
    [
      'flight,speed\n1,3',
      'The heading has “speed”, which this log has no column for. It has flight, laps, time, pull, wind, note. Add the column, or remove it from the text.',
    ],
    ['time,flight,time\n1,2,3', 'The heading has two columns for time. Remove one of them from the text.'],
    [
      'flight,time\n1,50\n2,50,5',
      'Row 2 has 3 fields; the heading has 2. A field with the separator in it stands in double quotes.',
    ],
    [
      'flight,note\n1,"open',
      'The text can’t be read: line 2 opens a quote that is never closed. Close the quote, or leave the quotes out.',
    ],
    [`flight\n${'1\n'.repeat(299)}`, 'That would make 301 rows. At most 300 are allowed in one log.'],
  ])('%j is refused', (text, message) => expect(paste(text)).toEqual({ ok: false, message }));
});

describe('edits of a log', () => {
  it('a new row keeps the laps and the day of the one above', () => {
    const { rows } = withRowBelow(LOG, 0, (path) => path === 'air.wind');
    expect(rows.map(({ label }) => label)).toEqual(['1', '2', '2']);
    expect(rows[1]).toEqual(row('2', { values: { wind: '2 m/s' } }));
  });

  it.each([
    ['12', '13'],
    ['flight 9', 'flight 10'],
    ['2026-09-05', ''],
    ['first', ''],
    ['', ''],
  ])('%j is followed by %j', (label, next) => expect(nextLabel(label)).toBe(next));

  it('a column gets a free name and goes with what is in it', () => {
    const more = withColumn(LOG, 'tank.pull', '1 N');
    expect(more.columns.at(-1)).toEqual({ name: 'pull_2', of: 'tank.pull', error: '1 N' });
    expect(withColumn(LOG, 'race.laps', '').columns.at(-1)!.name).not.toBe('laps');
    expect(withoutColumn(LOG, LOG.columns[0]!)).toEqual({
      ...LOG,
      columns: [LOG.columns[1]],
      rows: [{ ...LOG.rows[0], values: { wind: '2 m/s' } }, LOG.rows[1]],
    });
  });
});

describe('a factor in words', () => {
  const factor = (more: Partial<FittedFactor>): FittedFactor => ({
    ...{ path: 'flight.drag_factor', before: 1, value: 1.18249, error: 0.0143, determined: true, ...more },
  });
  const plain = { unit: '', suffix: '' };

  it('has as many digits as its error has sense', () => {
    expect(foundWords(factor({}), plain)).toBe('1.182 ± 0.014');
    expect(foundWords(factor({ value: 0.0123456, error: 0.00212 }), { unit: 'mm', suffix: '' })).toBe('12.3 ± 2.1 mm');
    expect(foundWords(factor({ determined: false, error: Number.NaN }), plain)).toBe('not determined');
    expect(foundWords(factor({ determined: false, end: 'high', value: 5 }), plain)).toBe('5, at its end');
  });

  it('is typed with six digits in its unit', () => {
    expect(takenText(factor({ value: 1 / 7 }), plain)).toBe('0.142857');
    expect(takenText(factor({ value: 0.0123456789 }), { unit: 'mm', suffix: '' })).toBe('12.3457 mm');
    expect(isTaken(factor({ value: 1.000001 }))).toBe(true);
    expect(isTaken(factor({ value: 1.001 }))).toBe(false);
  });
});

describe('readings of one flight', () => {
  const names = [{ path: 'flight.lap_time' }, { path: 'flight.shaft_speed' }];
  it('put laps, time and splits into its row, and the speed of the shaft into a column of its own', () => {
    const log = withReadings(LOG, 1, { splits: [5.021, 5.044, 4.98], shaftSpeed: (11_234 * Math.PI) / 30 }, names);
    expect(log.rows[0]).toEqual(LOG.rows[0]);
    expect(log.columns.at(-1)).toEqual({ name: 'shaft_speed', of: 'flight.shaft_speed', error: '100 rpm' });
    expect(log.rows[1]).toEqual(
      row('2', { laps: '3', time: '15.05 s', splits: '5.02 5.04 4.98', values: { shaft_speed: '11230 rpm' } }),
    );
  });

  it('leave alone what was not read', () => {
    const log = withReadings(LOG, 0, { timed: { laps: 8, time: 40.3 }, note: 'heard from the fence' }, []);
    expect(log.columns).toEqual(LOG.columns);
    expect(log.rows[0]).toEqual({
      ...LOG.rows[0],
      ...{ laps: '8', time: '40.3 s', note: 'calm, then "gusty"; heard from the fence' },
    });
  });
});

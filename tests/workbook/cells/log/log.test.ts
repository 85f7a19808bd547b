import { describe, expect, it, test } from 'vitest';
import {
  type Between,
  type FittedFactor,
  type LogCell,
  type LogRow,
  type NameInfo,
  readCsvLines,
  unitNamed,
} from '../../../../engine/index';
import { foundWords, isTaken, takenText } from '../../../../workbook/cells/fit/words';
import { logCsv } from '../../../../workbook/cells/log/csv';
import { nextLabel, withColumn, withoutColumn, withRowBelow } from '../../../../workbook/cells/log/edits';
import { type DayOrder, orderIn } from '../../../../workbook/cells/log/paste/day';
import { readFlights } from '../../../../workbook/cells/log/paste/read-flights';
import {
  isHeading,
  proposedByContent,
  proposedByHeading,
  targetsOf,
} from '../../../../workbook/cells/log/paste/targets';
import { withReadings } from '../../../../workbook/cells/log/readings';
import { weatherOf } from '../../../../workbook/cells/log/weather';
import { unitFor } from '../../../../workbook/cells/shared/paste-columns';
import { type Decimal, seenIn } from '../../../../workbook/cells/shared/separators';

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
const NAMES = new Map([
  ['flight.pull_at_handle', { title: 'Pull at the handle', unit: 'N' }],
  ['air.wind', { title: 'Wind', unit: 'm/s' }],
]);
const TARGETS = targetsOf(LOG, (path) => {
  const info = NAMES.get(path);
  return info && ({ ...info, dimension: unitNamed(info.unit)!.dimension } as NameInfo);
});
/** A text as it is read when a person chooses nothing but what is said here. */
function paste(
  text: string,
  choices: { between?: Between; decimal?: Decimal; order?: DayOrder; to?: readonly string[] } = {},
) {
  const seen = seenIn(text);
  const lines = readCsvLines(text, choices.between ?? seen.between!);
  const byHeading = proposedByHeading(lines[0]!.fields, TARGETS, 'metric');
  const headed = isHeading(lines[0]!.fields, byHeading);
  const flights = headed ? lines.slice(1) : lines;
  const proposed = headed ? byHeading : proposedByContent(flights.map(({ fields }) => fields));
  const columns = proposed.map((column, k) => {
    const target = TARGETS.find(({ key }) => key === choices.to?.[k]);
    return target ? { ...column, to: target.key, unit: unitFor(target, 'metric') } : column;
  });
  const days = columns.findIndex(({ to }) => to === 'date');
  const order = choices.order ?? orderIn(flights.map(({ fields }) => fields[days] ?? ''));
  const reading = {
    columns,
    targets: TARGETS,
    decimal: choices.decimal ?? seen.decimal ?? '.',
    order,
    units: 'metric',
  } as const;
  return { matched: columns.map(({ to }) => to), ...readFlights(flights, reading) };
}
const taken = (text: string, choices?: Parameters<typeof paste>[1]) => {
  const { rows, faults } = paste(text, choices);
  expect(faults).toEqual([]);
  return rows;
};

describe('flights from elsewhere', () => {
  it('come back as they were saved', () => {
    const text = logCsv(LOG);
    expect(text).toBe(
      'flight,date,laps,time,splits,all_laps,fuel_in,fuel_left,pull,wind,line_set,flown_as,propeller,needle,plug,note\r\n1,,10,50.2 s,,,,,24 N,2 m/s,,,,,,"calm, then ""gusty"""\r\n2,,10,,,,,,,,,,,,,\r\n',
    );
    expect(taken(text)).toEqual(LOG.rows);
  });

  it('are known by title, and take the unit of the heading', () => {
    expect(taken('Flight\t"Pull at the handle, lbf"\tTime\n7\t5.5\t50\n8\t24 N\t')).toEqual([
      row('7', { laps: '', time: '50 s', values: { pull: '5.5 lbf' } }),
      row('8', { laps: '', values: { pull: '24 N' } }),
    ]);
  });

  it('may have semicolons, decimal commas, minutes with seconds and days with points', () => {
    expect(taken('Datum;Laps;Time;Fuel in;Note\n5.9.2026;10;0:50,4;60;hot, calm', { to: ['date'] })).toEqual([
      row('', { date: '2026-09-05', laps: '10', time: '0:50.4', fuel_in: '60 mL', note: 'hot, calm' }),
    ]);
  });

  it('may have no heading: a day and a time are known by their looks', () => {
    expect(paste('2026-09-05,8,0:41.2\n2026-09-06,8,0:40.9').matched).toEqual(['date', '', 'time']);
    expect(taken('2026-09-05,8,0:41.2\n2026-09-06,8,0:40.9', { to: ['date', 'laps', 'time'] })).toEqual([
      row('', { date: '2026-09-05', laps: '8', time: '0:41.2' }),
      row('', { date: '2026-09-06', laps: '8', time: '0:40.9' }),
    ]);
  });

  it('may have single laps, in columns or in one', () => {
    const flown = { laps: '3', time: '15.1 s', splits: '5 5.1 5' };
    expect(taken('flight,lap 1,lap 2,lap 3\n4,5.0,5.1,5.0')).toEqual([row('4', flown)]);
    expect(taken('flight;splits\n4;5,0 5,1 5,0', { decimal: ',' })).toEqual([row('4', flown)]);
  });

  it('say the order of day and month, or are asked', () => {
    expect(taken('day,laps\n9/30/2026,5')[0]!.date).toBe('2026-09-30');
    expect(taken('day,laps\n30/9/26,5')[0]!.date).toBe('2026-09-30');
    expect(paste('day,laps\n5/9/2026,5').faults).toEqual([
      { line: 2, message: 'Day: “5/9/2026” could be meant in two ways. Choose whether day or month comes first.' },
    ]);
    expect(taken('day,laps\n5/9/2026,5', { order: 'month' })[0]!.date).toBe('2026-05-09');
  });

  it.each([
    ['day,laps\n31.2.2026,5', 2, 'Day: “31.2.2026” is no day. Write it as 2026-09-05 or 5.9.2026.'],
    [
      'flight,splits\n1,5.0 later',
      2,
      'Times of single laps: “later” is no time. Write each in seconds with a space between.',
    ],
    [
      'flight,time\n1,50\n2,50,5',
      3,
      'has 3 fields; the first line has 2. A field with the separator in it stands in double quotes.',
    ],
    [
      'flight;time\n7;50,1\n8;50.2',
      3,
      'Time: “50.2” has a point between its digits, where decimals have a comma. Write it so, or choose the other sign.',
    ],
  ])('%j is refused', (text, line, message) =>
    expect(
      paste(text, { between: text.includes(';') ? ';' : ',', decimal: text.includes(';') ? ',' : '.' }).faults,
    ).toEqual([{ line, message }]),
  );
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

test('the weather of the day goes into the columns that the log has for the air', () => {
  const log: LogCell = {
    ...LOG,
    columns: [
      ...LOG.columns,
      { name: 'warm', of: 'air.temperature', error: '' },
      { name: 'own', of: 'shop.wind', error: '' },
    ],
  };
  const infos = new Map([
    ['air.wind', { unit: 'm/s', cell: 'a' }],
    ['air.temperature', { unit: '°C', cell: 'a' }],
    ['shop.wind', { unit: 'm/s', cell: 's' }],
  ]);
  const day = { day: '2026-09-05', wind: 3.5, temperature: 295.15 };
  expect(
    weatherOf(
      log,
      day,
      (path) => infos.get(path),
      (id) => id === 'a',
    ),
  ).toEqual({ wind: '3.5 m/s', warm: '22 °C' });
});

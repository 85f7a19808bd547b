import { describe, expect, it } from 'vitest';
import { csvLine, readCsv, readCsvLines } from '../../../engine/library/csv';

const values = (text: string) => readCsv(text).map((row) => row.values);

describe('comma-separated values', () => {
  it('are records named by the heading', () => {
    expect(values('a,b\n1,2\n3,4\n')).toEqual([
      { a: '1', b: '2' },
      { a: '3', b: '4' },
    ]);
  });
  it('may have commas, quotes and line breaks in quotes', () => {
    expect(values('a,b\n"1, one","say ""two"""\n"over\ntwo lines",\n')).toEqual([
      { a: '1, one', b: 'say "two"' },
      { a: 'over\ntwo lines', b: '' },
    ]);
  });
  it('may end lines in either way, the last one in none', () => {
    expect(values('a,b\r\n1,2\r\n3,4')).toEqual([
      { a: '1', b: '2' },
      { a: '3', b: '4' },
    ]);
  });
  it('skip empty lines and know their line', () => {
    expect(readCsv('a,b\n\n1,2\n"x\ny",3\n5,6\n').map((row) => row.line)).toEqual([3, 4, 6]);
  });
  it('of nothing are no records', () => {
    expect(readCsv('')).toEqual([]);
    expect(readCsv('a,b\n')).toEqual([]);
  });
  it('refuse a record of another length, and a quote left open', () => {
    expect(() => readCsv('a,b\n1,2,3\n')).toThrow(new RangeError('line 2 has 3 fields; the heading has 2'));
    expect(() => readCsv('a,b\n1,"2\n')).toThrow(new RangeError('line 2 opens a quote that is never closed'));
  });
});

it('what is written is read back the same', () => {
  const rows = [
    ['a', ''],
    ['comma, inside', 'quote " inside'],
    ['two\r\nlines', '"'],
  ];
  const read = readCsv([['one', 'two'], ...rows].map(csvLine).join('')).map(({ values: { one, two } }) => [one, two]);
  expect(read).toEqual(rows.map((fields) => fields.map((field) => field.replace('\r\n', '\r\n'))));
});

it.each([
  ['=1+2', "'=1+2"],
  ['=HYPERLINK("https://example.org")', `"'=HYPERLINK(""https://example.org"")"`],
  ['+1+cmd|x', "'+1+cmd|x"],
  ['-2+3*A1', "'-2+3*A1"],
  ['-1|x', "'-1|x"],
  ['@SUM(A1)', "'@SUM(A1)"],
  ['\t=1', "'\t=1"],
  ['\r=1', `"'\r=1"`],
  ['- calm', "'- calm"],
  ["'=1", "''=1"],
])('%j, which another program could run, is written as the text %s and read back', (field, written) => {
  expect(csvLine(['a', field])).toBe(`a,${written}\r\n`);
  expect(readCsvLines(csvLine(['a', field]), ',')[0]!.fields).toEqual(['a', field]);
});

it.each(['-3', '+3', '-0.25', '-.5', '-1.5e-7', '-12 mm', '−5 °C', "'twas calm", 'a=b', ''])(
  '%s stands as it is',
  (field) => {
    expect(csvLine([field])).toBe(`${field}\r\n`);
    expect(readCsvLines(csvLine([field, 'b']), ',')[0]!.fields[0]).toBe(field);
  },
);

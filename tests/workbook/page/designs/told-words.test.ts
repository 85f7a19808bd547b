import { expect, test } from 'vitest';
import { apartWords } from '../../../../workbook/page/designs/apart-words';
import { toldWords } from '../../../../workbook/page/designs/told-of';
import type { Design } from '../../../../workbook/store/keep/index';

const figure = (of: string, value: number, unit: string, suffix = '') => ({ of, title: '', value, unit, suffix });
const flown = (pull: number, ratio: number) => [
  figure('parts.mass', 0.64, 'g'),
  figure('flight.pull', pull, 'N'),
  figure('flight.pull_per_weight', ratio, '', '× weight'),
];

test('a listed design says what it is, its weight and its pull', () => {
  expect(toldWords('Club racer', flown(21.4, 3.41))).toBe(
    'Club racer, 640\u00a0g, pulls 21.4\u00a0N, 3.41\u00a0×\u00a0weight',
  );
  expect(toldWords('', [figure('parts.mass', toOunces, 'oz')])).toBe('22\u00a0oz');
  expect(toldWords('Motor', flown(Number.NaN, Number.NaN))).toBe('Motor, 640\u00a0g, no answer for the flight');
  expect(toldWords('', [])).toBe('');
});
const toOunces = 22 * 0.028349523125;

const now = new Date(2026, 10, 28, 15).getTime();
const from = { changed: new Date(2026, 10, 28, 9, 5).getTime() } as Design;

test('designs of one title are told apart by what differs', () => {
  const texts = [
    { title: 'Tip weight', here: '21 g', there: '' },
    { title: 'Engine station', here: '-150 mm', there: '-140 mm' },
  ];
  expect(apartWords({ from, differences: { texts, here: ['Skid'], there: ['Hook'] } }, now)).toBe(
    'Told from the one changed 09:05 today: Tip weight is “21 g”, there blank; Engine station is “-150 mm”, there “-140 mm”; “Skid” is only here; 1 more thing differs.',
  );
  expect(apartWords({ from, differences: { texts: [], here: [], there: ['Hook'] } }, now)).toBe(
    'Told from the one changed 09:05 today: “Hook” is only there.',
  );
  expect(apartWords({ from, differences: { texts: [], here: [], there: [] } }, now)).toBe(
    'The same model as the one changed 09:05 today, with other words, charts or studies.',
  );
});

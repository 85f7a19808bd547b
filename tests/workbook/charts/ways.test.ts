import { expect, test } from 'vitest';
import { numberText, rangeText, titleWithUnit } from '../../../workbook/charts/frame/measure';

const nose = { title: 'nose angle', unit: '°', suffix: '', ways: ['out', 'in'] } as const;

test('an axis says which way is up, and a number on it goes its way in words', () => {
  expect(titleWithUnit(nose)).toBe('Nose angle (out +), °');
  expect([0.33, -0.33, 0].map((shown) => numberText(nose, shown))).toEqual(['0.33° out', '0.33° in', '0°']);
  expect(rangeText(nose, -0.3, 0.4)).toBe('0.3° in to 0.4° out');
  expect(rangeText({ unit: 'N', suffix: '' }, 24, 26)).toBe('24 to 26\u00a0N');
});

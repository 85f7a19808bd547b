import { describe, expect, test } from 'vitest';
import type { NameInfo } from '../../../engine/index';
import { LENGTH, MASS, ONE } from '../../../engine/units/index';
import { textToKeep, typedNumber, unitShown } from '../../../workbook/store/entries';

const named = (more: Partial<NameInfo>): NameInfo => ({
  ...{ path: 'wing.chord', slot: 0, kind: 'field', cell: 'w', title: 'Chord', symbol: 'c', dimension: LENGTH },
  ...{ unit: 'mm', suffix: '', doc: '', settable: true },
  ...more,
});
const metric = named({});
const inches = named({ unit: 'in', bare: 'mm' });
const ounces = named({ unit: 'oz', bare: 'g', dimension: MASS });

describe('an entry at rest shows one number as it was typed', () => {
  test.each<[NameInfo, string, string | undefined]>([
    [metric, '46', '46 mm'],
    [metric, '46.04', '46.04 mm'],
    [metric, '-3/32 in', '−3/32 in'],
    [metric, '1,25 m', '1.25 m'],
    [inches, '46', '46 mm'],
    [inches, '1.5 in', '1.5 in'],
    [inches, '4\' 1"', '4 ft 1 in'],
    [metric, '2 × reach', undefined],
    [metric, '', undefined],
    [metric, '3 furlong', undefined],
    [named({ options: ['balsa', 'ply'], dimension: ONE, unit: '' }), '1', undefined],
  ])('%#: %s', (info, text, shown) => {
    expect(typedNumber(info, text)).toBe(shown);
  });
});

describe('a bare number takes the unit that the entry shows', () => {
  test.each<[NameInfo, string, string, string]>([
    // In the unit in which a bare number is read nothing needs to be added.
    [metric, '', '46', '46'],
    [metric, '40 mm', '46', '46'],
    [metric, '1.5 in', '1 5/8', '1 5/8 in'],
    [metric, '2 × reach', '46', '46'],
    [inches, '', '1.5', '1.5 in'],
    [inches, '2 × reach', '-1/2', '-1/2 in'],
    [inches, '40', '46', '46'],
    [inches, '1 ft', '1.5', '1.5 ft'],
    [ounces, '', '1.1', '1.1 oz'],
    [ounces, '1 lb', '2 lb 3 oz', '2 lb 3 oz'],
    [ounces, '', '30 g', '30 g'],
    [ounces, '', '2 × tip_weight', '2 × tip_weight'],
    [ounces, '', '', ''],
    [ounces, '', 'nonsense (', 'nonsense ('],
  ])('%#: over "%s" %s', (info, before, typed, kept) => {
    expect(textToKeep(info, before, typed)).toBe(kept);
  });

  test('and where nothing is known of the path the text stays', () => {
    expect(textToKeep(undefined, '', '5')).toBe('5');
    expect(unitShown(inches, '2 × 3 mm')).toBe('in');
  });
});

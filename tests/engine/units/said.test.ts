import { describe, expect, test } from 'vitest';
import { readText } from '../../../engine/formula/index';
import { bound, formatQuantity, inUnitsOf, toSI, type UnitSet, units, unparted } from '../../../engine/units/index';

test.each([
  ['1.2 to 8.4 s', '1.2 to 8.4\u00a0s'],
  ['9 in × 4 in, at 11 400 rpm', '9\u00a0in × 4\u00a0in, at 11 400\u00a0rpm'],
  ['2 fl oz/min of 40 fl oz', '2\u00a0fl\u00a0oz/min of 40\u00a0fl\u00a0oz'],
  ['3.1 × weight', '3.1\u00a0×\u00a0weight'],
  ['8 %, 60 g/m² and 12°', '8\u00a0%, 60\u00a0g/m² and 12°'],
  ['35.3 mm is over 30 mm: 3 more', '35.3\u00a0mm is over 30\u00a0mm: 3 more'],
  ['of 4 flights in 2 steps', 'of 4 flights in 2 steps'],
  ['∞ N', '∞\u00a0N'],
])('“%s” keeps its numbers with their units', (text, kept) => {
  expect(unparted(text)).toBe(kept);
  expect(unparted(kept)).toBe(kept);
});

test.each<[string, UnitSet, string]>([
  ['2 mm of station', 'metric', '2\u00a0mm of station'],
  ['2 mm of station', 'inch_pound', '0.079\u00a0in of station'],
  ['20 to 100 mm, 370 W', 'inch_pound', '0.79 to 3.9\u00a0in, 370\u00a0W'],
  ['1\u202f500 mm', 'inch_pound', '59\u00a0in'],
])('“%s” in %s units is “%s”', (text, set, said) => {
  expect(inUnitsOf(text, set)).toBe(said);
});

describe('what is shown', () => {
  test.each(units.filter(({ name }) => name !== '').map(({ name }) => [name]))(
    'in %s can be typed again with its no-break space',
    (unit) => {
      const si = toSI(12, unit);
      const shown = formatQuantity(si, unit, { significant: 12 });
      expect(shown).toBe(bound('12', unit));
      const read = readText(shown, unit);
      if (!read.ok || read.expression.kind !== 'literal') throw new Error(`${shown} is not read as a number`);
      expect(toSI(read.expression.number, read.expression.unit)).toBeCloseTo(si, 9);
    },
  );
});

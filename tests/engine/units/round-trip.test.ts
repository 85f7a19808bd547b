import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { constantOf, readEntry, readText } from '../../../engine/formula/index';
import {
  differenceFromSI,
  differenceToSI,
  formatQuantity,
  fromSI,
  toSI,
  unitNamed,
  units,
  writeQuantity,
} from '../../../engine/units/index';
import { cases } from '../../cases';

/** What one in the last written digit is worth: "12.3 mm" 0.1, "1.23×10⁷" 10⁵. A 0 may stand for anything under the least last place. */
function lastDigitOf(text: string): number {
  const [, digits = '', raised = ''] = /([0-9.\u202f]+)(?:×10([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]+))?/.exec(text.replace(/^[−+]/, '')) ?? [];
  const power = Number([...raised].map((c) => (c === '⁻' ? '-' : '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(c))).join('') || '0');
  // Zeros at the end that were not rounded away are not written.
  const decimals = digits === '0' ? 0 : (digits.split('.')[1]?.length ?? 0);
  return 10 ** (power - decimals);
}

const SEED = 5025;
const unitName = fc.constantFrom(...units.map((unit) => unit.name));
/** Sizes that somebody could mean; numbers so small that doubles lose their digits are left out. */
const amount = fc.oneof(
  fc.double({ min: -1e6, max: 1e6, noNaN: true }).map((x) => (Math.abs(x) < 1e-100 ? 0 : x)),
  fc.integer({ min: -5000, max: 5000 }).map((n) => n / 100),
);

/** Two conversions round four times; an offset adds its own size to what is rounded. */
const near = (a: number, b: number, offset: number): boolean =>
  Math.abs(a - b) <= 8 * Number.EPSILON * (Math.abs(b) + Math.abs(offset));

describe(`units, seed ${SEED}`, () => {
  test('to SI and back', () => {
    fc.assert(
      fc.property(amount, unitName, (x, unit) => {
        expect(near(fromSI(toSI(x, unit), unit), x, unitNamed(unit)!.offset)).toBe(true);
      }),
      { seed: SEED, numRuns: cases(3000) },
    );
  });

  test('a difference converts as the difference of two values does', () => {
    fc.assert(
      fc.property(amount, amount, unitName, (x, y, unit) => {
        const { offset } = unitNamed(unit)!;
        const size = offset + Math.abs(x) + Math.abs(y);
        expect(near(differenceFromSI(toSI(x, unit) - toSI(y, unit), unit), x - y, size)).toBe(true);
        expect(near(differenceFromSI(differenceToSI(x, unit), unit), x, 0)).toBe(true);
      }),
      { seed: SEED, numRuns: cases(3000) },
    );
  });

  test('a number that is shown reads back to half of its last digit, in every unit of both sets', () => {
    fc.assert(
      fc.property(amount, unitName, (x, unit) => {
        const si = toSI(x, unit);
        const text = formatQuantity(si, unit);
        const read = readEntry(text, unit);
        const value = read.ok ? fromSI(read.si, unit) : Number.NaN;
        expect(Math.abs(value - fromSI(si, unit)), text).toBeLessThanOrEqual(
          0.5 * lastDigitOf(text) * (1 + 1e-9) + 1e-9,
        );
      }),
      { seed: SEED, numRuns: 3000 },
    );
  });

  test('a value written to be typed reads back to twelve digits', () => {
    fc.assert(
      fc.property(amount, unitName, (x, unit) => {
        const si = toSI(x, unit);
        const read = readText(writeQuantity(si, unit), unit);
        const value = read.ok ? constantOf(read.expression)! : Number.NaN;
        const size = (Math.abs(x) + unitNamed(unit)!.offset) * unitNamed(unit)!.factor;
        expect(Math.abs(value - si)).toBeLessThanOrEqual(1e-11 * size);
      }),
      { seed: SEED, numRuns: cases(3000) },
    );
  });
});

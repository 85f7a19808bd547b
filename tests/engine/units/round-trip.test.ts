import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { constantOf, readText } from '../../../engine/formula/index';
import {
  differenceFromSI,
  differenceToSI,
  fromSI,
  toSI,
  unitNamed,
  units,
  writeQuantity,
} from '../../../engine/units/index';
import { cases } from '../../cases';

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

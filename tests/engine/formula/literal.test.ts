import { describe, expect, test } from 'vitest';
import { constantOf, parseFormula, printFormula, readText } from '../../../engine/formula/index';
import { toSI, unitNamed, unitSpellings, units } from '../../../engine/units/index';

const constant = (text: string, unit?: string): number | undefined => {
  const read = unit === undefined ? parseFormula(text) : readText(text, unit);
  if (!read.ok) throw new Error(read.fault.message);
  return constantOf(read.expression);
};

describe('a bare number is in the unit of its field, everything else says its units', () => {
  test.each<[string, string, number]>([
    ['46', 'mm', 46 * 1e-3],
    ['-46', 'mm', -46 * 1e-3],
    ['−46', 'mm', -46 * 1e-3],
    ['+46', 'mm', 46 * 1e-3],
    [' 46 ', 'mm', 46 * 1e-3],
    ['3/32', 'in', (3 / 32) * 0.0254],
    ['-3/32', 'in', (-3 / 32) * 0.0254],
    ['1 3/32', 'in', 1.09375 * 0.0254],
    ['(46)', 'mm', 46 * 1e-3],
    ['15', '°C', 288.15],
    ['-40', '°F', 233.15],
    ['12', '°', (12 * Math.PI) / 180],
    ['12', 'deg', (12 * Math.PI) / 180],
    ['20', '%', 0.2],
    ['2', '', 2],
    ['46 mm', 'in', 46 * 1e-3],
    ['1 in', 'mm', 0.0254],
  ])('%s in a field of %s', (text, unit, si) => {
    expect(constant(text, unit)).toBeCloseTo(si, 14);
  });

  test('what is computed is not', () => {
    for (const text of ['2 * 3', '96/2/3', '6 / 2', '2^3', 'abs(3)', 'pi', '2 in + 1 in', '- -3', 'reach']) {
      expect(constant(text, 'mm'), text).toBeUndefined();
    }
    expect(readText('2 * 3', 'mm')).toEqual(parseFormula('2 * 3'));
  });

  test('the unit shows when it is printed', () => {
    const read = readText('-3/32', 'in');
    expect(read.ok && printFormula(read.expression)).toBe('−3/32 in');
  });

  test('a field with a unit that is none is a slip in the code', () => {
    expect(() => readText('3', 'furlong')).toThrow(
      new RangeError('furlong is not a unit; a name from the unit table is allowed'),
    );
  });
});

test('every spelling of every unit is read behind a number, with a space and without', () => {
  for (const spelling of unitSpellings) {
    const typed = [spelling, spelling.replace('²', '^2').replace('³', '^3').replace('⁴', '^4')];
    for (const text of typed.flatMap((unit) => [`4 ${unit}`, `4.5${unit}`, `3/4 ${unit}`, `1 3/4 ${unit}`])) {
      // Behind a digit, "1/m" would be part of the number.
      if (spelling.startsWith('1') && /\d1\//.test(text)) continue;
      const read = parseFormula(text);
      expect(read.ok && read.expression, text).toMatchObject({ kind: 'literal', unit: unitNamed(spelling)!.name });
    }
    expect(constant(`4 ${spelling}`)).toBe(toSI(4, spelling));
  }
});

test('a plain number with its unit is read as the grammar reads it between parentheses', () => {
  const moved = (e: unknown): unknown =>
    JSON.parse(JSON.stringify(e), (key, value) => (key === 'from' || key === 'to' ? value - 1 : value));
  for (const { name } of units) {
    for (const number of ['5', '12.5', '0.25']) {
      for (const text of [`${number} ${name}`, `${number}${name}`, `-${number}\u00a0${name}`, `+ ${number} ${name}`]) {
        const plain = parseFormula(text.trim());
        const between = parseFormula(`(${text.trim()})`);
        expect(plain.ok, text).toBe(between.ok);
        if (plain.ok && between.ok) expect(plain.expression, text).toEqual(moved(between.expression));
      }
    }
  }
});

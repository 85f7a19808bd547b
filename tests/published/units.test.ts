import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { toSI, unitNamed } from '../../engine/units/index';

/*
 * Factors of NIST Special Publication 811 (2008 edition), appendix B. Each row keeps its mark: `memory` is true where the
 * printed value was recalled and not read. Tolerance: half a unit of the last printed digit, which also covers rows whose
 * exact value was cut short (the ounce-force goes on with …125).
 */
interface Row {
  readonly unit: string;
  readonly si: string;
  readonly factor: string;
  readonly memory: string;
  readonly source: string;
}

const rows: readonly Row[] = readFileSync(new URL('./units_sp811.csv', import.meta.url), 'utf8')
  .trim()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [unit, si, factor, , memory, ...source] = line.split(',') as [string, string, string, string, string, string];
    return { unit, si, factor, memory, source: source.join(',') };
  });

/** Names of the publication and of the unit table. */
const names: Readonly<Record<string, string>> = {
  inch: 'in',
  foot: 'ft',
  mile: 'mi',
  'ounce (avoirdupois)': 'oz',
  'pound (avoirdupois)': 'lb',
  'pound-force': 'lbf',
  'ounce-force': 'ozf',
  'ounce-force inch': 'ozf·in',
  'pound-force inch': 'lbf·in',
  psi: 'psi',
  'mile per hour': 'mph',
  knot: 'kn',
  'US gallon': 'gal',
  'US fluid ounce': 'fl oz',
  'cubic inch': 'in³',
  'horsepower (550 ft lbf/s)': 'hp',
  'metric horsepower': 'PS',
  'kilopond / kilogram-force': 'kgf',
  'millimetre of mercury (conventional)': 'mmHg',
  'inch of mercury (conventional)': 'inHg',
  slug: 'slug',
  'slug per cubic foot': 'slug/ft³',
};

/** The one conversion that is a formula and not a factor. */
const FAHRENHEIT = 'degree Fahrenheit to kelvin';

/** Half a unit of the last printed digit. */
function tolerance(printed: string): number {
  const [digits, exponent = '0'] = printed.split('e') as [string, string?];
  return 0.5 * 10 ** (Number(exponent) - (digits.split('.')[1]?.length ?? 0));
}

const factorRows = rows.filter((row) => row.unit in names);

describe('factors of NIST SP 811', () => {
  test.each(factorRows)('$unit is $factor $si ($source; from memory: $memory)', ({ unit, si, factor }) => {
    const name = names[unit]!;
    expect(Math.abs(unitNamed(name)!.factor - Number(factor))).toBeLessThanOrEqual(tolerance(factor));
    const coherent = si === 'm3' ? 'm³' : si === 'kg/m3' ? 'kg/m³' : si === 'N m' ? 'N·m' : si;
    expect(unitNamed(coherent)).toMatchObject({ dimension: unitNamed(name)!.dimension, factor: 1 });
  });

  test('degree Fahrenheit to kelvin is (t + 459.67)/1.8', () => {
    expect(rows.find((row) => row.unit === FAHRENHEIT)?.factor).toBe('(t+459.67)/1.8');
    for (const t of [-459.67, -40, 0, 32, 59, 212]) expect(toSI(t, '°F')).toBeCloseTo((t + 459.67) / 1.8, 10);
  });

  test('every row is used', () => {
    const unused = rows.filter((row) => !(row.unit in names)).map((row) => row.unit);
    expect(unused).toEqual([FAHRENHEIT]);
  });
});

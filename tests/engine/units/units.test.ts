import { describe, expect, test } from 'vitest';
import {
  type Dimension,
  LENGTH,
  MOMENT,
  ONE,
  overDimension,
  PRESSURE,
  powerDimension,
  timesDimension,
  toSI,
  unitNamed,
  units,
} from '../../../engine/units/index';

const RAISED: Readonly<Record<string, number>> = { '²': 2, '³': 3, '⁴': 4 };

interface Size {
  readonly factor: number;
  readonly dimension: Dimension;
}

/** Parts that stand in compound names only. */
const onlyInside: Readonly<Record<string, Size>> = {
  '1': { factor: 1, dimension: ONE },
  rev: { factor: 2 * Math.PI, dimension: ONE },
  dm: { factor: 0.1, dimension: LENGTH },
  mPa: { factor: 1e-3, dimension: PRESSURE },
  µPa: { factor: 1e-6, dimension: PRESSURE },
  uPa: { factor: 1e-6, dimension: PRESSURE },
  kWh: { factor: 3.6e6, dimension: MOMENT },
};

/** Size of a compound name from its parts: `N·m/rad` is N times m over rad. Undefined where a part is no unit. */
function sizeFromParts(name: string): Size | undefined {
  const [above, below, ...more] = name.replace(/[()]/g, '').split('/') as [string, string?];
  if (more.length > 0) return undefined;
  const top = product(above);
  const bottom = product(below ?? '1');
  if (top === undefined || bottom === undefined) return undefined;
  return { factor: top.factor / bottom.factor, dimension: overDimension(top.dimension, bottom.dimension) };
}

function product(names: string): Size | undefined {
  let size: Size = { factor: 1, dimension: ONE };
  for (const part of names.split('·')) {
    const power = RAISED[part.at(-1)!] ?? 1;
    const base = power === 1 ? part : part.slice(0, -1);
    const unit = onlyInside[base] ?? unitNamed(base);
    if (unit === undefined) return undefined;
    size = {
      factor: size.factor * unit.factor ** power,
      dimension: timesDimension(size.dimension, powerDimension(unit.dimension, power)),
    };
  }
  return size;
}

const compounds = units.flatMap((unit) =>
  [unit.name, ...unit.aliases].filter((name) => /[·/²³⁴]/.test(name)).map((name) => ({ name, unit })),
);

describe('unit table', () => {
  test.each(compounds)('$name is made of its parts', ({ name, unit }) => {
    const size = sizeFromParts(name);
    expect(size, `${name} has a part that is no unit`).toBeDefined();
    expect(unit.dimension).toEqual(size!.dimension);
    expect(Math.abs(unit.factor / size!.factor - 1)).toBeLessThan(1e-14);
  });

  test('there are compound names to test', () => {
    expect(compounds.length).toBeGreaterThan(80);
  });

  test('every spelling finds its own unit', () => {
    for (const unit of units) for (const name of [unit.name, ...unit.aliases]) expect(unitNamed(name)).toBe(unit);
  });

  test.each([
    ['m^2', 'm²'],
    ['kg/m^3', 'kg/m³'],
    ['in^4', 'in⁴'],
    ['μm', 'µm'],
    ['Ω', 'Ω'],
    ['ohm', 'Ω'],
    ['N⋅m', 'N·m'],
    ['Nm', 'N·m'],
    ['ozfin', 'ozf·in'],
    ['kgm^2', 'kg·m²'],
    ['Pas', 'Pa·s'],
    ['Wh', 'W·h'],
    ['deg', '°'],
    ['º', '°'],
    ['cc', 'cm³'],
    ['ccm', 'cm³'],
    ['cm3', 'cm³'],
    ['in3', 'in³'],
    ['m2', 'm²'],
    ['m/s2', 'm/s²'],
    ['cu in', 'in³'],
    ['cu. in.', 'in³'],
    ['cubic inches', 'in³'],
    ['square feet', 'ft²'],
    ['oz/sq ft', 'oz/ft²'],
    ['lb/cu ft', 'lb/ft³'],
    ['Feet', 'ft'],
    ['INCHES', 'in'],
    ['KG', 'kg'],
    ['grams', 'g'],
    ['pounds', 'lb'],
    ['F', '°F'],
    ['"', 'in'],
    ['floz', 'fl oz'],
    ['degC', '°C'],
    ['℉', '°F'],
  ])('%s is read as %s', (typed, name) => {
    expect(unitNamed(typed)?.name).toBe(name);
  });

  test('what is no unit is none', () => {
    for (const name of ['furlong', 'M', 'Mm', 'G', ' mm', 'm/s/s', 'mW2']) expect(unitNamed(name)).toBeUndefined();
  });

  test('a gram is a mass, whatever stands beside it', () => {
    expect(unitNamed('g')).toMatchObject({ factor: 1e-3, dimension: { mass: 1, length: 0, time: 0 } });
  });

  // Relations that are definitions, not factors: a typing error in one of a pair breaks them.
  test.each([
    [1, 'ft', 12, 'in'],
    [1, 'yd', 3, 'ft'],
    [1, 'mi', 5280, 'ft'],
    [1, 'in', 1000, 'thou'],
    [1, 'lb', 16, 'oz'],
    [1, 'lbf', 16, 'ozf'],
    [1, 'gal', 128, 'fl oz'],
    [1, 'gal', 231, 'in³'],
    [1, 'L', 1000, 'mL'],
    [1, 'kn', 1.852, 'km/h'],
    [60, 'mph', 88, 'ft/s'],
    [1, 'hp', 550, 'lbf·ft/s'],
    [1, 'rev/s', 60, 'rpm'],
    [360, '°', 2 * Math.PI, 'rad'],
    [1, 'bar', 1000, 'hPa'],
    [1, 'kgf', 1000, 'gf'],
    [1, 'Ah', 1000, 'mAh'],
    [1, 'inHg', 25.4, 'mmHg'],
    [212, '°F', 100, '°C'],
    [-40, '°F', -40, '°C'],
    [0, '°C', 273.15, 'K'],
  ])('%d %s = %d %s', (a, unitA, b, unitB) => {
    const other = unitB === 'lbf·ft/s' ? toSI(b, 'lbf·ft') : toSI(b, unitB);
    expect(Math.abs(toSI(a, unitA) - other)).toBeLessThanOrEqual(1e-14 * Math.abs(other));
  });

  test('a wrong name in code is refused with the name', () => {
    expect(() => toSI(1, 'furlong')).toThrow(
      new RangeError('furlong is not a unit; a name from the unit table is allowed'),
    );
  });
});

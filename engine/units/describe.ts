import {
  ACCELERATION,
  AREA,
  AREAL_MASS,
  BENDING_STIFFNESS,
  CURRENT,
  DENSITY,
  type Dimension,
  dimension,
  FORCE,
  INERTIA,
  KINEMATIC_VISCOSITY,
  LENGTH,
  LINEAR_MASS,
  MASS,
  MOMENT,
  ONE,
  POWER,
  PRESSURE,
  RATE,
  SPEED,
  sameDimension,
  TEMPERATURE,
  TIME,
  VISCOSITY,
  VOLUME,
  VOLUME_FLOW,
} from './dimension';
import type { UnitSet } from './unit';

interface NamedDimension {
  readonly dimension: Dimension;
  /** As it stands in a sentence: "a length". */
  readonly phrase: string;
  /** Coherent SI unit. */
  readonly unit: string;
  /** Unit in which a builder would write it, where that is another one. */
  readonly everyday?: string;
  /** The same in inches and pounds. */
  readonly inchPound?: string;
}

const named: readonly NamedDimension[] = [
  { dimension: LENGTH, phrase: 'a length', unit: 'm', everyday: 'mm', inchPound: 'in' },
  { dimension: AREA, phrase: 'an area', unit: 'm²', everyday: 'dm²', inchPound: 'in²' },
  { dimension: VOLUME, phrase: 'a volume', unit: 'm³', everyday: 'cm³', inchPound: 'in³' },
  { dimension: MASS, phrase: 'a mass', unit: 'kg', everyday: 'g', inchPound: 'oz' },
  { dimension: TIME, phrase: 'a time', unit: 's' },
  { dimension: TEMPERATURE, phrase: 'a temperature', unit: 'K', everyday: '°C', inchPound: '°F' },
  { dimension: CURRENT, phrase: 'a current', unit: 'A' },
  { dimension: SPEED, phrase: 'a speed', unit: 'm/s', inchPound: 'mph' },
  { dimension: ACCELERATION, phrase: 'an acceleration', unit: 'm/s²', inchPound: 'ft/s²' },
  { dimension: RATE, phrase: 'a rate', unit: '1/s', everyday: 'rpm' },
  { dimension: FORCE, phrase: 'a force', unit: 'N', inchPound: 'lbf' },
  { dimension: MOMENT, phrase: 'a moment', unit: 'N·m', inchPound: 'lbf·in' },
  { dimension: PRESSURE, phrase: 'a pressure', unit: 'Pa', everyday: 'hPa', inchPound: 'psi' },
  { dimension: POWER, phrase: 'a power', unit: 'W' },
  { dimension: DENSITY, phrase: 'a density', unit: 'kg/m³', inchPound: 'lb/ft³' },
  { dimension: AREAL_MASS, phrase: 'a mass per area', unit: 'kg/m²', everyday: 'g/m²', inchPound: 'oz/yd²' },
  { dimension: LINEAR_MASS, phrase: 'a mass per length', unit: 'kg/m', everyday: 'g/m', inchPound: 'oz/ft' },
  { dimension: INERTIA, phrase: 'a moment of inertia', unit: 'kg·m²', everyday: 'g·m²', inchPound: 'oz·in²' },
  { dimension: VISCOSITY, phrase: 'a viscosity', unit: 'Pa·s', inchPound: 'lb/(ft·s)' },
  { dimension: KINEMATIC_VISCOSITY, phrase: 'a kinematic viscosity', unit: 'm²/s', inchPound: 'ft²/s' },
  { dimension: VOLUME_FLOW, phrase: 'a flow', unit: 'm³/s', everyday: 'mL/min', inchPound: 'fl oz/min' },
  { dimension: BENDING_STIFFNESS, phrase: 'a bending stiffness', unit: 'N·m²', inchPound: 'lbf·in²' },
  { dimension: dimension(-1), phrase: 'a number per length', unit: '1/m', inchPound: '1/ft' },
  { dimension: dimension(4), phrase: 'a second moment of area', unit: 'm⁴', everyday: 'cm⁴', inchPound: 'in⁴' },
  { dimension: dimension(1, 1), phrase: 'a mass times a length', unit: 'kg·m', everyday: 'g·mm', inchPound: 'oz·in' },
  { dimension: dimension(0, 1, -1), phrase: 'a mass flow', unit: 'kg/s', everyday: 'g/min', inchPound: 'oz/min' },
  { dimension: dimension(0, 1, -2), phrase: 'a force per length', unit: 'N/m', inchPound: 'lbf/in' },
  { dimension: dimension(0, 0, 1, 0, 1), phrase: 'a charge', unit: 'A·s', everyday: 'mAh' },
  { dimension: dimension(2, 1, -3, 0, -1), phrase: 'a voltage', unit: 'V' },
  { dimension: dimension(2, 1, -3, 0, -2), phrase: 'a resistance', unit: 'Ω' },
];

function find(d: Dimension): NamedDimension | undefined {
  return named.find((row) => sameDimension(row.dimension, d));
}

/** A dimension as it stands in a sentence: "a length", "a plain number", "a quantity in m²·kg/s³". */
export function describeDimension(d: Dimension): string {
  if (sameDimension(d, ONE)) return 'a plain number';
  const row = find(d);
  return row ? row.phrase : `a quantity in ${spellDimension(d)}`;
}

/** Unit in which a builder would write such a quantity; the coherent SI unit where there is no usual one. */
export function everydayUnit(d: Dimension, set: UnitSet = 'metric'): string {
  const row = find(d);
  if (set === 'inch_pound' && row?.inchPound !== undefined) return row.inchPound;
  return row?.everyday ?? row?.unit ?? spellDimension(d);
}

/** The coherent unit in base units: "m²·kg/s³"; '' for a plain number. */
export function spellDimension(d: Dimension): string {
  const bases: readonly (readonly [string, number])[] = [
    ['m', d.length],
    ['kg', d.mass],
    ['s', d.time],
    ['K', d.temperature],
    ['A', d.current],
  ];
  const above = bases.filter(([, n]) => n > 0).map(([base, n]) => base + raised(n));
  const below = bases.filter(([, n]) => n < 0).map(([base, n]) => base + raised(-n));
  if (above.length === 0 && below.length === 0) return '';
  const top = above.join('·') || '1';
  if (below.length === 0) return top;
  return `${top}/${below.length > 1 ? `(${below.join('·')})` : below[0]}`;
}

const superscripts: Readonly<Record<string, string>> = {
  '0': '⁰',
  '1': '¹',
  '2': '²',
  '3': '³',
  '4': '⁴',
  '5': '⁵',
  '6': '⁶',
  '7': '⁷',
  '8': '⁸',
  '9': '⁹',
  '-': '⁻',
};

/** A whole number in raised digits: −5 → "⁻⁵". */
export function superscript(n: number): string {
  return String(n).replace(/[-0-9]/g, (digit) => superscripts[digit]!);
}

function raised(exponent: number): string {
  if (exponent === 1) return '';
  return Number.isInteger(exponent) ? superscript(exponent) : `^${Number(exponent.toPrecision(3))}`;
}

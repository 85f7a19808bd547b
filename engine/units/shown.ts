import { formatQuantity } from './format';
import type { UnitSet } from './unit';
import { toSI, unitNamed, units } from './units';

/**
 * In which unit of the other set a quantity is shown: the size that a builder would write it in. Common practice, no source.
 * Where two rows begin or end alike the first holds.
 */
const PAIRS: readonly (readonly [metric: string, inchPound: string])[] = [
  ['mm', 'in'],
  ['m', 'ft'],
  ['cm', 'in'],
  ['µm', 'thou'],
  ['km', 'mi'],
  ['m', 'yd'],
  ['dm²', 'in²'],
  ['cm²', 'in²'],
  ['mm²', 'in²'],
  ['m²', 'ft²'],
  ['m²', 'yd²'],
  ['cm³', 'in³'],
  ['mL', 'fl oz'],
  ['dm³', 'in³'],
  ['mm³', 'in³'],
  ['m³', 'ft³'],
  ['L', 'gal'],
  ['cm⁴', 'in⁴'],
  ['mm⁴', 'in⁴'],
  ['m⁴', 'in⁴'],
  ['m/s', 'mph'],
  ['km/h', 'mph'],
  ['m/s', 'ft/s'],
  ['m/s', 'ft/min'],
  ['mm/s', 'in/s'],
  ['cm/s', 'in/s'],
  ['m/s²', 'ft/s²'],
  ['mL/min', 'fl oz/min'],
  ['mL/s', 'fl oz/min'],
  ['L/min', 'fl oz/min'],
  ['m³/s', 'fl oz/min'],
  ['m²/s', 'ft²/s'],
  ['mm²/s', 'ft²/s'],
  ['g', 'oz'],
  ['kg', 'lb'],
  ['mg', 'oz'],
  ['kg', 'slug'],
  ['g/m', 'oz/ft'],
  ['mg/m', 'oz/ft'],
  ['kg/m', 'lb/ft'],
  ['g/m²', 'oz/yd²'],
  ['g/dm²', 'oz/ft²'],
  ['kg/m²', 'lb/ft²'],
  ['g/cm²', 'oz/in²'],
  ['kg/m³', 'lb/ft³'],
  ['g/cm³', 'lb/in³'],
  ['g/cm³', 'oz/in³'],
  ['kg/m³', 'slug/ft³'],
  ['g·mm', 'oz·in'],
  ['g·cm', 'oz·in'],
  ['g·m', 'oz·in'],
  ['kg·m', 'oz·in'],
  ['g·cm²', 'oz·in²'],
  ['g·m²', 'oz·in²'],
  ['kg·cm²', 'lb·in²'],
  ['kg·m²', 'lb·ft²'],
  ['g/min', 'oz/min'],
  ['g/s', 'oz/min'],
  ['kg/s', 'oz/min'],
  ['N', 'lbf'],
  ['mN', 'ozf'],
  ['gf', 'ozf'],
  ['kgf', 'lbf'],
  ['kN', 'lbf'],
  ['N/m', 'lbf/ft'],
  ['N/mm', 'lbf/in'],
  ['N·m', 'lbf·in'],
  ['N·mm', 'ozf·in'],
  ['N·cm', 'ozf·in'],
  ['mN·m', 'ozf·in'],
  ['gf·cm', 'ozf·in'],
  ['kgf·cm', 'ozf·in'],
  ['N·m', 'lbf·ft'],
  ['N·m²', 'lbf·in²'],
  ['N·mm²', 'lbf·in²'],
  ['hPa', 'inHg'],
  ['MPa', 'psi'],
  ['kPa', 'psi'],
  ['Pa', 'psi'],
  ['bar', 'psi'],
  ['N/m²', 'lbf/ft²'],
  ['GPa', 'ksi'],
  ['mmHg', 'inHg'],
  ['kW', 'hp'],
  ['PS', 'hp'],
  ['°C', '°F'],
  ['µPa·s', 'lb/(ft·s)'],
  ['mPa·s', 'lb/(ft·s)'],
  ['Pa·s', 'lb/(ft·s)'],
  ['g/kWh', 'lb/(hp·h)'],
  ['N·m/A', 'ozf·in/A'],
  ['1/m', '1/ft'],
  ['J', 'lbf·ft'],
  ['kJ', 'lbf·ft'],
];

const toInchPound = new Map<string, string>();
const toMetric = new Map<string, string>();
for (const [metric, inchPound] of PAIRS) {
  if (!toInchPound.has(metric)) toInchPound.set(metric, inchPound);
  if (!toMetric.has(inchPound)) toMetric.set(inchPound, metric);
}

/** The unit in which a design shows what is declared or typed in `unit`; `inchPound`: where another than the usual one is wanted. */
export function shownUnit(unit: string, set: UnitSet, inchPound?: string): string {
  if (set === 'metric') return toMetric.get(unit) ?? unit;
  if (unitNamed(unit)?.system === 'inch_pound') return unit;
  return inchPound ?? toInchPound.get(unit) ?? unit;
}

const NUMBER = '[−-]?[0-9]+(?:[ \u202f][0-9]{3})*(?:\\.[0-9]+)?';
const alternatives = (names: readonly string[]): string =>
  [...names]
    .sort((a, b) => b.length - a.length)
    .map((name) => name.replace(/[()]/g, '\\$&'))
    .join('|');
/** Not in the middle of a longer unit or word. */
const ENDS = '(?![\\p{L}\\p{N}·/²³⁴])';
/** The units in which a sentence of the program gives its numbers. */
const SAID = alternatives([...toInchPound.keys()]);
const QUANTITIES = new RegExp(`(${NUMBER})( to | or | × )?(${NUMBER})?[ \u00a0](${SAID})${ENDS}`, 'gu');
const NAMES = alternatives([...units.map(({ name }) => name).filter((name) => name !== ''), '× weight']);
const PARTED = new RegExp(`(?<=[0-9∞]) (${NAMES})${ENDS}`, 'gu');
const SAID_DIGITS = 2;

/** A sentence with every number held to the unit behind it. */
export const unparted = (text: string): string =>
  text.replace(PARTED, (_, unit: string) => `\u00a0${unit.replaceAll(' ', '\u00a0')}`);

/** A sentence of the program's own with its quantities in the units of a design, number and unit never parted: "2 mm of station" → "0.079 in of station". */
export function inUnitsOf(text: string, set: UnitSet, digits: number = SAID_DIGITS): string {
  if (set === 'metric') return unparted(text);
  const converted = text.replace(
    QUANTITIES,
    (all, first: string, between: string | undefined, second: string | undefined, unit: string) => {
      if ((between === undefined) !== (second === undefined)) return all;
      const shown = shownUnit(unit, set);
      const said = (number: string, behind: string): string => {
        const si = toSI(Number(number.replace('−', '-').replace(/[ \u202f]/g, '')), unit);
        const text = formatQuantity(si, shown, { significant: digits });
        return behind === '' ? text.slice(0, -shown.length).trimEnd() : text;
      };
      return second === undefined ? said(first, unit) : `${said(first, '')}${between}${said(second, unit)}`;
    },
  );
  return unparted(converted);
}

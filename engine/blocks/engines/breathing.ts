import { CHARGE_EXPONENT, chargeShare, PACK_EXPONENT } from '../../physics/index';
import type { air } from '../air/index';
import type { Columns, Equation, Field } from '../block';
import { AIR_DENSITY, PLAIN } from '../measures';

/** How the power goes with the air. */
export const densityExponent = {
  density_exponent: {
    ...PLAIN,
    symbol: 'κ',
    title: 'Power goes with density to the power of',
    doc: `1 for an engine that breathes the air, and for a motor that is held at its rpm; about ${PACK_EXPONENT} for a motor on its pack, whose rpm rise where the air is thin.`,
    default: CHARGE_EXPONENT,
    range: [0, 1.5],
    basis: `${CHARGE_EXPONENT}: the charge of a two-stroke (derivation). Friction makes it 1.0 to 1.2 (recalled, no source).`,
    advanced: true,
  } as Field,
} as const;

/** Density of the air in which something of the engine was measured. */
export const densityOf = (symbol: string, of: string, doc: string): Field => ({
  ...AIR_DENSITY,
  symbol,
  title: `Air density of the ${of}`,
  doc,
  default: 1.225,
  range: [0.6, 1.6],
  basis: 'Standard atmosphere at sea level, ISO 2533.',
  advanced: true,
});

/** Power in the air of today over that in air of the density `known`, as moist as today's where nothing else is said. */
export const powerInAir = (
  m: Float64Array,
  f: { readonly air: Columns<(typeof air)['results']> } & Columns<typeof densityExponent>,
  i: number,
  known: number,
  knownDryPart = m[f.air.dry_part + i]!,
): number =>
  chargeShare(m[f.air.density + i]!, known, m[f.air.dry_part + i]!, knownDryPart, m[f.density_exponent + i]!);

export const breathingEquation = (known: string): Equation => ({
  title: 'Power in the air of today',
  text: `w = [(ρ/ρ_${known}) (δ/δ_${known})]^κ`,
  doc: `κ = ${CHARGE_EXPONENT} where none is typed, δ the dry part of the air. With κ = 1 the rpm of a given propeller stay; power, torque and thrust go with density, as drag does, so that a hot day or a high field costs little speed. For a motor on its pack 1 − 3s/(1 + s), s the share of its idle rpm that the load takes: ${PACK_EXPONENT} at s = 0.2, 0.73 to 0.31 for 0.1 to 0.3.`,
  source:
    'Derivation: mass of the charge; torque of a motor in a straight line against its propeller. Band of an engine 1.0 to 1.2, recalled, no source.',
});

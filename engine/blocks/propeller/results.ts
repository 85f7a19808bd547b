import { PROPELLER_KNOTS } from '../../physics/index';
import { INERTIA, MOMENT, ONE, POWER } from '../../units/index';
import type { Curve, Result } from '../block';
import { AIRSPEED, GRAMS, MILLIMETRES, NEWTONS, PLAIN, SHARE } from '../measures';

const table = (symbol: string, title: string, doc: string): Curve => ({
  curve: 'propeller',
  knots: PROPELLER_KNOTS,
  dimension: ONE,
  unit: '',
  symbol,
  title,
  doc,
});

/** What every kind of propeller tells the engines. */
export const propellerResults = {
  thrust_table: table('C_T', 'Thrust coefficient', 'Thrust over ρ n² D⁴, against advance ratio and tip speed.'),
  power_table: table('C_P', 'Power coefficient', 'Power over ρ n³ D⁵, against advance ratio and tip speed.'),
  advance_step: {
    ...PLAIN,
    symbol: 'ΔJ',
    title: 'Step of the advance ratio',
    doc: 'Between the knots of the tables.',
    detail: true,
  },
  diameter: { ...MILLIMETRES, symbol: 'D', title: 'Diameter', doc: 'Tip to tip.', detail: true },
  pitch: { ...MILLIMETRES, symbol: 'p', title: 'Pitch', doc: 'As marked.', detail: true },
  static_thrust: {
    ...NEWTONS,
    symbol: 'P_0',
    title: 'Thrust at rest',
    doc: 'At the rpm looked at, not moving.',
  },
  thrust: { ...NEWTONS, symbol: 'P', title: 'Thrust', doc: 'At the rpm and airspeed looked at.' },
  torque: {
    dimension: MOMENT,
    unit: 'N·m',
    tradeUnit: 'ozf·in',
    symbol: 'Q',
    title: 'Torque',
    doc: 'At the rpm and airspeed looked at.',
    detail: true,
  },
  power: {
    dimension: POWER,
    unit: 'W',
    symbol: 'W',
    title: 'Power',
    doc: 'That the shaft must give at the rpm and airspeed looked at.',
  },
  efficiency: {
    ...SHARE,
    symbol: 'η',
    title: 'Efficiency',
    doc: 'Thrust × airspeed over shaft power, as looked at.',
  },
  advance_ratio: { ...PLAIN, symbol: 'J', title: 'Advance ratio', doc: 'V/(n D), as looked at.' },
  thrust_coefficient: {
    ...PLAIN,
    symbol: 'C_T',
    title: 'Thrust coefficient',
    doc: 'Thrust over ρ n² D⁴, as looked at.',
    detail: true,
  },
  power_coefficient: {
    ...PLAIN,
    symbol: 'C_P',
    title: 'Power coefficient',
    doc: 'Power over ρ n³ D⁵, as looked at.',
    detail: true,
  },
  pitch_speed: {
    ...AIRSPEED,
    symbol: 'n p',
    title: 'Pitch speed',
    doc: 'Rpm looked at × marked pitch.',
  },
  zero_thrust_speed: {
    ...AIRSPEED,
    symbol: 'V_0',
    title: 'Speed of zero thrust',
    doc: 'Airspeed at which it stops pulling at the rpm looked at.',
    detail: true,
  },
  tip_mach: {
    ...PLAIN,
    symbol: 'M_t',
    title: 'Tip Mach number',
    doc: 'Speed of the tips over the speed of sound, as looked at. Above 0.7 noise and drag grow fast.',
    usual: [0.3, 0.7],
  },
  mass: { ...GRAMS, symbol: 'm', title: 'Mass', doc: 'As typed, or from the chords.', detail: true },
  inertia: {
    dimension: INERTIA,
    unit: 'g·cm²',
    tradeUnit: 'oz·in²',
    symbol: 'I_p',
    title: 'Inertia',
    doc: 'About the shaft.',
    detail: true,
  },
} as const satisfies Readonly<Record<string, Result | Curve>>;

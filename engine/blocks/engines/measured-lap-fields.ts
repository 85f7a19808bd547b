import { PITCH_SPEED_SHARE } from '../../physics/index';
import { LINEAR_MASS, POWER, RATE, TIME } from '../../units/index';
import type { Field, Result } from '../block';
import {
  AIR_DENSITY,
  AIRSPEED,
  GRAMS,
  METRES,
  MILLIMETRES,
  NEWTONS,
  PLAIN,
  SHARE,
  SMALL_AREA,
  SURFACE,
} from '../measures';

const KEPT =
  'The present design. Before you change the wing, the tail or a drag item, type the number that the results show, or the change would be taken for one of power.';

/** The set-up that flew the timed lap. Its numbers stay what they were when the design is changed. */
export const knownSetup = {
  lap_time: {
    dimension: TIME,
    unit: 's',
    symbol: 't',
    title: 'Timed lap',
    doc: 'One lap in calm air, level, engine at its usual setting; the mean of ten is better.',
    default: 4.9,
    range: [1, 20],
  } as Field,
  known_mass: {
    ...GRAMS,
    symbol: 'm_k',
    title: 'Weight then',
    doc: 'All-up weight of the model when the lap was timed, with the fuel on board.',
    default: 0.85,
    range: [0.02, 10],
  } as Field,
  known_radius: {
    ...METRES,
    symbol: 'R_k',
    title: 'Radius then',
    doc: 'From the pilot to the leadout guide: reach of the hand, lines, connectors and exposed leadout.',
    default: 18.9,
    range: [3, 40],
  } as Field,
  known_arm: {
    ...MILLIMETRES,
    symbol: 'a_k',
    title: 'Guide to CG then',
    doc: 'Sideways, from the leadout guide to the CG.',
    default: 0.525,
    range: [0, 3],
  } as Field,
  known_height: {
    ...METRES,
    symbol: 'h_k',
    title: 'Height above the handle then',
    doc: 'Of the model above the handle while the lap was timed.',
    default: 1.5,
    range: [-2, 15],
  } as Field,
  known_handle_reach: {
    ...METRES,
    symbol: 'r_k',
    title: 'Reach of the hand then',
    doc: 'From the axis about which the pilot turns to the grip.',
    default: 0.6,
    range: [0, 2],
    advanced: true,
  } as Field,
  known_count: {
    ...PLAIN,
    symbol: 'n_k',
    title: 'Lines then',
    doc: 'How many lines.',
    default: 2,
    range: [1, 4],
  } as Field,
  known_diameter: {
    ...MILLIMETRES,
    symbol: 'd_k',
    title: 'Line diameter then',
    doc: 'Of each line.',
    default: 0.00038,
    range: [0.0001, 0.002],
  } as Field,
  known_linear_mass: {
    dimension: LINEAR_MASS,
    unit: 'g/m',
    symbol: 'μ_k',
    title: 'Mass per length of a line then',
    doc: 'Of one line; it matters little here.',
    default: 0.0007,
    range: [0, 0.02],
    advanced: true,
  } as Field,
  known_line_drag: {
    ...PLAIN,
    symbol: 'C_k',
    title: 'Line drag coefficient then',
    doc: 'On diameter × length.',
    default: 1.1,
    range: [0.3, 5],
    basis: 'Stranded line, the middle of 1.0 to 1.2 (Hoerner, Fluid-Dynamic Drag, from memory).',
    advanced: true,
  } as Field,
  known_density: {
    ...AIR_DENSITY,
    symbol: 'ρ_k',
    title: 'Air density then',
    doc: 'On the day of the timed lap.',
    default: 1.225,
    range: [0.6, 1.6],
    basis: 'Standard atmosphere at sea level, ISO 2533.',
    advanced: true,
  } as Field,
  known_propeller_diameter: {
    ...MILLIMETRES,
    symbol: 'D_k',
    title: 'Propeller diameter then',
    doc: 'Of the propeller that flew the timed lap.',
    default: Number.NaN,
    range: [0.02, 1],
    basis: 'The present propeller.',
    advanced: true,
  } as Field,
  known_drag_area: {
    ...SMALL_AREA,
    symbol: 'A_k',
    title: 'Drag area then',
    doc: 'Of the whole model with its wing, lines apart, when the lap was timed.',
    default: Number.NaN,
    range: [0.0001, 0.2],
    basis: KEPT,
    advanced: true,
  } as Field,
  known_induced_area: {
    ...SURFACE,
    symbol: 'S_k',
    title: 'Wing area over k then',
    doc: 'Wing area over the factor k of drag due to lift, when the lap was timed.',
    default: Number.NaN,
    range: [0.01, 1000],
    basis: KEPT,
    advanced: true,
  } as Field,
} as const;

/** What is made of the power. */
export const powerUse = {
  shaft_speed: {
    dimension: RATE,
    unit: 'rpm',
    symbol: 'n',
    title: 'Rpm in flight',
    doc: 'Of the propeller, by ear or tachometer.',
    default: Number.NaN,
    range: [(1000 * 2 * Math.PI) / 60, (60000 * 2 * Math.PI) / 60],
    basis: `Speed of the timed lap over ${PITCH_SPEED_SHARE} × pitch (common practice, no source).`,
  } as Field,
  blade_efficiency: {
    ...SHARE,
    symbol: 'η_b',
    title: 'Blade efficiency',
    doc: 'Share of the shaft power that an ideal propeller of that diameter would need; the blades drag away the rest. Sets the torque, not the thrust.',
    default: 0.8,
    range: [0.2, 1],
    basis: 'A guess without a source.',
    advanced: true,
  } as Field,
} as const;

/** What the timed lap says, beside what every engine tells. */
export const lapResults = {
  lap_speed: {
    ...AIRSPEED,
    symbol: 'V_k',
    title: 'Speed of the timed lap',
    doc: 'Circumference at the CG over lap time.',
  },
  lap_thrust: {
    ...NEWTONS,
    symbol: 'P_k',
    title: 'Thrust of the timed lap',
    doc: 'What drag of model and lines took.',
  },
  useful_power: {
    dimension: POWER,
    unit: 'W',
    symbol: 'W_k',
    title: 'Useful power of the timed lap',
    doc: 'Thrust × speed.',
  },
  drag_area_then: {
    ...SMALL_AREA,
    symbol: 'A_k',
    title: 'Drag area of the timed lap',
    doc: 'What was taken for the whole model with its wing, lines apart. To hold the power while drag is changed, type this number as the drag area then.',
    detail: true,
  },
  induced_area_then: {
    ...SURFACE,
    symbol: 'S_k',
    title: 'Wing area over k of the timed lap',
    doc: 'What was taken. To hold the power while the wing is changed, type this number as the wing area over k then.',
    detail: true,
  },
} as const satisfies Readonly<Record<string, Result>>;

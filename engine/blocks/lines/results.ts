import { LINEAR_MASS } from '../../units/index';
import type { Result } from '../block';
import { GRAMS, METRES, MILLIMETRES, NEWTONS, PLAIN } from '../measures';

/** What the lines tell the other blocks. */
export const linesResults = {
  count: { ...PLAIN, symbol: 'n', title: 'Lines', doc: 'How many lines.', detail: true },
  diameter: { ...MILLIMETRES, symbol: 'd', title: 'Line diameter', doc: 'Of each line.', detail: true },
  flying_length: {
    ...METRES,
    symbol: 'l_f',
    title: 'Grip to guide',
    doc: 'Length that turns with the hand: handle cable, connectors, lines and exposed leadout.',
  },
  guide_radius: {
    ...METRES,
    symbol: 'R_g',
    title: 'Radius to the guide',
    doc: 'From the axis about which the pilot turns to the leadout guide.',
  },
  handle_reach: { ...METRES, symbol: 'r_h', title: 'Reach of the hand', doc: 'As typed.', detail: true },
  centreline_length: {
    ...METRES,
    symbol: 'l_m',
    title: 'Grip to model centreline',
    doc: 'What most rules measure.',
  },
  eyelet_length: { ...METRES, symbol: 'l_e', title: 'Eyelet to eyelet', doc: 'Of one line, made up.' },
  cut_length: {
    ...METRES,
    symbol: 'l_s',
    title: 'To cut',
    doc: 'Of one line from the reel, with its wraps.',
    detail: true,
  },
  linear_mass: {
    dimension: LINEAR_MASS,
    unit: 'g/m',
    symbol: 'μ',
    title: 'Mass per length',
    doc: 'Of one line.',
    detail: true,
  },
  mass: { ...GRAMS, symbol: 'm_l', title: 'Weight of the lines', doc: 'Of all lines, grip to guide.' },
  weight: {
    ...NEWTONS,
    symbol: 'W_l',
    title: 'Lines as a force',
    doc: 'Weight of all lines; the model carries about half of it.',
    detail: true,
  },
  drag_coefficient: {
    ...PLAIN,
    symbol: 'C_d',
    title: 'Line drag coefficient',
    doc: 'On diameter × length; none where it follows the local Reynolds number.',
    detail: true,
  },
  drag_factor: { ...PLAIN, symbol: 'k_d', title: 'Line drag factor', doc: 'As typed.', detail: true },
  stiffness: { ...NEWTONS, symbol: 'E A', title: 'Line stiffness', doc: 'Of one line.', detail: true },
  breaking_load: {
    ...NEWTONS,
    symbol: 'F_b',
    title: 'Breaking load of one line',
    doc: 'An estimate unless typed from the packet. Kinks, rust and knots take much of it.',
  },
  handle_spacing: {
    ...MILLIMETRES,
    symbol: 'b_h',
    title: 'Handle spacing',
    doc: 'Between both lines at the handle.',
    usual: [0.075, 0.11],
    detail: true,
  },
} as const satisfies Readonly<Record<string, Result>>;

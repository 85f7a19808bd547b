import type { Dimension } from '../../units/index';
import { INERTIA, LENGTH, MASS, ONE } from '../../units/index';
import type { Result } from '../block';
import { OUTBOARD } from '../measures';

/**
 * What the list of parts gives to other blocks. It is not a block with fields: the rows of a parts cell are its input.
 * The order is that of `foldParts`.
 */
export const partsRole = 'parts';

const quantity = (
  dimension: Dimension,
  unit: string,
  tradeUnit: string,
  symbol: string,
  title: string,
  doc: string,
): Result => ({ dimension, unit, tradeUnit, symbol, title, doc });
const detail = (result: Result): Result => ({ ...result, detail: true });

const mass = (symbol: string, title: string, doc: string): Result => quantity(MASS, 'g', 'oz', symbol, title, doc);
const length = (symbol: string, title: string, doc: string): Result => quantity(LENGTH, 'mm', 'in', symbol, title, doc);
const across = (symbol: string, title: string, doc: string): Result => ({
  ...length(symbol, title, doc),
  ways: OUTBOARD,
});
const inertia = (symbol: string, title: string, doc: string): Result =>
  detail(quantity(INERTIA, 'kg·m²', 'oz·in²', symbol, title, doc));

export const partsResults = {
  mass: mass('m', 'All-up weight', 'Sum of all parts, with the share of fuel on board that the list says.'),
  x: length('x_cg', 'CG station', 'Centre of gravity aft of the wing root leading edge.'),
  y: across('y_cg', 'CG from centreline', 'Centre of gravity from the fuselage centreline.'),
  z: length('z_cg', 'CG height', 'Centre of gravity above the reference line.'),
  inertia_xx: inertia('I_xx', 'Inertia in roll', 'About the fore-and-aft axis through the CG.'),
  inertia_yy: inertia('I_yy', 'Inertia in pitch', 'About the spanwise axis through the CG.'),
  inertia_zz: inertia('I_zz', 'Inertia in yaw', 'About the upright axis through the CG.'),
  inertia_xy: inertia(
    'I_xy',
    'Product of inertia, x and y',
    'Sum of mass × aft × outboard, from the CG. The inertia tensor holds its negative.',
  ),
  inertia_xz: inertia(
    'I_xz',
    'Product of inertia, x and z',
    'Sum of mass × aft × up, from the CG. The inertia tensor holds its negative.',
  ),
  inertia_yz: inertia(
    'I_yz',
    'Product of inertia, y and z',
    'Sum of mass × outboard × up, from the CG. The inertia tensor holds its negative.',
  ),
  mass_empty: mass('m_0', 'Weight, tank empty', 'Sum of all parts without fuel.'),
  x_empty: length('x_0', 'CG station, tank empty', 'Aft of the wing root leading edge.'),
  y_empty: detail(across('y_0', 'CG from centreline, tank empty', 'Of the fuselage.')),
  z_empty: detail(length('z_0', 'CG height, tank empty', 'Above the reference line.')),
  mass_half: detail(mass('m_½', 'Weight, tank half full', 'Sum of all parts with half of the fuel.')),
  x_half: detail(length('x_½', 'CG station, tank half full', 'Aft of the wing root leading edge.')),
  y_half: detail(across('y_½', 'CG from centreline, tank half full', 'Of the fuselage.')),
  z_half: detail(length('z_½', 'CG height, tank half full', 'Above the reference line.')),
  mass_full: mass('m_1', 'Weight, tank full', 'Sum of all parts with all of the fuel.'),
  x_full: length('x_1', 'CG station, tank full', 'Aft of the wing root leading edge.'),
  y_full: detail(across('y_1', 'CG from centreline, tank full', 'Of the fuselage.')),
  z_full: detail(length('z_1', 'CG height, tank full', 'Above the reference line.')),
  mass_sd: mass(
    's_m',
    'Uncertainty of the weight',
    'One standard deviation: root of the summed squares of the tolerances of the parts.',
  ),
  x_sd: length(
    's_x',
    'Uncertainty of the CG station',
    'One standard deviation, from the tolerances of mass and station of each part.',
  ),
  y_sd: detail(
    length(
      's_y',
      'Uncertainty of the CG from centreline',
      'One standard deviation, from the tolerances of mass and station of each part.',
    ),
  ),
  weighed_share: quantity(
    ONE,
    '%',
    '%',
    'w',
    'Share weighed',
    'Share of the mass, without fuel, that has been on the scale.',
  ),
} as const satisfies Readonly<Record<string, Result>>;

/** Where the list of parts can be no body. */
export const partsReasons = {
  weightless: 'The parts together weigh nothing. Give at least one part a mass; cut-outs may not outweigh the rest.',
} as const;

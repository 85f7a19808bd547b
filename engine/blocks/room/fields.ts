import type { Field } from '../block';
import { MILLIMETRES } from '../measures';

const PRACTICE = 'Common practice, no source.';

const size = (symbol: string, title: string, doc: string, value: number, rest: Partial<Field> = {}): Field => ({
  ...{ ...MILLIMETRES, symbol, title, doc },
  default: value,
  range: [0, 0.5],
  ...rest,
});
const place = (symbol: string, title: string, doc: string, value: number, rest: Partial<Field> = {}): Field => ({
  ...size(symbol, title, doc, value),
  range: [-2, 4],
  ...rest,
});
const NO_STRAP = 'No strap stands beside them.';
const AS_IN_THE_AIR = 'As of the tank of the fuselage.';

/** What stands behind the engine, from a ruler. */
export const roomFields = {
  behind: size(
    'n_b',
    'Room behind the engine',
    'For needle valve and fuel tube with its bend, from the backplate aft.',
    0.012,
    { basis: PRACTICE },
  ),
  shutoff_length: size(
    'l_s',
    'Length of the shutoff',
    'Of shutoff or fuel filter with its tube, fore and aft, between engine and tank; 0 without one.',
    0,
  ),
  tank_x: place(
    'x_k',
    'Tank station',
    'Of the middle of tank or pack, aft of the wing root leading edge.',
    Number.NaN,
    {
      taken: 'tank.x',
      basis: AS_IN_THE_AIR,
    },
  ),
  tank_z: place('z_k', 'Tank height above the line', 'Of its middle, above the reference line.', Number.NaN, {
    taken: 'tank.z',
    basis: AS_IN_THE_AIR,
    advanced: true,
  }),
  tank_length: size('l_k', 'Tank length', 'Of tank or pack, fore and aft.', Number.NaN, {
    taken: 'tank.length',
    basis: AS_IN_THE_AIR,
  }),
  tank_height: size('h_k', 'Tank height', 'Of tank or pack, upright.', Number.NaN, {
    taken: 'tank.height',
    basis: AS_IN_THE_AIR,
    advanced: true,
  }),
  wing_z: place('z_w', 'Height of the wing', 'Of the middle of its root section, above the reference line.', 0),
  wing_depth: size('h_w', 'Depth of the wing', 'Of its root section, upright.', Number.NaN, {
    basis: '15 % of the mean chord: common practice, no source.',
  }),
  strap_x: place(
    'x_g',
    'Strap station',
    'Of the middle of a gear strap, where one stands beside engine or tank on the same side of the fuselage.',
    Number.NaN,
    { basis: NO_STRAP },
  ),
  strap_z: place('z_g', 'Height of the strap', 'Of its middle, above the reference line.', 0, { advanced: true }),
  strap_length: size('l_g', 'Length of the strap', 'Fore and aft.', 0.012, { basis: PRACTICE, advanced: true }),
  strap_depth: size('h_g', 'Depth of the strap', 'Upright.', 0.025, { basis: PRACTICE, advanced: true }),
} as const;

import { roomFields } from '../../blocks/room/fields';
import { type Live, numberAt } from '../../sheet/live';
import type { Rule } from './rule';
import type { FirstDesignForm } from './told';

/*
 * Tank or battery stands between engine and wing: what needle valve, tube or cables need is left behind the engine, and where that leaves
 * too little room for the usual form, it is shorter and thicker.
 */

type Drive = FirstDesignForm['drive'];

/** Length of tank or battery, in cube roots of its box: as it is where there is room for it, and at least (common practice, no source). */
export const STORE_LENGTH = { usual: 2, least: 1.2 } as const;
/** What stations and sizes may lack by being rounded, m. */
const SPARE = 0.002;

/** Share of its way that tank or battery goes with the engine. */
export const STORE_GOES = 0.5;
/** Its middle from the centreline: beside the fuselage, outboard. */
export const STORE_SIDE = '0.0275 × chord + 0.5 × store_width';

const behind = (): number => roomFields.behind.default + SPARE;

export const storeStation = (drive: Drive): Rule => {
  const millimetres = Math.round(roomFields.behind.default * 1000);
  const what = drive === 'engine' ? 'Tank' : 'Battery';
  const needs = drive === 'engine' ? 'needle valve and fuel tube need' : 'cables need';
  return {
    name: 'store_station',
    text: `${STORE_GOES} × (engine_station + 0.5 × engine_length + ${millimetres} mm)`,
    unit: 'mm',
    says: `${what}: its middle halfway between the wing and the ${millimetres} mm that ${needs} behind the ${drive}.`,
  };
};

/** `length`: in cube roots of its box. */
export const storeSizes = (drive: Drive, length: number): readonly Rule[] => [
  {
    name: 'store_size',
    text: `1 cm × (${drive === 'engine' ? 'tank_volume ÷ 0.8 cm³' : 'battery_mass ÷ 2.2 g'})^(1 ÷ 3)`,
    unit: 'mm',
    says: '',
  },
  {
    name: 'store_length',
    text: `${length} × store_size`,
    unit: 'mm',
    says: `${drive === 'engine' ? 'Tank, a wedge that fills 0.8 of its box' : 'Battery, 2.2 g/cm³'}: as long as ${length} times the cube root of ${drive === 'engine' ? 'that box' : 'its volume'}${length < STORE_LENGTH.usual ? ', which is what has room' : ''}, and 1.28 times as high as wide, beside the fuselage, outboard.`,
  },
  {
    name: 'store_width',
    text: 'sqrt(store_size^3 ÷ (1.28 × store_length))',
    unit: 'mm',
    says: '',
  },
];

/** Length for which there is room where the engine stands, in cube roots of its box. */
export function storeLength(live: Live): number {
  const room = -numberAt(live, 'engine_station') - 0.5 * numberAt(live, 'engine_length') - behind();
  const fits = Math.floor((10 * room) / numberAt(live, 'store_size')) / 10;
  return Math.min(Math.max(fits, STORE_LENGTH.least), STORE_LENGTH.usual);
}

/** The rearmost station of an engine, m, that leaves room for the shortest tank or battery. */
export const rearmostFor = (live: Live): number =>
  -0.5 * numberAt(live, 'engine_length') - behind() - STORE_LENGTH.least * numberAt(live, 'store_size');

import type { Result } from '../block';
import { MILLIMETRES } from '../measures';

/** What may touch what, in the order of the gaps. */
export const PAIRS = [
  'engine and tank',
  'engine and wing',
  'tank and wing',
  'engine and strap',
  'tank and strap',
] as const;

const gap = (symbol: string, title: string, doc: string): Result => ({
  ...MILLIMETRES,
  symbol,
  title,
  doc: `${doc} Below 0 they stand in the same place.`,
  least: { at: 0, because: 'both stand in the same place' },
});

export const roomResults = {
  spare: {
    ...MILLIMETRES,
    symbol: 'g_s',
    title: 'Spare room behind the engine',
    doc: 'Between backplate and tank, less what needle valve, tube and shutoff need. Below 0 they do not fit.',
    least: { at: 0, because: 'needle valve, tube and shutoff do not fit between engine and tank' },
  },
  rearmost: {
    ...MILLIMETRES,
    symbol: 'x_r',
    title: 'Engine station at its rearmost',
    doc: 'With its backplate at the rear of the bearers, or with the room that it needs ahead of the tank.',
  },
  aft: {
    ...MILLIMETRES,
    symbol: 'Δx_r',
    title: 'Engine to its rearmost',
    doc: 'From where it stands.',
    ways: ['aft', 'forward', 'there already'],
  },
  engine_tank: gap('g_1', 'From engine to tank', 'From the backplate to the nearest of tank or pack.'),
  engine_wing: gap('g_2', 'From engine to wing', 'From the backplate to the leading edge at the fuselage.'),
  tank_wing: gap('g_3', 'From tank to wing', 'Between tank or pack and the section of the wing at the fuselage.'),
  engine_strap: gap('g_4', 'From engine to strap', 'No answer where no strap is typed.'),
  tank_strap: gap('g_5', 'From tank to strap', 'No answer where no strap is typed.'),
  least_gap: gap('g', 'Least gap', 'The least of the gaps, all seen from the side.'),
  least_pair: {
    dimension: { length: 0, mass: 0, time: 0, temperature: 0, current: 0 },
    unit: '',
    symbol: 'p',
    title: 'Nearest to each other',
    doc: 'What stands nearest, or in the same place.',
    oneOf: PAIRS,
  },
} as const satisfies Readonly<Record<string, Result>>;

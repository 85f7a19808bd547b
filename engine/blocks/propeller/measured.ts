import { alongBlade, propellerInertia, soundSpeed, tabulateMeasured } from '../../physics/index';
import { air } from '../air/index';
import { block, type Field } from '../block';
import { GRAMS, MILLIMETRES, PLAIN, typedOr } from '../measures';
import { lookFields, tableAt, writeLook } from './look';
import { propellerResults } from './results';
import { measuredPropellerTheory } from './theory';

const ROWS = [1, 2, 3, 4, 5, 6, 7, 8] as const;
const BLANK = 'Blank: this row is not used. Three rows or more are needed.';
/** Inertia over mass × diameter² of a tapering bar, as where no propeller block is. */
const BAR = 0.055;
/** Knots of the tables over the last advance ratio typed: the tables end there. */
const LAST_KNOT = 11;

const column = (symbol: string, title: string, doc: string, range: readonly [number, number]) => (k: number) =>
  ({
    ...PLAIN,
    symbol: `${symbol}_${k}`,
    title: `${title}, row ${k}`,
    doc,
    default: Number.NaN,
    range,
    basis: BLANK,
  }) as Field;
const advance = column('J', 'Advance ratio', 'V/(n D); rows with rising J, the first 0 (at rest).', [0, 3]);
const thrust = column('C_T', 'Thrust coefficient', 'Thrust over ρ n² D⁴ at that advance ratio.', [-0.5, 0.5]);
const power = column('C_P', 'Power coefficient', 'Power over ρ n³ D⁵ at that advance ratio.', [-0.5, 0.5]);

/** Propeller known by a measured table. */
export const measuredPropeller = block({
  kind: 'measured_propeller',
  role: 'propeller',
  title: 'Propeller by measured table',
  doc: 'Thrust and power coefficients from a wind tunnel or a test stand against the advance ratio; taken as the same at all rpm.',
  line: ['diameter', 'pitch', 'static_thrust'],
  fields: {
    air: { link: 'air', results: air.results, doc: 'The air that it turns in.' },
    diameter: {
      ...MILLIMETRES,
      symbol: 'D',
      title: 'Diameter',
      doc: 'That the coefficients were made with.',
      default: 9 * 0.0254,
      range: [0.05, 0.6],
    } as Field,
    pitch: {
      ...MILLIMETRES,
      symbol: 'p',
      title: 'Pitch',
      doc: 'As marked; only for pitch speeds.',
      default: 6 * 0.0254,
      range: [0.01, 0.6],
    } as Field,
    advance_1: advance(1),
    thrust_1: thrust(1),
    power_1: power(1),
    advance_2: advance(2),
    thrust_2: thrust(2),
    power_2: power(2),
    advance_3: advance(3),
    thrust_3: thrust(3),
    power_3: power(3),
    advance_4: advance(4),
    thrust_4: thrust(4),
    power_4: power(4),
    advance_5: advance(5),
    thrust_5: thrust(5),
    power_5: power(5),
    advance_6: advance(6),
    thrust_6: thrust(6),
    power_6: power(6),
    advance_7: advance(7),
    thrust_7: thrust(7),
    power_7: power(7),
    advance_8: advance(8),
    thrust_8: thrust(8),
    power_8: power(8),
    ...lookFields,
    mass: {
      ...GRAMS,
      symbol: 'm',
      title: 'Mass',
      doc: 'Of the propeller, weighed. Sets its inertia.',
      default: Number.NaN,
      range: [0.0005, 1],
      basis: '20 g at 9 in, with the cube of the diameter: a guess without a source.',
      advanced: true,
    } as Field,
  },
  results: propellerResults,
  reasons: {
    too_few:
      'A measured table needs three rows or more, each with its advance ratio, thrust and power coefficient. Type the missing numbers.',
    half_row:
      'A row of the table is not complete: it needs advance ratio, thrust and power coefficient. Type what is missing, or clear the row.',
    not_rising: 'The advance ratios must rise from row to row. Put the rows in order.',
    not_from_rest: 'The first row must be at rest, with an advance ratio of 0: it is {advance_1}.',
  },
  theory: measuredPropellerTheory,
  run(m, f, r, i, stride) {
    const [Js, thrusts, powers]: [number[], number[], number[]] = [[], [], []];
    for (const k of ROWS) {
      const row = [m[f[`advance_${k}`] + i]!, m[f[`thrust_${k}`] + i]!, m[f[`power_${k}`] + i]!] as const;
      const blanks = row.filter((value) => Number.isNaN(value)).length;
      if (blanks === 3) continue;
      if (blanks > 0) return 'half_row';
      if (Js.length > 0 && row[0] <= Js.at(-1)!) return 'not_rising';
      Js.push(row[0]);
      thrusts.push(row[1]);
      powers.push(row[2]);
    }
    if (Js.length < 3) return 'too_few';
    if (Js[0] !== 0) return 'not_from_rest';
    const density = m[f.air.density + i]!;
    const diameter = m[f.diameter + i]!;
    m[r.diameter + i] = diameter;
    m[r.pitch + i] = m[f.pitch + i]!;
    m[r.advance_step + i] = Js.at(-1)! / LAST_KNOT;
    const of = (values: readonly number[]) => (J: number) => alongBlade(Js, values, J);
    tabulateMeasured(of(thrusts), of(powers), tableAt(m, r, i, stride));
    writeLook(m, f, r, i, stride, density, soundSpeed(m[f.air.pressure + i]!, density));
    const guess = propellerInertia(diameter);
    const mass = m[f.mass + i]!;
    m[r.inertia + i] = Number.isNaN(mass) ? guess : BAR * mass * diameter * diameter;
    m[r.mass + i] = typedOr(mass, guess / (BAR * diameter * diameter));
    return undefined;
  },
});

import { propellerInertia } from '../../physics/index';
import { INERTIA } from '../../units/index';
import type { Columns, Field, Shape } from '../block';
import { ANGLE, degrees, MILLIMETRES, typedOr } from '../measures';
import type { OutlineColumns } from '../outline';
import type { propellerResults } from '../propeller/results';
import type { Template, Told } from '../template';
import { drawEngine } from './draw';
import type { engineResults } from './results';
import { bearersTemplate } from './template';

const length = (
  symbol: string,
  title: string,
  doc: string,
  value: number,
  range: readonly [number, number],
): Field => ({ ...MILLIMETRES, symbol, title, doc, default: value, range });
const drawn = (symbol: string, title: string, doc: string, value: number, range: readonly [number, number]): Field => ({
  ...length(symbol, title, doc, value, range),
  basis: 'For the drawing, and for the room along the body.',
  advanced: true,
});

const measured = (symbol: string, title: string, doc: string, range: readonly [number, number]): Field => ({
  ...drawn(symbol, title, doc, Number.NaN, range),
  basis: 'For the template of the bearers at full size, which leaves it out until it is typed: measure your engine.',
});

/** Where an engine or motor stands and how it points. */
const place = {
  station: length(
    'x_e',
    'Engine station',
    'Of the middle of the engine, aft of the wing root leading edge; ahead of it negative.',
    -0.15,
    [-1, 1],
  ),
  offset_y: length('y_e', 'Engine from centreline', 'Of the shaft at the engine, outboard positive.', 0, [-0.3, 0.3]),
  height: length(
    'z_e',
    'Height of the thrust line',
    'Of the shaft at the engine, above the reference line.',
    0,
    [-0.3, 0.3],
  ),
  side_thrust: {
    ...ANGLE,
    symbol: 'τ',
    title: 'Engine offset',
    doc: 'How far the shaft points outboard.',
    default: degrees(1.5),
    range: [degrees(-10), degrees(15)],
  } as Field,
  down_thrust: {
    ...ANGLE,
    symbol: 'η',
    title: 'Down thrust',
    doc: 'How far the shaft points down.',
    default: 0,
    range: [degrees(-10), degrees(10)],
  } as Field,
} as const;

const rotor = (basis: string): Field => ({
  dimension: INERTIA,
  unit: 'g·cm²',
  tradeUnit: 'oz·in²',
  symbol: 'I_p',
  title: 'Rotor inertia',
  doc: 'Of propeller, spinner and crankshaft about the shaft. Its spin costs elevator in every lap. Less what a gear turns against the propeller; negative where that is more.',
  default: Number.NaN,
  range: [-0.02, 0.02],
  basis,
  advanced: true,
});

const outline = {
  engine_length: drawn('l_e', 'Engine length', 'From backplate to drive washer.', 0.075, [0.01, 0.4]),
  engine_width: drawn('w_e', 'Engine width', 'Over the lugs.', 0.034, [0.005, 0.3]),
  bearer_front: drawn('x_b1', 'Front of the bearers', 'Aft of the wing root leading edge.', -0.18, [-1.5, 1]),
  bearer_rear: drawn('x_b2', 'Rear of the bearers', 'Aft of the wing root leading edge.', -0.06, [-1.5, 1]),
  bearer_gap: measured(
    'w_b',
    'Gap between the bearers',
    'From inner side to inner side, for the crankcase.',
    [0.005, 0.3],
  ),
  lug_along: measured('l_h', 'Lug holes fore and aft', 'From middle to middle along the shaft.', [0.002, 0.3]),
  lug_across: measured('w_h', 'Lug holes across', 'From middle to middle across the shaft.', [0.005, 0.3]),
  lug_diameter: measured('d_h', 'Diameter of the lug holes', 'Of the holes to drill in the bearers.', [0.001, 0.01]),
  lug_aft: drawn(
    'x_h',
    'Middle of the lug holes',
    'Of the middle between all four, aft of the middle of the engine.',
    0,
    [-0.2, 0.2],
  ),
} as const;

/** Of an engine whose propeller is a piece of its own. */
export const propellerMount = {
  ...place,
  rotor_inertia: rotor('The inertia of the propeller alone.'),
  ...outline,
} as const;

/** Of an engine that is known together with its propeller: that one's marks belong to it. */
export const engineMount = {
  ...place,
  propeller_diameter: length(
    'D',
    'Propeller diameter',
    'Tip to tip, as marked: 9 in of a 9×6.',
    9 * 0.0254,
    [0.05, 0.6],
  ),
  pitch: length('p', 'Propeller pitch', 'As marked: 6 in of a 9×6.', 6 * 0.0254, [0.01, 0.6]),
  rotor_inertia: rotor(
    'A tapering propeller of 20 g at 9 in, mass with the cube of the diameter: a guess without a source.',
  ),
  ...outline,
} as const;

/** Writes the results that only pass on how the engine stands. */
export function writeMount(
  m: Float64Array,
  f: Columns<typeof engineMount>,
  r: Columns<typeof engineResults>,
  i: number,
): void {
  writeStand(m, f, r, i);
  const diameter = m[f.propeller_diameter + i]!;
  m[r.propeller_diameter + i] = diameter;
  m[r.pitch + i] = m[f.pitch + i]!;
  m[r.rotor_inertia + i] = typedOr(m[f.rotor_inertia + i]!, propellerInertia(diameter));
}

/** Where the engine stands and how it points. */
function writeStand(
  m: Float64Array,
  f: Columns<typeof propellerMount>,
  r: Columns<typeof engineResults>,
  i: number,
): void {
  m[r.station + i] = m[f.station + i]!;
  m[r.offset_y + i] = m[f.offset_y + i]!;
  m[r.height + i] = m[f.height + i]!;
  m[r.side_thrust + i] = m[f.side_thrust + i]!;
  m[r.down_thrust + i] = m[f.down_thrust + i]!;
  m[r.engine_length + i] = m[f.engine_length + i]!;
  m[r.engine_width + i] = m[f.engine_width + i]!;
  m[r.bearer_rear + i] = m[f.bearer_rear + i]!;
}

/** Of an engine whose propeller is a piece of its own. */
export type Propelled = Columns<typeof propellerMount> & { readonly propeller: Columns<typeof propellerResults> };

/** The same where the propeller is a piece of its own. */
export function writePlace(m: Float64Array, f: Propelled, r: Columns<typeof engineResults>, i: number): void {
  const { propeller } = f;
  writeStand(m, f, r, i);
  m[r.rotor_inertia + i] = typedOr(m[f.rotor_inertia + i]!, m[propeller.inertia + i]!);
  m[r.propeller_diameter + i] = m[propeller.diameter + i]!;
  m[r.pitch + i] = m[propeller.pitch + i]!;
}

export const drawMount = (m: Float64Array, f: Columns<typeof engineMount>): Shape[] =>
  drawPlace(m, f, m[f.propeller_diameter]!);

export const mountTemplates = (
  m: Float64Array,
  f: Columns<typeof propellerMount>,
  _: object,
  __: OutlineColumns,
  told: Told,
): Template[] =>
  bearersTemplate(
    {
      station: m[f.station]!,
      outboard: m[f.offset_y]!,
      sideThrust: m[f.side_thrust]!,
      length: m[f.engine_length]!,
      width: m[f.engine_width]!,
    },
    {
      front: m[f.bearer_front]!,
      rear: m[f.bearer_rear]!,
      gap: m[f.bearer_gap]!,
      holes: {
        along: m[f.lug_along]!,
        across: m[f.lug_across]!,
        diameter: m[f.lug_diameter]!,
        aft: m[f.lug_aft]!,
      },
      rearmost: told('room.rearmost'),
    },
  );

export function drawPlace(m: Float64Array, f: Columns<typeof propellerMount>, propellerDiameter: number): Shape[] {
  return drawEngine({
    station: m[f.station]!,
    outboard: m[f.offset_y]!,
    height: m[f.height]!,
    sideThrust: m[f.side_thrust]!,
    downThrust: m[f.down_thrust]!,
    length: m[f.engine_length]!,
    width: m[f.engine_width]!,
    bearerFront: m[f.bearer_front]!,
    bearerRear: m[f.bearer_rear]!,
    propellerDiameter,
    label: 'engine.station',
  });
}

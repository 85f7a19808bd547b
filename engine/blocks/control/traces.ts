import { lineDifference, linkageAt, newLinkageState, turnFor } from '../../physics/index';
import type { Columns, Quantity, TraceColumns, TraceQuantity } from '../block';
import type { windLinks } from '../flight/in-wind';
import { ANGLE, MILLIMETRES, NEWTONS, PLAIN, TORQUE, UP_DOWN } from '../measures';
import { heldAt, hingeLaw } from './air';
import { readLinkage } from './linkage';
import type { controlResults } from './results';

type Links = Columns<typeof windLinks>;
type Results = Columns<typeof controlResults>;

/** Tilts of the handle that are shown, full down to full up. */
const PLACES = 41;
const state = newLinkageState();

const angle = (symbol: string, title: string, doc: string): TraceQuantity => ({ ...ANGLE, symbol, title, doc });
const place = (symbol: string, title: string, doc: string): Quantity => ({ ...MILLIMETRES, symbol, title, doc });
const AFT = 'Aft of the wing root leading edge.';
const OUT = 'Outboard positive.';

const travelColumns = {
  handle: { ...angle('κ', 'Handle', 'Tilt from upright.'), ways: ['back', 'forward'] },
  elevator: { ...angle('δ', 'Elevator', 'Of the trailing edge.'), ways: UP_DOWN },
  ratio: {
    ...PLAIN,
    symbol: 'i',
    title: 'Elevator over handle',
    doc: 'Degrees of elevator for a degree of the handle there.',
  },
  bellcrank: { ...angle('β', 'Bellcrank', 'Its turn from square.'), ways: UP_DOWN },
  hinge_moment: {
    ...TORQUE,
    symbol: 'H',
    title: 'Hinge moment',
    doc: 'That holds the elevator there at the speed of level flight, before the model has turned after it.',
  },
  line_difference: {
    ...NEWTONS,
    symbol: 'ΔT',
    title: 'Up line less down line',
    doc: 'Difference of pull for that moment with its friction, at the least pull.',
  },
} as const satisfies Readonly<Record<string, TraceQuantity>>;

const linkageColumns = {
  position: {
    ...PLAIN,
    symbol: 'k',
    title: 'Position',
    doc: '−1 full down, 0 with the handle upright, 1 full up.',
  },
  elevator: travelColumns.elevator,
  bellcrank: travelColumns.bellcrank,
  pivot_x: place('x_p', 'Pivot', AFT),
  pivot_y: place('y_p', 'Pivot from centreline', OUT),
  front_x: place('x_1', 'Hole of the front leadout', AFT),
  front_y: place('y_1', 'Hole of the front leadout, from centreline', OUT),
  rear_x: place('x_2', 'Hole of the rear leadout', AFT),
  rear_y: place('y_2', 'Hole of the rear leadout, from centreline', OUT),
  front_guide_x: place('x_g1', 'Front leadout at its guide', AFT),
  rear_guide_x: place('x_g2', 'Rear leadout at its guide', AFT),
  guide_y: place('y_g', 'Guide from centreline', OUT),
  crank_x: place('x_c', 'Pushrod at the bellcrank', AFT),
  crank_y: place('y_c', 'Pushrod at the bellcrank, from centreline', OUT),
  crank_z: place('z_c', 'Pushrod at the bellcrank, height', 'Above the reference line.'),
  horn_x: place('x_k', 'Pushrod at the horn', AFT),
  horn_y: place('y_k', 'Pushrod at the horn, from centreline', OUT),
  horn_z: place('z_k', 'Pushrod at the horn, height', 'Above the reference line.'),
  hinge_x: place('x_h', 'Hinge', AFT),
  hinge_z: place('z_h', 'Height of the hinge', 'Above the reference line.'),
  edge_x: place('x_t', 'Trailing edge of the elevator', AFT),
  edge_z: place('z_t', 'Height of the trailing edge', 'Above the reference line.'),
} as const satisfies Readonly<Record<string, Quantity>>;

const column = (name: string, length: number): [string, Float64Array] => [name, new Float64Array(length)];
const columnsFor = <K extends string>(declared: Readonly<Record<K, Quantity>>, length: number) =>
  Object.fromEntries(Object.keys(declared).map((name) => column(name, length))) as Record<K, Float64Array>;

/** Everything along the tilt of the handle. */
function alongTravel(m: Float64Array, f: Links, r: Results): TraceColumns | undefined {
  const [from, to] = [m[r.handle_at_down]!, m[r.handle_at_up]!];
  const linkage = readLinkage(m, r, f, 0);
  const law = hingeLaw(m, r, f, 0);
  const out = columnsFor(travelColumns, PLACES);
  for (let k = 0; k < PLACES; k++) {
    const handle = from + ((to - from) * k) / (PLACES - 1);
    linkageAt(linkage, turnFor(linkage, handle, m[r.down_turn]!, m[r.up_turn]!), state);
    const moment = law(state.elevator, m[f.flight.speed]!);
    out.handle[k] = handle;
    out.elevator[k] = state.elevator;
    out.ratio[k] = state.ratio;
    out.bellcrank[k] = state.turn;
    out.hinge_moment[k] = moment;
    out.line_difference[k] = lineDifference(heldAt(m, r, state, moment, true, 0), m[r.least_pull]!);
  }
  return out;
}

/** The joints of the linkage at full down, with the handle upright and at full up. */
function joints(m: Float64Array, f: Links, r: Results): TraceColumns {
  const linkage = readLinkage(m, r, f, 0);
  const { bellcrank, pushrod } = linkage;
  const out = columnsFor(linkageColumns, 3);
  const chord = m[f.tail.mean_chord]! * m[f.tail.elevator_share]!;
  const upright = turnFor(linkage, 0, m[r.down_turn]!, m[r.up_turn]!);
  for (const [k, turn] of [m[r.down_turn]!, upright, m[r.up_turn]!].entries()) {
    linkageAt(linkage, turn, state);
    const { crank, rod, elevator } = state;
    const here = {
      ...{ position: k - 1, elevator, bellcrank: turn, pivot_x: bellcrank.pivotX, pivot_y: bellcrank.pivotY },
      ...{ front_x: crank.frontX, front_y: crank.frontY, rear_x: crank.rearX, rear_y: crank.rearY },
      ...{ front_guide_x: bellcrank.frontGuideX, rear_guide_x: bellcrank.rearGuideX, guide_y: bellcrank.guideY },
      ...{ crank_x: rod.crankX, crank_y: rod.crankY, crank_z: pushrod.plane },
      ...{ horn_x: rod.hornX, horn_y: pushrod.hornY, horn_z: rod.hornZ },
      ...{ hinge_x: pushrod.hingeX, hinge_z: pushrod.hingeZ },
      edge_x: pushrod.hingeX + chord * Math.cos(elevator),
      edge_z: pushrod.hingeZ + chord * Math.sin(elevator),
    };
    for (const [name, value] of Object.entries(here)) out[name as keyof typeof out][k] = value;
  }
  return out;
}

const known = (m: Float64Array, r: Results): boolean => !Number.isNaN(m[r.up_travel]!);

export const controlTraces = {
  travel: {
    title: 'Along the travel of the handle',
    doc: 'Elevator, ratio, hinge moment and difference between the lines against the tilt of the handle, from full down to full up.',
    columns: travelColumns,
    run: (m: Float64Array, f: Links, r: Results) => (known(m, r) ? alongTravel(m, f, r) : undefined),
  },
  linkage: {
    title: 'Joints of the linkage',
    doc: 'Where bellcrank, pushrod, horn and elevator stand at full down, with the handle upright, and at full up.',
    columns: linkageColumns,
    outlines: true as const,
    run: (m: Float64Array, f: Links, r: Results) => (known(m, r) ? joints(m, f, r) : undefined),
  },
};

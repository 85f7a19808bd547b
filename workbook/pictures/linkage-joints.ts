import type { TraceAnswer } from '../../engine/index';

const JOINTS = [
  'elevator',
  'bellcrank',
  'pivot_x',
  'pivot_y',
  'front_x',
  'front_y',
  'rear_x',
  'rear_y',
  'front_guide_x',
  'rear_guide_x',
  'guide_y',
  'crank_x',
  'crank_y',
  'crank_z',
  'horn_x',
  'horn_y',
  'horn_z',
  'hinge_x',
  'hinge_z',
  'edge_x',
  'edge_z',
] as const;
/** Where the joints of the linkage stand in one position, m, and both angles, rad. */
export type Joints = Readonly<Record<(typeof JOINTS)[number], number>>;

export interface Positions {
  readonly down: Joints;
  readonly neutral: Joints;
  readonly up: Joints;
}

/** The three positions that the trace of the linkage tells; undefined where it has none. */
export function positionsOf(trace: TraceAnswer): Positions | undefined {
  if (trace.present[0]?.length !== 3) return undefined;
  const columns = new Map(trace.columns.map(({ name }, k) => [name, trace.present[k]!]));
  const row = (k: number): Joints =>
    Object.fromEntries(JOINTS.map((name) => [name, columns.get(name)?.[k] ?? Number.NaN])) as Joints;
  const positions = { down: row(0), neutral: row(1), up: row(2) };
  const known = Object.values(positions).every((each) => Object.values(each).every(Number.isFinite));
  return known ? positions : undefined;
}

/** The leadout that is pulled in for up elevator. */
export const upLineOf = ({ up, neutral }: Positions): 'front' | 'rear' =>
  up.front_y < neutral.front_y ? 'front' : 'rear';

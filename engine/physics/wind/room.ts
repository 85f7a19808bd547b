import { type PeriodicWave, periodicWave } from '../../numerics/index';
import {
  type Air,
  type Balance,
  type Constants,
  newAir,
  newBalance,
  newConstants,
  newState,
  newStep,
  type State,
  type Step,
} from '../flight/index';
import { COARSE } from './wind-lap';

/** What flights in wind are worked out in; whoever flies them holds one. */
export interface WindRoom {
  readonly c: Constants;
  readonly b: Balance;
  readonly at: Step;
  readonly air: Air;
  readonly state: State;
  /** Angles of calm air, to begin with. */
  readonly first: State;
  /** A lap at few places, and the lap at all of them. */
  readonly coarse: Rows;
  rows: Rows;
}

/** What is kept of every place of a lap. */
export interface Rows {
  readonly places: number;
  readonly wave: PeriodicWave;
  /** Where the model stands, and the drag (N) that it was found to have when it was last looked at. */
  readonly speed: Float64Array;
  readonly sideslip: Float64Array;
  readonly roll: Float64Array;
  readonly pitch: Float64Array;
  readonly drag: Float64Array;
  /** How that drag follows speed, sideslip, roll and pitch, four numbers a place. */
  readonly dragSlopes: Float64Array;
  /** Of the lines `LINES` numbers a place: speed at which they were looked at, drag and press at the guide, each with its slope. */
  readonly lines: Float64Array;
  /** Forces: left along the path, along the chord, of all lines at the guide and of the wing, N; air across the span, m/s. */
  readonly path: Float64Array;
  readonly tension: Float64Array;
  readonly pull: Float64Array;
  readonly wingLift: Float64Array;
  readonly across: Float64Array;
  /** Of yaw and roll: positive where they stand stable. */
  readonly determinant: Float64Array;
  /** Lift coefficient over the greatest. */
  readonly share: Float64Array;
  /** Of Newton's step: of V²/2, how the angles change at this speed and with it. */
  readonly energy: Float64Array;
  readonly growth: Float64Array;
  readonly step: Float64Array;
  readonly slip: Float64Array;
  readonly lean: Float64Array;
  readonly nose: Float64Array;
  readonly slipPerSpeed: Float64Array;
  readonly leanPerSpeed: Float64Array;
  readonly nosePerSpeed: Float64Array;
}

export const LINES = 5;

export function newRows(places: number): Rows {
  const row = () => new Float64Array(places);
  return {
    places,
    wave: periodicWave(places),
    speed: row(),
    sideslip: row(),
    roll: row(),
    pitch: row(),
    drag: row(),
    dragSlopes: new Float64Array(4 * places),
    lines: new Float64Array(LINES * places),
    path: row(),
    tension: row(),
    pull: row(),
    wingLift: row(),
    across: row(),
    determinant: row(),
    share: row(),
    energy: row(),
    growth: row(),
    step: row(),
    slip: row(),
    lean: row(),
    nose: row(),
    slipPerSpeed: row(),
    leanPerSpeed: row(),
    nosePerSpeed: row(),
  };
}

export const newWindRoom = (): WindRoom => ({
  c: newConstants(),
  b: newBalance(),
  at: newStep(),
  air: newAir(),
  state: newState(),
  first: newState(),
  coarse: newRows(COARSE),
  rows: newRows(0),
});

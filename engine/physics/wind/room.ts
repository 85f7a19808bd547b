import { periodicSlopes } from '../../numerics/index';
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

/** What flights in wind are worked out in; whoever flies them holds one. */
export interface WindRoom {
  readonly c: Constants;
  readonly b: Balance;
  readonly at: Step;
  readonly air: Air;
  readonly state: State;
  /** Angles of calm air, to begin with. */
  readonly first: State;
  rows: Rows;
}

/** What is kept of every place of a lap. */
export interface Rows {
  readonly places: number;
  readonly sideslip: Float64Array;
  readonly roll: Float64Array;
  readonly pitch: Float64Array;
  readonly path: Float64Array;
  readonly slope: Float64Array;
  readonly tension: Float64Array;
  readonly lift: Float64Array;
  readonly step: Float64Array;
  readonly matrix: Float64Array;
  readonly d: Float64Array;
}

export function newRows(places: number): Rows {
  const row = () => new Float64Array(places);
  return {
    places,
    sideslip: row(),
    roll: row(),
    pitch: row(),
    path: row(),
    slope: row(),
    tension: row(),
    lift: row(),
    step: row(),
    matrix: new Float64Array(places * places),
    d: periodicSlopes(places),
  };
}

export const newWindRoom = (): WindRoom => ({
  c: newConstants(),
  b: newBalance(),
  at: newStep(),
  air: newAir(),
  state: newState(),
  first: newState(),
  rows: newRows(0),
});

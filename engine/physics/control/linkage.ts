import { findRoot, type Root } from '../../numerics/index';
import {
  type Bellcrank,
  type BellcrankState,
  handleAngleFor,
  handleDifference,
  newBellcrankState,
  turnBellcrank,
} from './bellcrank';
import { closePushrod, newPushrodState, type Pushrod, type PushrodState } from './pushrod';

/** Handle, lines, bellcrank, pushrod and horn. Its own turn t is positive where it gives up elevator. */
export interface Linkage {
  readonly bellcrank: Bellcrank;
  readonly pushrod: Pushrod;
  /** +1 where pulling the front line gives up elevator, −1 where the rear one does. */
  readonly sense: 1 | -1;
  /** Between both lines at the handle, m. */
  readonly spacing: number;
  /** How much longer the up line is than the down line, m, against lines that hold the bellcrank square with the handle upright. */
  readonly upLineLonger: number;
}

export interface LinkageState {
  /** Turn of the bellcrank and tilt of the handle, up positive, rad; the tilt is NaN where no tilt reaches that turn. */
  turn: number;
  handle: number;
  /** Elevator, trailing edge up positive, rad, and its ratios to the turn and to the handle. */
  elevator: number;
  gain: number;
  ratio: number;
  /** Lever arms of the lines about the pivot, m. */
  upLever: number;
  downLever: number;
  readonly crank: BellcrankState;
  readonly rod: PushrodState;
}

export const newLinkageState = (): LinkageState => ({
  turn: Number.NaN,
  handle: Number.NaN,
  elevator: Number.NaN,
  gain: Number.NaN,
  ratio: Number.NaN,
  upLever: Number.NaN,
  downLever: Number.NaN,
  crank: newBellcrankState(),
  rod: newPushrodState(),
});

const square = newBellcrankState();
const looked = newBellcrankState();

/** +1 where turning the bellcrank with the front line raises the elevator from δ, −1 where it lowers it. */
export function senseOf(pushrod: Pushrod): 1 | -1 {
  const state = newPushrodState();
  closePushrod(pushrod, 0, state);
  return state.gain < 0 ? -1 : 1;
}

/** b sin κ − λ: how much further in the up line stands than the down line at the guides, against a square bellcrank, m. */
const pulledIn = (b: BellcrankState, sense: number): number =>
  sense * (b.rearLength - square.rearLength - (b.frontLength - square.frontLength));

/**
 * The linkage with its bellcrank turned by t, from the bellcrank outward: b sin κ = [d_down(t) − d_up(t)] − [d_down(0) − d_up(0)] + λ, the lines of
 * fixed length and parallel, the model free to follow them both; dδ/dκ = dδ/dt · b cos κ/(a_u + a_d). Exact. Geometry.
 */
export function linkageAt(l: Linkage, turn: number, out: LinkageState): void {
  const beta = l.sense * turn;
  turnBellcrank(l.bellcrank, 0, square);
  turnBellcrank(l.bellcrank, beta, out.crank);
  closePushrod(l.pushrod, beta, out.rod);
  out.turn = turn;
  out.handle = handleAngleFor(l.spacing, pulledIn(out.crank, l.sense) + l.upLineLonger);
  out.elevator = out.rod.elevator;
  out.gain = l.sense * out.rod.gain;
  out.upLever = l.sense > 0 ? out.crank.frontLever : out.crank.rearLever;
  out.downLever = l.sense > 0 ? out.crank.rearLever : out.crank.frontLever;
  out.ratio = (out.gain * l.spacing * Math.cos(out.handle)) / (out.upLever + out.downLever);
}

/**
 * Turn (rad) at which the bellcrank stands when the handle is tilted by κ; held to `low` and `high` where its stops come first.
 */
export function turnFor(l: Linkage, handle: number, low: number, high: number): number {
  turnBellcrank(l.bellcrank, 0, square);
  const wanted = handleDifference(l.spacing, handle) - l.upLineLonger;
  const short = (turn: number): number => {
    turnBellcrank(l.bellcrank, l.sense * turn, looked);
    return pulledIn(looked, l.sense) - wanted;
  };
  if (!(short(low) < 0)) return low;
  if (!(short(high) > 0)) return high;
  return findRoot(short, low, high, { tolerance: 1e-12 }).value;
}

const tried = newLinkageState();

/** Search for the turn at which the elevator stands at `elevator`, between two turns. */
export function elevatorRoot(l: Linkage, elevator: number, low: number, high: number): Root {
  const short = (turn: number): number => {
    linkageAt(l, turn, tried);
    return tried.elevator - elevator;
  };
  return findRoot(short, low, high, { tolerance: 1e-12 });
}

/** Turn at which the elevator stands at `elevator`, between two turns; NaN where it doesn't come there. */
export function turnForElevator(l: Linkage, elevator: number, low: number, high: number): number {
  const found = elevatorRoot(l, elevator, low, high);
  return found.status === 'settled' ? found.value : Number.NaN;
}

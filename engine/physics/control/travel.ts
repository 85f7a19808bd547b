import { type Linkage, type LinkageState, linkageAt, newLinkageState, turnFor } from './linkage';

/** How far handle and bellcrank can go, each way, rad, all positive. */
export interface TravelLimits {
  readonly handleUp: number;
  readonly handleDown: number;
  readonly stopUp: number;
  readonly stopDown: number;
}

/**
 * `settled`; or what doesn't work: `open` the pushrod doesn't reach from bellcrank to horn; `horn locked` it comes in line with the horn, and
 * `crank locked` with its arm of the bellcrank; `leadout locked` a leadout comes in line with its arm; `out of hand` the lines are so unequal
 * that no tilt of the handle holds the bellcrank.
 */
export type TravelStatus = 'settled' | 'open' | 'horn locked' | 'crank locked' | 'leadout locked' | 'out of hand';

/** What ends the travel. */
export const TRAVEL_ENDS = ['handle', 'bellcrank_stop'] as const;

export interface Travel {
  status: TravelStatus;
  /** Turn at which it fails, up positive, rad. */
  failsAt: number;
  /** At full up, full down and with the handle upright. */
  readonly up: LinkageState;
  readonly down: LinkageState;
  readonly neutral: LinkageState;
  /** Index in `TRAVEL_ENDS`. */
  upLimit: number;
  downLimit: number;
}

export const newTravel = (): Travel => ({
  status: 'open',
  failsAt: Number.NaN,
  up: newLinkageState(),
  down: newLinkageState(),
  neutral: newLinkageState(),
  upLimit: 0,
  downLimit: 0,
});

/** Turns are looked at this far apart, rad; what fails between is narrowed by so many halvings. */
const STEP = Math.PI / 60;
const HALVINGS = 30;
const at = newLinkageState();
const start = newLinkageState();

/**
 * Walks the linkage from a square bellcrank to what ends its travel each way: the tilt of the handle or the stop of the bellcrank, whichever
 * comes first. It works where the pushrod closes and no lever arm changes its sign. Geometry.
 */
export function travelOf(l: Linkage, limits: TravelLimits, out: Travel): void {
  linkageAt(l, 0, start);
  out.status = 'settled';
  out.failsAt = 0;
  const first = faultOf(start);
  if (first) {
    out.status = first;
    return;
  }
  const { stopUp, stopDown, handleUp, handleDown } = limits;
  // Lever arms of the leadouts decide whether the handle has one answer: they are looked at first, to the stops.
  if (!walk(l, stopUp, leadoutFault, out) || !walk(l, -stopDown, leadoutFault, out)) return;
  const high = turnFor(l, handleUp, -stopDown, stopUp);
  const low = turnFor(l, -handleDown, -stopDown, stopUp);
  if (!walk(l, high, faultOf, out) || !walk(l, low, faultOf, out)) return;
  linkageAt(l, high, out.up);
  linkageAt(l, low, out.down);
  linkageAt(l, turnFor(l, 0, -stopDown, stopUp), out.neutral);
  // The upright handle must lie between both ends, or the lines hold the bellcrank at a stop.
  if (!(high > low) || !(out.up.handle >= 0) || !(out.down.handle <= 0)) {
    out.status = 'out of hand';
    out.failsAt = out.neutral.turn;
    return;
  }
  out.upLimit = high >= stopUp ? 1 : 0;
  out.downLimit = low <= -stopDown ? 1 : 0;
}

type Look = (state: LinkageState) => TravelStatus | undefined;

const leadoutFault: Look = ({ upLever, downLever }) => (upLever > 0 && downLever > 0 ? undefined : 'leadout locked');

/** What doesn't work here: every lever arm must keep the sign that it has with the bellcrank square. */
function faultOf(state: LinkageState): TravelStatus | undefined {
  const { rod } = state;
  if (Number.isNaN(state.elevator)) return state === start ? 'open' : 'horn locked';
  if (!(rod.hornLever * start.rod.hornLever > 0)) return 'horn locked';
  if (!(rod.crankLever * start.rod.crankLever > 0)) return 'crank locked';
  return leadoutFault(state);
}

/** False where something fails on the way to a turn; it is narrowed and written down. */
function walk(l: Linkage, to: number, look: Look, out: Travel): boolean {
  const count = Math.max(1, Math.ceil(Math.abs(to) / STEP));
  for (let k = 1; k <= count; k++) {
    linkageAt(l, (to * k) / count, at);
    const fault = look(at);
    if (!fault) continue;
    let [works, fails] = [(to * (k - 1)) / count, (to * k) / count];
    let found = fault;
    for (let n = 0; n < HALVINGS; n++) {
      const middle = (works + fails) / 2;
      linkageAt(l, middle, at);
      const here = look(at);
      if (here) [fails, found] = [middle, here];
      else works = middle;
    }
    out.status = found;
    out.failsAt = fails;
    return false;
  }
  return true;
}

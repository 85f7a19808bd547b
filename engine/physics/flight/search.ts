import { findRoot } from '../../numerics/index';
import type { Constants } from './constants';
import type { Step } from './elimination';
import type { Balance } from './loads';
import { ANGLE_LIMIT, BALANCED, standsTight, trim, trimAfresh } from './newton';
import { topSpeed } from './start';
import type { State } from './state';

/**
 * The slow ways to a solution, along the curve on which yaw, roll and lift are balanced: f(V) is the spare thrust
 * there. Only `scan` may say that there is none.
 */

const MARCH_STEPS = 40;
/** Places at which `scan` looks between the speed without thrust and none, closer together at low speed. */
const SCAN_PLACES = 72;
const placeOf = (k: number): number => (1 - k / SCAN_PLACES) ** 1.5;

/** Halvings of the gap between tight and slack: to 1e-6 of the speed. */
const SLACK_HALVINGS = 18;
/**
 * Least lack of thrust within this share of the speed at which the lines go slack counts as the lines' doing: near it
 * the model rolls in and the drag rises.
 */
const NEAR_SLACK = 1.02;
/** Pitch (rad) beyond which a state is lost to stalling, not to slack lines. */
const STALLED = 0.9 * ANGLE_LIMIT;

/** From where down the lack of thrust is sought where the propeller pulls at no speed, m/s. */
const SPEED_WITHOUT_PULL = 40;

/**
 * Newton on f(V) from the speed where thrust vanishes, downward: where f bends down on both sides it comes to the
 * fastest root from its fast side. Returns the number of steps with the state at the root; 0 where it gave up.
 */
export function march(c: Constants, s: State, b: Balance, at: Step): number {
  s.speed = topSpeed(c);
  if (!(s.speed > 0) || !trimAfresh(c, s, b, at, false)) return 0;
  for (let n = 1; n <= MARCH_STEPS; n++) {
    if (!trim(c, s, b, at)) return 0;
    const spare = b.residual[0]!;
    if (Math.abs(spare) < BALANCED * c.weight) return n;
    // A rising f below the start means that its top has been passed; a spare at the start that the start was too slow.
    if (!(at.slope < 0) || b.tensionInward <= 0) return 0;
    const change = -spare / at.slope;
    if (n === 1 && change > 0) return 0;
    s.speed += Math.max(change, -0.25 * s.speed);
  }
  return 0;
}

/** What a scan found. */
export interface Scan {
  /** There is a root; the state stands at it. */
  found: boolean;
  /** Least lack of thrust met with the lines tight, N, and where. */
  shortfall: number;
  shortfallSpeed: number;
  /** Speed below which the lines hang, m/s; NaN where that was not met. */
  slackSpeed: number;
  /** True where thrust would do only below that speed. */
  slack: boolean;
  places: number;
}

export const newScan = (): Scan => ({
  found: false,
  shortfall: Number.NaN,
  shortfallSpeed: Number.NaN,
  slackSpeed: Number.NaN,
  slack: false,
  places: 0,
});

interface Place {
  speed: number;
  sideslip: number;
  roll: number;
  pitch: number;
  spare: number;
  slope: number;
}

/** State with tight lines at a speed, tried from a neighbour's angles and from a guess. */
function tight(
  c: Constants,
  s: State,
  b: Balance,
  at: Step,
  speed: number,
  near: Place | undefined,
  thorough = false,
): Place | undefined {
  s.speed = speed;
  if (near) {
    s.sideslip = near.sideslip;
    s.roll = near.roll;
    s.pitch = near.pitch;
    if (trim(c, s, b, at) && standsTight(b, at)) return place(s, b, at);
  }
  return trimAfresh(c, s, b, at, thorough) ? place(s, b, at) : undefined;
}

const place = (s: State, b: Balance, at: Step): Place => ({ ...s, spare: b.residual[0]!, slope: at.slope });

function put(c: Constants, s: State, b: Balance, at: Step, p: Place): void {
  s.speed = p.speed;
  s.sideslip = p.sideslip;
  s.roll = p.roll;
  s.pitch = p.pitch;
  trim(c, s, b, at);
}

/**
 * Looks along f(V) from the speed without thrust down to standstill: for a change of sign, for a top between two places
 * and for a sign change before the place where the lines go slack. Leaves the fastest root in `s`, or says what is
 * missing.
 */
export function scan(c: Constants, s: State, b: Balance, at: Step, out: Scan): void {
  out.found = false;
  out.shortfall = Number.NaN;
  out.shortfallSpeed = Number.NaN;
  out.slackSpeed = Number.NaN;
  out.slack = false;
  const top = topSpeed(c) || SPEED_WITHOUT_PULL;
  let above: Place | undefined;
  for (let k = 0; k < SCAN_PLACES; k++) {
    out.places = k + 1;
    const speed = top * placeOf(k);
    // Where the lines have been tight already, other starts seldom find anything new.
    const here = tight(c, s, b, at, speed, above, k % (Number.isNaN(out.shortfall) ? 2 : 6) === 0);
    const root = above
      ? here
        ? between(c, s, b, at, above, here, out)
        : toSlack(c, s, b, at, above, speed, out)
      : here && here.spare >= 0 && k > 0
        ? cross(c, s, b, at, climb(c, s, b, at, here, k, top), here)
        : undefined;
    if (root) {
      put(c, s, b, at, root);
      out.found = true;
      return;
    }
    if (here) note(here, out);
    above = here;
  }
  if (Number.isNaN(out.shortfall)) out.slackSpeed = tightFrom(c, s, b, at, top);
  out.slack =
    Number.isNaN(out.shortfall) || (!Number.isNaN(out.slackSpeed) && out.shortfallSpeed <= NEAR_SLACK * out.slackSpeed);
}

function note(p: Place, out: Scan): void {
  if (p.spare < 0 && !(-p.spare >= out.shortfall)) {
    out.shortfall = -p.spare;
    out.shortfallSpeed = p.speed;
  }
}

/** Fastest root between two places with tight lines, or nothing. */
function between(c: Constants, s: State, b: Balance, at: Step, high: Place, low: Place, out: Scan): Place | undefined {
  if (high.spare > 0 && low.spare <= 0) return undefined;
  if (low.spare >= 0) return cross(c, s, b, at, high, low);
  if (!(high.slope < 0 && low.slope > 0)) return undefined;
  let last = high;
  const slope = (speed: number): number => {
    last = tight(c, s, b, at, speed, last) ?? last;
    return last.slope;
  };
  findRoot(slope, low.speed, high.speed, { tolerance: 1e-9 * high.speed, steps: 60 });
  note(last, out);
  return last.spare >= 0 ? cross(c, s, b, at, high, last) : undefined;
}

/** Root where `high` lacks thrust and `low` has it to spare. */
function cross(c: Constants, s: State, b: Balance, at: Step, high: Place, low: Place): Place | undefined {
  if (high.spare > 0) return undefined;
  let last = high;
  const spare = (speed: number): number => {
    last = tight(c, s, b, at, speed, last) ?? last;
    return last.spare;
  };
  const root = findRoot(spare, low.speed, high.speed, { tolerance: 1e-10 * high.speed, steps: 60 });
  return root.status === 'settled' || root.status === 'too many steps'
    ? tight(c, s, b, at, root.value, last)
    : undefined;
}

/** The last tight place on the way from a tight place to a speed at which there is none. */
function edge(c: Constants, s: State, b: Balance, at: Step, from: Place, to: number): Place {
  let tightest = from;
  let slack = to;
  for (let n = 0; n < SLACK_HALVINGS; n++) {
    const speed = (tightest.speed + slack) / 2;
    const here = tight(c, s, b, at, speed, tightest);
    if (here) tightest = here;
    else slack = speed;
  }
  return tightest;
}

/**
 * From a tight place, number k, with thrust to spare that was met below slack ones: the first place above it that lacks
 * thrust, or the last tight one.
 */
function climb(c: Constants, s: State, b: Balance, at: Step, from: Place, k: number, top: number): Place {
  let highest = from;
  for (let n = k - 1; n >= 0 && highest.spare >= 0; n--) {
    const speed = top * placeOf(n);
    const next = tight(c, s, b, at, speed, highest);
    if (!next) return edge(c, s, b, at, highest, speed);
    highest = next;
  }
  return highest;
}

/** Notes where below a tight place the lines go slack; a root before that, or nothing. */
function toSlack(
  c: Constants,
  s: State,
  b: Balance,
  at: Step,
  high: Place,
  below: number,
  out: Scan,
): Place | undefined {
  const tightest = edge(c, s, b, at, high, below);
  // A model that only stalls there has tight lines: that is lack of thrust, not slack.
  if (Number.isNaN(out.slackSpeed) && Math.abs(tightest.pitch) < STALLED) out.slackSpeed = tightest.speed;
  note(tightest, out);
  return between(c, s, b, at, high, tightest, out);
}

/** Lowest speed above `speed` at which the lines are tight, for the reason; NaN where none up to twice it is. */
function tightFrom(c: Constants, s: State, b: Balance, at: Step, speed: number): number {
  for (let k = 1; k <= 50; k++) if (tight(c, s, b, at, speed * (1 + k / 50), undefined)) return speed * (1 + k / 50);
  return Number.NaN;
}

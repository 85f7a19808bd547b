import { LAPS_DIFFER } from './limits';
import { medianOf } from './median';
import { pitchAt, type Swing, type Track } from './swing';

/** When the model was heard to pass the point nearest to the ear. */
export interface Pass {
  /** s, and its standard error. */
  readonly at: number;
  readonly error: number;
}

/** A pass is told by so many laps before and after it. */
const REACH = 0.42;
const ROUNDS = 5;
/** A pitch further off than so many standard deviations is left out; a pass with fewer left than this share is none. */
const STRAY = 3.5;
const LEAST_KEPT = 0.75;
/** It may be so many laps off where the last ones say it is. */
const FURTHEST = 0.12;
/** And scatter so many times as widely as all of the track. */
const WIDEST = 2;

/**
 * Every closest point in a track, one after another from the middle of the swing that fits best: the pitch around each is compared with the
 * shape of that swing, which may come earlier or later and stand higher or lower. So each lap has its own time, and laps may change.
 * `apart` as for a fit.
 */
export function passesOf(track: Track, swing: Swing, apart: number): readonly (Pass | undefined)[] {
  const first = track.times[0]!;
  const last = track.times.at(-1)!;
  const ends = 0.2 * swing.lap;
  const walk = (way: 1 | -1): (Pass | undefined)[] => {
    const found: (Pass | undefined)[] = [];
    let [lap, at] = [swing.lap, way > 0 ? swing.pass : swing.pass - swing.lap];
    while (at > first + ends && at < last - ends) {
      const pass = passNear(track, { ...swing, lap, pass: at }, apart);
      found.push(pass);
      const before = found.at(-2);
      if (pass && before) lap = Math.abs(pass.at - before.at);
      at = (pass?.at ?? at) + way * lap;
    }
    return found;
  };
  return [...walk(-1).reverse(), ...walk(1)];
}

function passNear(track: Track, expected: Swing, apart: number): Pass | undefined {
  const reach = REACH * expected.lap;
  const there = [...track.times.keys()].filter((k) => Math.abs(track.times[k]! - expected.pass) < reach);
  if (there.length < 12) return undefined;
  const flat = { ...expected, drift: 0, longer: 0, pitch: 0 };
  const h = 1e-3 * expected.lap;
  let [at, level] = [expected.pass, medianOf(there.map((k) => track.pitch[k]! - pitchAt(flat, track.times[k]!)))];
  let scatter = Math.max(expected.scatter, 1e-4) * 2;
  let kept = there;
  let error = 0;
  for (let round = 0; round < ROUNDS; round++) {
    let [n, x, xx, y, xy] = [0, 0, 0, 0, 0];
    const now = { ...flat, pass: at };
    const off = there.map((k) => track.pitch[k]! - level - pitchAt(now, track.times[k]!));
    const stray = STRAY * scatter + (round === 0 ? 0.02 : 0);
    kept = there.filter((_, i) => Math.abs(off[i]!) < stray);
    for (const [i, k] of there.entries()) {
      if (Math.abs(off[i]!) >= stray) continue;
      // d/d(pass): the shape comes later.
      const slope = (pitchAt(now, track.times[k]! - h) - pitchAt(now, track.times[k]! + h)) / (2 * h);
      n += 1;
      x += slope;
      xx += slope * slope;
      y += off[i]!;
      xy += slope * off[i]!;
    }
    const spread = xx - (x * x) / n;
    if (!(n > 8) || !(spread > 0)) return undefined;
    const by = (xy - (x * y) / n) / spread;
    at += by;
    level += (y - by * x) / n;
    if (Math.abs(at - expected.pass) > FURTHEST * expected.lap) return undefined;
    scatter = Math.max(1e-4, 1.4826 * medianOf(off.map(Math.abs)));
    error = Math.sqrt((scatter * scatter * apart) / spread);
  }
  const clean = kept.length >= LEAST_KEPT * there.length && scatter < WIDEST * Math.max(LAPS_DIFFER, expected.scatter);
  return clean ? { at, error } : undefined;
}

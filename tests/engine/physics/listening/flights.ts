import { seededRandom } from '../../../../engine/numerics/index';

type Random = () => number;

/** A flight to be synthesised, SI. */
export interface Flight {
  readonly radius: number;
  /** From the middle of the circle to the ear; less than the radius: inside. */
  readonly distance: number;
  /** Height of the model above the ear. */
  readonly height: number;
  readonly lap: number;
  /** Share by which laps grow longer to the end, and by which speed swings around the lap. */
  readonly drift: number;
  readonly swing: number;
  readonly rpm: number;
  readonly rpmDrift: number;
  readonly rpmSwing: number;
  /** Where on the circle it begins, laps. */
  readonly start: number;
  readonly timbre: Timbre;
}

export interface Timbre {
  readonly motor: boolean;
  readonly blades: number;
  /** Fall-off of the harmonics: amplitude of the k-th is k^−falls. */
  readonly falls: number;
  /** Of the propeller beside the firing. */
  readonly propeller: number;
  /** Of lines halfway between, as of an engine that fires every second turn. */
  readonly halves: number;
}

export interface Recording {
  readonly seconds: number;
  readonly rate: number;
  /** Tone over noise, dB; none without a tone. */
  readonly noise: number;
  /** 0: white; 1: all of it wind. */
  readonly wind: number;
  readonly sound: number;
  /** Share of the peak at which the microphone clips; 1 or more: it doesn't. */
  readonly clip: number;
  readonly seed: number;
}

const TABLE = 4096;
const GRID = 0.004;
const TURN = 2 * Math.PI;

/** Angle and turns of the engine at a time of the flight, in closed form. */
const angleAt = (f: Flight, t: number, seconds: number): number => {
  const s = t - (f.drift * t * t) / (2 * seconds);
  const turn = (TURN * s) / f.lap + TURN * f.start;
  return turn + f.swing * (Math.sin(turn) - Math.sin(TURN * f.start));
};
const turnsAt = (f: Flight, t: number, seconds: number): number => {
  const around = Math.cos(angleAt(f, t, seconds)) - Math.cos(angleAt(f, 0, seconds));
  return (f.rpm / 60) * (t + (f.rpmDrift * t * t) / (2 * seconds) - (f.rpmSwing * f.lap * around) / TURN);
};

/** What the ear knows of a flight afterwards. */
export interface Truth {
  /** When the sound of each closest point comes in, s. */
  readonly passes: readonly number[];
  /** Mean rpm between two times of the recording. */
  rpm(from: number, to: number): number;
}

export function truthOf(f: Flight, { seconds, sound }: Recording): Truth {
  const passes: number[] = [];
  const near = Math.hypot(f.distance - f.radius, f.height) / sound;
  let from = -1;
  for (let t = -0.5; t < seconds; t += 0.01) {
    const turns = Math.floor(angleAt(f, t, seconds) / TURN);
    if (t > -0.5 && turns > from) {
      let [low, high] = [t - 0.01, t];
      for (let k = 0; k < 40; k++) {
        const middle = (low + high) / 2;
        if (angleAt(f, middle, seconds) / TURN >= turns) high = middle;
        else low = middle;
      }
      passes.push(high + near);
    }
    from = turns;
  }
  return { passes, rpm: (a, b) => ((turnsAt(f, b, seconds) - turnsAt(f, a, seconds)) * 60) / (b - a) };
}

/** One flight as it comes to the ear: the sound given off at τ comes in at τ + r(τ)/c, to the full of the geometry. */
function addFlight(
  to: Float32Array,
  f: Flight,
  { rate, seconds, sound }: Recording,
  random: Random,
  level: number,
): void {
  const top = 0.45 * rate;
  const table = timbreTable(f, random, top);
  let before = received(f, -0.5, seconds, sound);
  let after = received(f, -0.5 + GRID, seconds, sound);
  let emitted = -0.5 + GRID;
  for (let n = 0; n < to.length; n++) {
    const t = n / rate;
    while (after.at < t) {
      before = after;
      emitted += GRID;
      after = received(f, emitted, seconds, sound);
    }
    const span = after.at - before.at;
    const u = (t - before.at) / span;
    const [a, b] = [before.turns, after.turns];
    const [da, db] = [before.rate * span, after.rate * span];
    const turns =
      (1 + 2 * u) * (1 - u) ** 2 * a + u * (1 - u) ** 2 * da + u * u * (3 - 2 * u) * b + u * u * (u - 1) * db;
    const place = (turns / 2 - Math.floor(turns / 2)) * TABLE;
    const k = Math.floor(place);
    const value = table[k]! + (place - k) * (table[k + 1]! - table[k]!);
    to[n] = to[n]! + level * value * (before.loud + u * (after.loud - before.loud));
  }
}

function received(f: Flight, tau: number, seconds: number, sound: number) {
  const at = (t: number) => {
    const angle = angleAt(f, t, seconds);
    const [x, y] = [f.radius * Math.cos(angle) - f.distance, f.radius * Math.sin(angle)];
    return { r: Math.hypot(x, y, f.height), ahead: (x * -Math.sin(angle) + y * Math.cos(angle)) / Math.hypot(x, y) };
  };
  const h = 1e-5;
  const { r, ahead } = at(tau);
  const approach = (at(tau + h).r - at(tau - h).r) / (2 * h);
  const turn = (turnsAt(f, tau + h, seconds) - turnsAt(f, tau - h, seconds)) / (2 * h);
  return {
    at: tau + r / sound,
    turns: turnsAt(f, tau, seconds),
    rate: turn / (1 + approach / sound),
    loud: (Math.hypot(f.distance, f.radius) / r) * (1 + 0.3 * ahead),
  };
}

/** Two turns of the shaft, at an effective value of 1. */
function timbreTable({ timbre, rpm }: Flight, random: Random, top: number): Float64Array {
  const most = Math.floor(top / ((1.3 * rpm) / 60));
  const table = new Float64Array(TABLE + 1);
  const add = (order: number, level: number): void => {
    if (level <= 0 || order > most) return;
    const phase = TURN * random();
    for (let n = 0; n <= TABLE; n++) table[n]! += level * Math.cos((2 * TURN * order * n) / TABLE + phase);
  };
  const rough = (): number => 0.6 + 0.8 * random();
  for (let k = 1; k <= 14; k++) {
    if (timbre.motor) add(timbre.blades * k, k ** -timbre.falls * rough());
    else {
      add(k, k ** -timbre.falls * rough());
      add(timbre.blades * k, timbre.propeller * k ** -timbre.falls * rough());
      add(k - 0.5, timbre.halves * k ** -timbre.falls * rough());
    }
  }
  if (timbre.motor) add(1, 0.1 * random());
  const effective = Math.sqrt(table.reduce((sum, v) => sum + v * v, 0) / TABLE);
  return table.map((value) => value / effective);
}

/** Wind at a microphone falls with frequency, and comes in gusts; beside it what hisses. */
function addNoise(to: Float32Array, { rate, wind }: Recording, random: Random, level: number): void {
  const made = new Float32Array(to.length);
  const poles = [8, 40, 200, 1000].map((corner) => Math.exp((-TURN * corner) / rate));
  const gains = poles.map((pole) => Math.sqrt(1 - pole * pole));
  const held = poles.map(() => 0);
  let gust = 0;
  const slow = Math.exp((-TURN * 0.4) / rate);
  for (let n = 0; n < to.length; n++) {
    const white = random() + random() - 1;
    gust = slow * gust + Math.sqrt(1 - slow * slow) * (random() - 0.5) * 3.46;
    let sum = 0;
    for (let p = 0; p < poles.length; p++) {
      held[p] = poles[p]! * held[p]! + gains[p]! * white;
      sum += held[p]!;
    }
    made[n] = wind * sum * Math.exp(0.5 * gust) + (1 - wind) * white;
  }
  const effective = Math.sqrt(made.reduce((sum, v) => sum + v * v, 0) / made.length);
  for (let n = 0; n < to.length; n++) to[n]! += (level / effective) * made[n]!;
}

/** The first flight is the one that is asked for; others are this much quieter, dB. No flight: noise alone. */
export function synthesise(
  flights: readonly { readonly flight: Flight; readonly quieter: number }[],
  recording: Recording,
): Float32Array {
  const random = seededRandom(recording.seed);
  const sound = new Float32Array(Math.round(recording.seconds * recording.rate));
  for (const { flight, quieter } of flights) addFlight(sound, flight, recording, random, 10 ** (-quieter / 20));
  addNoise(sound, recording, random, 10 ** (-recording.noise / 20));
  const peak = sound.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  const end = recording.clip * peak;
  return sound.map((value) => (Math.max(-end, Math.min(end, value)) / Math.max(end, 1e-9)) * 0.9);
}

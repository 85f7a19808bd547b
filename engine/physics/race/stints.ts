import { nonNegative, positive } from '../domain';

/** What a race of N laps is reckoned from. Laps count from release; those on the ground and in the glide count as laps flown. */
export interface Race {
  /** N, whole. */
  readonly laps: number;
  /** Time and fuel of a lap under power, s and m³. */
  readonly lapTime: number;
  readonly fuelPerLap: number;
  /** Fuel that a filling gives, m³. */
  readonly usable: number;
  /** Fuel kept at every landing and at the end, in laps under power. */
  readonly reserve: number;
  /** The run from release to flying: laps and s; its fuel flows as under power. */
  readonly runLaps: number;
  readonly runTime: number;
  /** From shutting off to touchdown: laps and s, without fuel. */
  readonly glideLaps: number;
  readonly glideTime: number;
  /** From touchdown until the hose is on, and from the hose coming off until release, s. */
  readonly catchTime: number;
  readonly restartTime: number;
  /** m³/s. */
  readonly refuelRate: number;
}

export type RaceStatus = 'settled' | 'no laps';

export interface RaceAnswer {
  readonly status: RaceStatus;
  /** s, from first release to the end of lap N, at flying speed. */
  readonly time: number;
  readonly stops: number;
  /** Whole laps from release to a stop. */
  readonly lapsPerTank: number;
  /** Burnt, m³. */
  readonly fuel: number;
  /** On the ground between touchdown and release, s, all stops. */
  readonly pitTime: number;
  /** What runs and glides cost over laps under power, s. */
  readonly slowTime: number;
  /** Fuel left at the end, in laps under power. */
  readonly left: number;
  /** Laps by which a filling would have to last longer to save a stop; 0 without a stop. */
  readonly lacking: number;
}

/** One stint: laps flown, fuel taken before it (m³, the first filling apart), fuel at its start and end (m³), its time in the air (s). */
export interface Stint {
  readonly laps: number;
  readonly taken: number;
  readonly before: number;
  readonly after: number;
  readonly time: number;
}

/** Rounding of a quotient that should be whole. */
const NEAR = 1e-9;
const whole = (laps: number): number => Math.max(0, Math.floor(laps + NEAR));

/**
 * n_e = n_r + (V_u/v − n_s − t_r/t),  n_p = n_e + n_g: laps that a filling lasts, not rounded: to the flag under power (n_e), or to a stop at
 * the end of a glide (n_p). V_u usable fuel, v fuel and t time of a lap, n_s reserve, n_r and t_r the run, n_g the glide.
 * Derivation: fuel flows at v/t in the run and under power, and not in the glide.
 */
export function lapsOfFilling(race: Race): { readonly toFlag: number; readonly toStop: number } {
  const powered = race.usable / positive('fuel a lap', race.fuelPerLap) - nonNegative('reserve', race.reserve);
  const toFlag = race.runLaps + powered - race.runTime / positive('lap time', race.lapTime);
  return { toFlag, toStop: toFlag + race.glideLaps };
}

/** Time in the air (s) and fuel burnt (m³) by a stint of n laps that ends in a glide, or at the flag; run and glide are flown whole in the shortest too. */
function stintOf(race: Race, laps: number, glides: boolean): { readonly time: number; readonly fuel: number } {
  const level = Math.max(0, laps - race.runLaps - (glides ? race.glideLaps : 0)) * race.lapTime;
  const burning = race.runTime + level;
  return {
    time: burning + (glides ? race.glideTime : 0),
    fuel: (burning / race.lapTime) * race.fuelPerLap,
  };
}

/** The fewest stops k with k ⌊n_p⌋ + ⌊n_e⌋ ≥ N; undefined where a filling doesn't last a lap. */
function stopsOf(laps: number, toStop: number, toFlag: number): number | undefined {
  const [stop, flag] = [whole(toStop), whole(toFlag)];
  const missing = laps - flag;
  if (missing <= 0) return 0;
  return stop < 1 || flag < 1 ? undefined : Math.ceil(missing / stop);
}

/**
 * The stints of a race: every filling is flown to its last whole lap that leaves the reserve, and the last stop takes only what the rest of the
 * race needs. Empty where a filling doesn't last a lap.
 */
export function stintsOf(race: Race): readonly Stint[] {
  const { toFlag, toStop } = lapsOfFilling(race);
  const stops = stopsOf(race.laps, toStop, toFlag);
  if (stops === undefined) return [];
  const kept = race.reserve * race.fuelPerLap;
  const stints: Stint[] = [];
  let fuel = race.usable;
  let flown = 0;
  for (let k = 0; k <= stops; k++) {
    const last = k === stops;
    // Every later stint keeps a lap to fly: a filling may last further to a stop than to the flag, by the laps of the glide.
    const laps = last ? race.laps - flown : Math.min(whole(toStop), race.laps - flown - (stops - k));
    const { time, fuel: burnt } = stintOf(race, laps, !last);
    const wanted = last ? Math.max(fuel, burnt + kept) : race.usable;
    const taken = k === 0 ? 0 : wanted - fuel;
    const before = fuel + taken;
    fuel = before - burnt;
    flown += laps;
    stints.push({ laps, taken, before, after: fuel, time });
  }
  return stints;
}

/** Time on the ground before a stint, s: catching, fuelling at the rate q, restarting. */
export const pitTimeOf = (race: Race, stint: Stint): number =>
  race.catchTime + stint.taken / positive('refuelling rate', race.refuelRate) + race.restartTime;

/**
 * Laps more that a filling must last for one stop less: the least x with (k − 1) ⌊n_p + x⌋ + ⌊n_e + x⌋ ≥ N.
 * Found by going from one whole lap to the next.
 */
function lackingOf(laps: number, stops: number, toStop: number, toFlag: number): number {
  if (stops === 0) return 0;
  let more = 0;
  while ((stops - 1) * whole(toStop + more) + whole(toFlag + more) < laps) {
    const next = (lasting: number): number => whole(lasting + more) + 1 - lasting;
    more = stops > 1 ? Math.min(next(toStop), next(toFlag)) : next(toFlag);
  }
  return more;
}

const NOTHING: RaceAnswer = {
  status: 'no laps',
  time: Number.NaN,
  stops: Number.NaN,
  lapsPerTank: 0,
  fuel: Number.NaN,
  pitTime: Number.NaN,
  slowTime: Number.NaN,
  left: Number.NaN,
  lacking: Number.NaN,
};

/**
 * t_N = Σ stints + Σ pit stops: the race from first release to the end of lap N under power. Status 'no laps': a filling doesn't last a lap.
 * Derivation: the times follow one another; which laps fall into which stint doesn't change their sum.
 */
export function raceOf(race: Race): RaceAnswer {
  const stints = stintsOf(race);
  if (stints.length === 0) return NOTHING;
  const { toFlag, toStop } = lapsOfFilling(race);
  const stops = stints.length - 1;
  let [time, pitTime, fuel] = [0, 0, 0];
  for (const [k, stint] of stints.entries()) {
    const pit = k === 0 ? 0 : pitTimeOf(race, stint);
    time += stint.time + pit;
    pitTime += pit;
    fuel += stint.before - stint.after;
  }
  return {
    status: 'settled',
    time,
    stops,
    lapsPerTank: stops > 0 ? whole(toStop) : whole(toFlag),
    fuel,
    pitTime,
    slowTime: time - pitTime - race.laps * race.lapTime,
    left: stints[stops]!.after / race.fuelPerLap,
    lacking: lackingOf(race.laps, stops, toStop, toFlag),
  };
}

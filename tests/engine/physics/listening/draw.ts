import { seededRandom } from '../../../../engine/numerics/index';

type Random = () => number;

import { type Flight, type Recording, synthesise, type Truth, truthOf } from './flights';

/** A recording with what is true of it, and what the listener knows beforehand. */
export interface DrawnFlight {
  readonly seed: number;
  readonly flight: Flight | undefined;
  readonly recording: Recording;
  readonly truth: Truth | undefined;
  /** rpm that the listener expects, cycles of tone a turn. */
  readonly about: number;
  readonly cycles: number;
  sound(): Float32Array;
}

interface Sort {
  readonly radius: readonly [number, number];
  readonly lap: readonly [number, number];
  readonly rpm: readonly [number, number];
  readonly motor?: boolean;
}

/** Invented sorts of models: a trainer, a stunt model, a sport model, a racer, a fast racer, an electric one. */
const SORTS: readonly Sort[] = [
  { radius: [14, 17], lap: [4.2, 5.8], rpm: [9000, 13000] },
  { radius: [18, 20], lap: [4.8, 5.8], rpm: [7500, 11500] },
  { radius: [15, 18], lap: [3.2, 4.6], rpm: [11000, 16000] },
  { radius: [15.5, 18], lap: [2.3, 3.2], rpm: [16000, 24000] },
  { radius: [15.5, 16.5], lap: [1.7, 2.2], rpm: [22000, 28000] },
  { radius: [14, 20], lap: [4.5, 6], rpm: [7000, 11000], motor: true },
];

export function drawFlight(seed: number): DrawnFlight {
  const random = seededRandom((seed * 2_654_435_761) % 2 ** 31);
  const sort = SORTS[seed % SORTS.length]!;
  const flight = flightOf(sort, random);
  const inside = random() < 0.06;
  const none = random() < 0.06;
  const own = inside ? { ...flight, distance: 0.5 } : flight;
  const others = random() < 0.3 ? [flightOf(SORTS[Math.floor(random() * SORTS.length)]!, random)] : [];
  const recording: Recording = {
    seconds: Math.max(7, own.lap * between(random, [2.4, 3.3])),
    rate: 12_000,
    noise: [25, 15, 8, 2, -4, -10][Math.floor(random() * 6)]!,
    wind: between(random, [0.6, 1]),
    sound: between(random, [325, 350]),
    clip: random() < 0.25 ? between(random, [0.15, 0.6]) : 2,
    seed,
  };
  const quieter = between(random, [3, 20]);
  const flights = none ? [] : [{ flight: own, quieter: 0 }, ...others.map((each) => ({ flight: each, quieter }))];
  return {
    ...{ seed, recording, flight: none ? undefined : own },
    truth: none ? undefined : truthOf(own, recording),
    about: own.rpm * between(random, [0.82, 1.2]),
    cycles: own.timbre.motor ? own.timbre.blades : 1,
    sound: () => synthesise(flights, recording),
  };
}

function flightOf({ radius, lap, rpm, motor = false }: Sort, random: Random): Flight {
  const wide = between(random, radius);
  return {
    radius: wide,
    distance: wide * between(random, [1.15, 2.6]),
    height: between(random, [-0.5, 1.5]),
    lap: between(random, lap),
    drift: between(random, [-0.01, 0.01]),
    swing: between(random, [0, 0.02]),
    rpm: between(random, rpm),
    rpmDrift: between(random, [-0.01, 0.01]),
    rpmSwing: between(random, [0, 0.006]),
    start: random(),
    timbre: {
      motor,
      blades: motor ? 2 + Math.floor(random() * 2) : 2,
      falls: between(random, [0.4, 1.3]),
      propeller: between(random, [0, 0.8]),
      halves: random() < 0.25 ? between(random, [0, 0.4]) : 0,
    },
  };
}

const between = (random: Random, [low, high]: readonly [number, number]): number => low + (high - low) * random();

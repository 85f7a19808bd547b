import { solveDense } from '../../../../engine/numerics/index';
import { type FlightSetup, type FlightSolution, prepare } from '../../../../engine/physics/flight/index';
import { newWindRoom, type Wind } from '../../../../engine/physics/wind/index';
import { pullThere, trimInWind, windAt } from '../../../../engine/physics/wind/trim';

const room = newWindRoom();

/**
 * Speed and pull at n places of the lap in wind in another way than the product's, to hold it against: the model is turned until it balances at
 * every place, one after the other, and the speeds follow by elimination with the whole table of slopes. Nothing where that does not settle.
 */
export function flyTrimmedLap(setup: FlightSetup, still: FlightSolution, wind: Wind, n: number) {
  if (!prepare(setup, room.c)) return undefined;
  const { c, b, at, state } = room;
  const perForce = (c.radius * c.cosElevation) / (setup.mass + c.linesMass / 3);
  const speed = new Float64Array(n).fill(still.speed);
  const pull = new Float64Array(n);
  const trim = Array.from({ length: n }, () => [still.sideslip, still.outboardLow, still.pitch]);
  for (let round = 0; round < 40; round++) {
    const matrix = new Float64Array(n * n);
    const step = new Float64Array(n);
    for (let k = 0; k < n; k++) {
      windAt(room, wind, (2 * Math.PI * k) / n);
      state.speed = speed[k]!;
      [state.sideslip, state.roll, state.pitch] = trim[round === 0 && k > 0 ? k - 1 : k] as [number, number, number];
      if (!trimInWind(room, wind)) return undefined;
      trim[k] = [state.sideslip, state.roll, state.pitch];
      pull[k] = pullThere(room);
      step[k] = perForce * b.residual[0]!;
      for (let j = 0; j < n; j++) {
        const angle = ((k - j) * Math.PI) / n;
        const slope = k === j ? 0 : ((k - j) % 2 === 0 ? 0.5 : -0.5) / Math.tan(angle);
        matrix[k * n + j] = slope;
        step[k]! -= (slope * speed[j]! * speed[j]!) / 2;
      }
      matrix[k * n + k]! -= (perForce * at.slope) / speed[k]!;
    }
    if (solveDense(matrix, step, n) === 0) return undefined;
    let largest = 0;
    for (let k = 0; k < n; k++) {
      step[k]! /= speed[k]!;
      largest = Math.max(largest, Math.abs(step[k]!));
      speed[k]! += step[k]!;
    }
    if (largest < 1e-9) return { speed, pull };
    if (!(largest < 100)) return undefined;
  }
  return undefined;
}

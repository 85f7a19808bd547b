import { it, vi } from 'vitest';
import type { FlightSetup } from '../../../engine/physics/flight/index';
import { newBalance, newConstants, newStep, prepare } from '../../../engine/physics/flight/index';
import { trim } from '../../../engine/physics/flight/newton';
import { topSpeed } from '../../../engine/physics/flight/start';
import { bruteDebug } from '../physics/flight/brute';
import { flyRandom, seeded } from './random-designs';
import { newRig } from './rig';

let setup: FlightSetup;
let sol: any;
vi.mock('../../../engine/physics/index', async (o) => {
  const real: any = await o();
  return {
    ...real,
    solveFlight(g: any, out: any) {
      setup = g;
      sol = out;
      real.solveFlight(g, out);
    },
  };
});
it.each([
  [12, 100, 300, 5],
  [15, 621, 40, 1],
  [18, 100, 300, 5],
])('%i %i', (seed, want, n, st) => {
  const rig = newRig();
  const next = seeded(seed);
  for (let k = 0; k <= want; k++) flyRandom(rig, next, k % 2 === 0 ? 1 : 0.25);
  console.log(
    seed,
    want,
    sol.status,
    sol.slackSpeed,
    sol.shortfall,
    sol.shortfallSpeed,
    'mass',
    setup.mass,
    'height',
    setup.height,
    'R',
    setup.guideRadius,
    'thrust',
    Array.from({ length: 21 }, (_, q) => setup.curves[setup.thrustAt + q * setup.stride]!.toFixed(1)).join(' '),
  );
  const c = newConstants();
  prepare(setup, c);
  console.log('top', topSpeed(c));
  for (const f of bruteDebug(setup, n, st)) console.log(f);
  const r = bruteDebug(setup, n, st, true) as any[];
  if (r.length) {
    const [V, , a] = r[0];
    const b = newBalance(),
      step = newStep();
    for (let q = -6; q <= 10; q++) {
      const s = { speed: V * (1 + q * 0.02), sideslip: a[0], roll: a[1], pitch: a[2] };
      const ok = trim(c, s, b, step);
      console.log(
        s.speed.toFixed(2),
        ok,
        'f',
        b.residual[0]!.toFixed(4),
        'T',
        b.tensionInward.toFixed(3),
        'det',
        step.determinant.toFixed(3),
        'slope',
        step.slope.toFixed(3),
        s.sideslip.toFixed(3),
        s.roll.toFixed(3),
        s.pitch.toFixed(3),
      );
    }
  }
});

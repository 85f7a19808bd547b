import { gaussLegendre } from '../numerics/index';
import {
  CREEPING,
  CREEPING_POWER,
  cylinderDragCoefficient,
  ROUGH,
  ROUGH_POWER,
  ROUGH_REYNOLDS,
  WAKE,
} from './cylinder-drag';

const LOWEST = 0.1;
const STEP = 0.04;
/** Up to Re 10⁶. */
const COUNT = Math.ceil(Math.log(1e6 / LOWEST) / STEP) + 1;
const ORIGIN = Math.log(LOWEST);

/** g and dg/d ln Re at ln 0.1 + k STEP, in pairs. */
const table = fill();

/**
 * g(Re) = Re^−4 ∫_0^Re C_d(x) x³ dx: what a turning line feels of a smooth cylinder's drag coefficient between its
 * still end and the Reynolds number Re; a quarter of C_d where that is one number. g to out[o], dg/d ln Re to out[o +
 * 1]; `logRe` is ln Re.
 *
 * Read from a table that Gauss-Legendre quadrature fills once, by cubics with the exact slopes dg/d ln Re = C_d − 4 g
 * (within 1e-8 of the integral); constant below Re 0.1 and above 10⁶. C_d by Cheng's fit.
 */
export function meanCylinderDrag(logRe: number, out: Float64Array, o: number): void {
  const place = (logRe - ORIGIN) / STEP;
  if (!(place > 0)) {
    out[o] = table[0]!;
    out[o + 1] = 0;
    return;
  }
  if (place >= COUNT - 1) {
    out[o] = table[2 * COUNT - 2]!;
    out[o + 1] = 0;
    return;
  }
  const k = Math.floor(place);
  const t = place - k;
  const left = table[2 * k]!;
  const m0 = STEP * table[2 * k + 1]!;
  const m1 = STEP * table[2 * k + 3]!;
  const rise = table[2 * k + 2]! - left;
  const bend = 3 * rise - 2 * m0 - m1;
  const twist = m0 + m1 - 2 * rise;
  out[o] = left + t * (m0 + t * (bend + t * twist));
  out[o + 1] = (m0 + t * (2 * bend + 3 * t * twist)) / STEP;
}

function fill(): Float64Array {
  const { nodes, weights } = gaussLegendre(6);
  const pairs = new Float64Array(2 * COUNT);
  // Below 0.1 the exponentials are as good as their first terms.
  const powers = [
    [CREEPING, CREEPING_POWER],
    [WAKE, 0],
    [ROUGH / ROUGH_REYNOLDS ** ROUGH_POWER, ROUGH_POWER],
  ] as const;
  let integral = powers.reduce((sum, [factor, power]) => sum + (factor * LOWEST ** (4 + power)) / (4 + power), 0);
  for (let k = 0; k < COUNT; k++) {
    const from = ORIGIN + k * STEP;
    const re = Math.exp(from);
    const mean = integral / re ** 4;
    pairs[2 * k] = mean;
    pairs[2 * k + 1] = cylinderDragCoefficient(re) - 4 * mean;
    for (let i = 0; i < nodes.length; i++) {
      const x = Math.exp(from + (STEP / 2) * (1 + nodes[i]!));
      integral += (STEP / 2) * weights[i]! * cylinderDragCoefficient(x) * x ** 4;
    }
  }
  return pairs;
}

import {
  CREEPING,
  CREEPING_POWER,
  cylinderDragCoefficient,
  ROUGH,
  ROUGH_POWER,
  ROUGH_REYNOLDS,
  WAKE,
  WAKE_REYNOLDS,
} from './cylinder-drag';

/** Numbers of a row: where it begins, and the cubic from there. */
const ROW = 5;
/** Rows that every doubling is cut into: as many as five bits tell apart. */
const BITS = 15;
const LOWEST = 2 ** -7;
const HIGHEST = 2 ** 40;

const number = new Float64Array(1);
const words = new Uint32Array(number.buffer);
/** Which half of a number has its exponent. */
const HIGH = new Uint8Array(Uint16Array.of(1).buffer)[0] === 1 ? 1 : 0;

const FIRST = rowAt(LOWEST);
const table = fill();

/**
 * f(x) = C_d Re of x = Re², C_d of `cylinderDragCoefficient`: what a cylinder's drag goes with at the square of its airspeed, and df/dx. x stands in
 * out[o] and gives way to f, df/dx to out[o + 1]; both 0 in still air. Read from a table of cubics with the exact slopes, whose row the bits of the
 * number tell, so that it takes neither root nor logarithm: within 1e-8 from Re 0.1 to 10⁶, that itself outside.
 *
 *   df/dx = (C_d + dC_d/d ln Re)/(2 Re)
 *   dC_d/d ln Re = −¾·11 Re^−¾ − 0.9 y e^−y + 1.2·0.7 z e^−z,  y = 1000/Re, z = (Re/4500)^0.7
 *
 * Derivation: differentiation.
 */
export function cylinderDragOfSquare(out: Float64Array, o: number): void {
  const x = out[o]!;
  if (!(x >= LOWEST && x < HIGHEST)) {
    out[o] = x === 0 ? 0 : valueAt(x);
    out[o + 1] = x === 0 ? 0 : slopeAt(x);
    return;
  }
  number[0] = x;
  const row = ROW * ((words[HIGH]! >>> BITS) - FIRST);
  const on = x - table[row]!;
  const c2 = table[row + 3]!;
  const c3 = table[row + 4]!;
  out[o] = table[row + 1]! + on * (table[row + 2]! + on * (c2 + on * c3));
  out[o + 1] = table[row + 2]! + on * (2 * c2 + 3 * on * c3);
}

function rowAt(x: number): number {
  number[0] = x;
  return words[HIGH]! >>> BITS;
}

function valueAt(x: number): number {
  const re = Math.sqrt(x);
  return re * cylinderDragCoefficient(re);
}

function slopeAt(x: number): number {
  const re = Math.sqrt(x);
  const y = WAKE_REYNOLDS / re;
  const z = (re / ROUGH_REYNOLDS) ** ROUGH_POWER;
  const byLog =
    CREEPING_POWER * CREEPING * re ** CREEPING_POWER - WAKE * y * Math.exp(-y) + ROUGH * ROUGH_POWER * z * Math.exp(-z);
  return (cylinderDragCoefficient(re) + byLog) / (2 * re);
}

function fill(): Float64Array {
  const rows = rowAt(HIGHEST) - FIRST;
  const each = rows / Math.log2(HIGHEST / LOWEST);
  const cubics = new Float64Array(ROW * rows);
  const startOf = (row: number): number => LOWEST * 2 ** Math.floor(row / each) * (1 + (row % each) / each);
  let from = LOWEST;
  let value = valueAt(from);
  let slope = slopeAt(from);
  for (let row = 0; row < rows; row++) {
    const to = startOf(row + 1);
    const width = to - from;
    const next = valueAt(to);
    const nextSlope = slopeAt(to);
    const mean = (next - value) / width;
    const twist = (slope + nextSlope - 2 * mean) / width;
    cubics.set([from, value, slope, (mean - slope) / width - twist, twist / width], ROW * row);
    from = to;
    value = next;
    slope = nextSlope;
  }
  return cubics;
}

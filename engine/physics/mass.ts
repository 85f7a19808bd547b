import { AT_TOLD_BY, PART_STRIDE, TOLD_BY } from './part';

/** What folding a list of parts gives, in the order in which `foldParts` writes it. */
export const FOLD_NAMES = [
  'mass',
  'x',
  'y',
  'z',
  'inertia_xx',
  'inertia_yy',
  'inertia_zz',
  'inertia_xy',
  'inertia_xz',
  'inertia_yz',
  'mass_empty',
  'x_empty',
  'y_empty',
  'z_empty',
  'mass_half',
  'x_half',
  'y_half',
  'z_half',
  'mass_full',
  'x_full',
  'y_full',
  'z_full',
  'mass_sd',
  'x_sd',
  'y_sd',
  'weighed_share',
] as const;

const AT_INERTIA = 4;
const AT_EMPTY = 10;
const AT_SPREAD = 22;
/** Shares of fuel for which mass and CG are told. */
const LOADINGS = 4;

/**
 * Adds parts into one body, fuel rows scaled by the share of fuel on board.
 *
 *   M = Σ m_i,  x_cg = Σ m_i x_i / M (y and z alike)
 *   I_xx = Σ [I_xx,i + m_i (Δy² + Δz²)] and so on, Δ from the CG (parallel-axis theorem, own inertia given)
 *   I_xy = Σ m_i Δx Δy and so on: the plain sum of products; the element of the inertia tensor is −I_xy
 *   s_M² = Σ_g (Σ s_m,i)²,  s_x² = {Σ_g [Σ (x_i − x_cg) s_m,i]² + Σ (m_i s_x,i)²} / M²  (first order)
 *
 * g: parts whose masses go together, since they are cut from one material (inner sums over one g; s_m,i of a cut-out counts negative);
 * all else is independent.
 *
 * `rows`: PART_STRIDE numbers a part, as `writePart` writes them with stride 1. `fuel[i]`: row i is fuel and its mass is
 * that of a full tank. `share`: 0 to 1. `groups[i]`: the first row that row i goes together with, or i. `sums`: room for six numbers a row. Writes `FOLD_NAMES.length` numbers to `out`: kg, m, kg·m²; the same mass and CG
 * for no fuel, half and full; standard deviations; share of the mass without fuel that has been weighed.
 * Returns 'weightless' (and NaN) when the masses do not add up to more than nothing.
 * Derivation: statics of rigid bodies; propagation of errors as JCGM 100, eq. 10 and, of those that go together, eq. 14.
 */
export function foldParts(
  rows: Float64Array,
  fuel: readonly boolean[],
  share: number,
  out: Float64Array,
  groups: Int32Array,
  sums: Float64Array,
): 'weightless' | undefined {
  // Sums of mass and moments of everything but fuel, and of the fuel of a full tank.
  let m0 = 0;
  let x0 = 0;
  let y0 = 0;
  let z0 = 0;
  let m1 = 0;
  let x1 = 0;
  let y1 = 0;
  let z1 = 0;
  let weighed = 0;
  const n = fuel.length;
  for (let i = 0; i < n; i++) {
    const o = i * PART_STRIDE;
    const m = rows[o]!;
    if (fuel[i]) {
      m1 += m;
      x1 += m * rows[o + 1]!;
      y1 += m * rows[o + 2]!;
      z1 += m * rows[o + 3]!;
    } else {
      m0 += m;
      x0 += m * rows[o + 1]!;
      y0 += m * rows[o + 2]!;
      z0 += m * rows[o + 3]!;
      if (rows[o + AT_TOLD_BY] === TOLD_BY.scale) weighed += m;
    }
  }
  const mass = m0 + share * m1;
  if (!(mass > 0 && m0 > 0)) {
    out.fill(Number.NaN, 0, FOLD_NAMES.length);
    return 'weightless';
  }
  // As flown, empty, half full and full; a loop and no function of its own, which would put every sum on the heap.
  for (let k = 0; k < LOADINGS; k++) {
    const at = k === 0 ? 0 : AT_EMPTY + 4 * (k - 1);
    const f = k === 0 ? share : (k - 1) / 2;
    const total = m0 + f * m1;
    out[at] = total;
    out[at + 1] = (x0 + f * x1) / total;
    out[at + 2] = (y0 + f * y1) / total;
    out[at + 3] = (z0 + f * z1) / total;
  }

  const x = out[1]!;
  const y = out[2]!;
  const z = out[3]!;
  let xx = 0;
  let yy = 0;
  let zz = 0;
  let xy = 0;
  let xz = 0;
  let yz = 0;
  let varianceMass = 0;
  let varianceX = 0;
  let varianceY = 0;
  sums.fill(0, 0, 6 * n);
  for (let i = 0; i < n; i++) {
    const o = i * PART_STRIDE;
    const f = fuel[i] ? share : 1;
    const m = f * rows[o]!;
    const dx = rows[o + 1]! - x;
    const dy = rows[o + 2]! - y;
    const dz = rows[o + 3]! - z;
    xx += f * rows[o + 4]! + m * (dy * dy + dz * dz);
    yy += f * rows[o + 5]! + m * (dx * dx + dz * dz);
    zz += f * rows[o + 6]! + m * (dx * dx + dy * dy);
    xy += m * dx * dy;
    xz += m * dx * dz;
    yz += m * dy * dz;
    const sm = m < 0 ? -f * rows[o + 7]! : f * rows[o + 7]!;
    const ss = m * rows[o + 8]!;
    // What goes together is added behind what stands by itself.
    const g = 3 * (rows[o + AT_TOLD_BY] === TOLD_BY.estimate ? n + groups[i]! : i);
    sums[g] = sums[g]! + sm;
    sums[g + 1] = sums[g + 1]! + dx * sm;
    sums[g + 2] = sums[g + 2]! + dy * sm;
    varianceX += ss * ss;
    varianceY += ss * ss;
  }
  for (let g = 0; g < 2 * n; g++) {
    varianceMass += sums[3 * g]! * sums[3 * g]!;
    varianceX += sums[3 * g + 1]! * sums[3 * g + 1]!;
    varianceY += sums[3 * g + 2]! * sums[3 * g + 2]!;
  }
  out[AT_INERTIA] = xx;
  out[AT_INERTIA + 1] = yy;
  out[AT_INERTIA + 2] = zz;
  out[AT_INERTIA + 3] = xy;
  out[AT_INERTIA + 4] = xz;
  out[AT_INERTIA + 5] = yz;
  out[AT_SPREAD] = Math.sqrt(varianceMass);
  out[AT_SPREAD + 1] = Math.sqrt(varianceX) / mass;
  out[AT_SPREAD + 2] = Math.sqrt(varianceY) / mass;
  out[AT_SPREAD + 3] = weighed / m0;
  return undefined;
}

/**
 * What each part does to the fore-and-aft balance: m_i (x_i − x_cg) (kg·m, tail-heavy positive), and the same as a share of
 * all tail-heavy moments (which equal the nose-heavy ones, so shares run from −1 to 1 and sum to 0).
 * Writes one number a row to `moments` and `shares`. Derivation: Σ m_i (x_i − x_cg) = 0 at the CG.
 */
export function momentsAboutCg(
  rows: Float64Array,
  fuel: readonly boolean[],
  share: number,
  cgX: number,
  moments: Float64Array,
  shares: Float64Array,
): void {
  let tailHeavy = 0;
  for (let i = 0; i < fuel.length; i++) {
    const o = i * PART_STRIDE;
    const moment = (fuel[i] ? share : 1) * rows[o]! * (rows[o + 1]! - cgX);
    moments[i] = moment;
    if (moment > 0) tailHeavy += moment;
  }
  for (let i = 0; i < fuel.length; i++) shares[i] = tailHeavy > 0 ? moments[i]! / tailHeavy : 0;
}

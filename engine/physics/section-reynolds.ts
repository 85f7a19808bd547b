import { positive } from './domain';

/** One measured row of a symmetrical section: NaN where the row says nothing. */
export interface SectionPoint {
  /** Thickness over chord. */
  readonly thickness: number;
  /** Re on the chord. */
  readonly reynolds: number;
  /** c_d at zero lift, smooth surface. */
  readonly drag: number;
  /** k_v in c_d = c_d0 + k_v c_l². */
  readonly growth: number;
  /** c_l at the first stall. */
  readonly liftLimit: number;
}

/** Lowest Reynolds number that the curves are carried down to; below it they are held. */
export const LEAST_REYNOLDS = 40_000;
/** Thicknesses that a trend across the measured ones is carried on to; beyond them it is held. */
export const THINNEST = 0.06;
export const THICKEST = 0.25;

/** ln c against ln Re of one thickness: of the reference itself, of the others over the reference. */
interface Curve {
  readonly thickness: number;
  readonly at: readonly number[];
  readonly value: readonly number[];
}

/** One quantity: the thickness that is measured at the most Reynolds numbers, and how all of them, thin to thick, stand to it. */
interface Law {
  readonly reference: Curve;
  readonly over: readonly Curve[];
}

/** Laws of the measured rows. */
export interface SectionCurves {
  readonly drag: Law;
  readonly growth: Law;
  readonly liftLimit: Law;
}

/**
 * Turns measured rows into laws, once for all that read them: ln c of the thickness with the most rows straight in ln Re, and ln of the
 * ratio to it of each other thickness straight in ln Re. The ratios hardly change with Re, so that a thickness of few rows is filled in well.
 */
export function sectionCurves(points: readonly SectionPoint[]): SectionCurves {
  return {
    drag: lawOf(points, (p) => p.drag),
    growth: lawOf(points, (p) => p.growth),
    liftLimit: lawOf(points, (p) => p.liftLimit),
  };
}

function lawOf(points: readonly SectionPoint[], read: (point: SectionPoint) => number): Law {
  const said = points.filter((p) => read(p) > 0).sort((a, b) => a.reynolds - b.reynolds);
  const thicknesses = [...new Set(said.map((p) => p.thickness))].sort((a, b) => a - b);
  if (thicknesses.length === 0) throw new RangeError('points say nothing; one thickness or more must be measured');
  const curves = thicknesses.map((thickness): Curve => {
    const rows = said.filter((p) => p.thickness === thickness);
    return { thickness, at: rows.map((p) => Math.log(p.reynolds)), value: rows.map((p) => Math.log(read(p))) };
  });
  const reference = curves.reduce((most, curve) => (curve.at.length > most.at.length ? curve : most));
  const over = curves.map((curve) => ({
    ...curve,
    value: curve.value.map((value, k) => value - carried(reference, curve.at[k]!)),
  }));
  return { reference, over };
}

/**
 * c_d at zero lift of a smooth symmetrical section: by Re as `sectionCurves` says, then straight across thickness.
 *
 * Ends: the reference thickness is carried on below its first row with its first slope down to Re 40 000, held below that and above its last
 * row; the ratios are held beyond their rows. Thinner or thicker than the measured ones the nearest two are carried on to 6 % and 25 %
 * and held beyond, never below a laminar plate, 2 · 1.328/√Re. Derivation: interpolation; the plate: H. Blasius (1908), as J. D.
 * Anderson, Fundamentals of Aerodynamics.
 */
export function smoothDrag(curves: SectionCurves, thickness: number, reynolds: number): number {
  const drag = across(curves.drag, Math.min(Math.max(thickness, THINNEST), THICKEST), reynolds);
  return Math.max(drag, 2.656 / Math.sqrt(Math.max(reynolds, LEAST_REYNOLDS)));
}

/** k_v in c_d = c_d0 + k_v c_l², likewise by Re; held at the thinnest and thickest measured section. */
export function dragGrowth(curves: SectionCurves, thickness: number, reynolds: number): number {
  const { over } = curves.growth;
  const t = Math.min(Math.max(thickness, over[0]!.thickness), over.at(-1)!.thickness);
  return across(curves.growth, t, reynolds);
}

/** Thickness below which sections stall from the nose. Source: NACA Report 824, where c_l,max falls from 12 % downward (from memory). */
export const THIN_STALL = 0.12;

/**
 * c_l,max of a symmetrical section, likewise by Re, carried on across thickness as `smoothDrag` is but down to 12 % only: thinner sections
 * stall from the nose, which their share of the full-size value must say.
 */
export const smoothLiftLimit = (curves: SectionCurves, thickness: number, reynolds: number): number =>
  across(curves.liftLimit, Math.min(Math.max(thickness, THIN_STALL), THICKEST), reynolds);

function across({ reference, over }: Law, thickness: number, reynolds: number): number {
  const at = Math.log(Math.max(positive('Reynolds number', reynolds), LEAST_REYNOLDS));
  const base = carried(reference, at);
  const of = (curve: Curve): number => Math.exp(base + held(curve, at));
  if (over.length === 1) return of(over[0]!);
  let k = 1;
  while (k < over.length - 1 && over[k]!.thickness < thickness) k++;
  const [low, high] = [over[k - 1]!, over[k]!];
  const from = of(low);
  return from + ((of(high) - from) * (thickness - low.thickness)) / (high.thickness - low.thickness);
}

/** Straight between rows, carried on below the first, held above the last. */
function carried({ at, value }: Curve, x: number): number {
  const last = at.length - 1;
  if (x >= at[last]!) return value[last]!;
  let k = 1;
  while (at[k]! < x) k++;
  return value[k - 1]! + ((value[k]! - value[k - 1]!) * (x - at[k - 1]!)) / (at[k]! - at[k - 1]!);
}

/** Straight between rows, held beyond both ends. */
const held = (curve: Curve, x: number): number => (x <= curve.at[0]! ? curve.value[0]! : carried(curve, x));

/**
 * n in c ∝ Re^n near a Reynolds number, from the values at half and twice it: n = ln[c(2 Re)/c(Re/2)]/ln 4. Definition.
 */
export function powerOfReynolds(value: (reynolds: number) => number, reynolds: number): number {
  return Math.log(value(2 * reynolds) / value(reynolds / 2)) / Math.log(4);
}

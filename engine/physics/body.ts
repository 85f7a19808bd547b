import { nonNegative } from './domain';
import { measureOutline, type Outline, outlineBays, overBays } from './outline';

/** The four places along a fuselage where a ruler goes: nose, front, rear, tail end. */
export interface BodyStation {
  /** m aft of the datum. */
  readonly x: number;
  /** Side depth there, m. */
  readonly depth: number;
}

export interface SideMeasures {
  /** ∫ d dx, m². */
  area: number;
  /** ∫ x d dx about the datum, m³. */
  moment: number;
  /** ∫ x² d dx about the datum, m⁴. */
  secondMoment: number;
  /** ∫ ¼ π d² dx, m³: volume of the round body of that depth. */
  roundVolume: number;
}

/**
 * Side area of a fuselage of straight-tapered bays and its moments along x, d depth (m), x aft of the datum (m).
 *
 *   bay from (x1, d1) to (x2, d2), h = x2 − x1:  ∫ d dx = h (d1 + d2)/2,
 *   ∫ x d dx = h [x1 (2 d1 + d2) + x2 (d1 + 2 d2)]/6,
 *   ∫ x² d dx = h [d1 (3 x1² + 2 x1 x2 + x2²) + d2 (x1² + 2 x1 x2 + 3 x2²)]/12,
 *   ∫ d² dx = h (d1² + d1 d2 + d2²)/3
 *
 * Stations must not run backward. Derivation: integrals of products of straight lines.
 */
export function measureSide(stations: readonly BodyStation[]): SideMeasures {
  const sum: SideMeasures = { area: 0, moment: 0, secondMoment: 0, roundVolume: 0 };
  for (let k = 1; k < stations.length; k++) {
    const { x: x1, depth: d1 } = stations[k - 1]!;
    const { x: x2, depth: d2 } = stations[k]!;
    const h = nonNegative('length of a bay', x2 - x1);
    nonNegative('depth', d1);
    nonNegative('depth', d2);
    sum.area += (h * (d1 + d2)) / 2;
    sum.moment += (h * (x1 * (2 * d1 + d2) + x2 * (d1 + 2 * d2))) / 6;
    sum.secondMoment +=
      (h * (d1 * (3 * x1 * x1 + 2 * x1 * x2 + x2 * x2) + d2 * (x1 * x1 + 2 * x1 * x2 + 3 * x2 * x2))) / 12;
    sum.roundVolume += ((Math.PI / 4) * h * (d1 * d1 + d1 * d2 + d2 * d2)) / 3;
  }
  return sum;
}

export interface SideOutlineMeasures extends SideMeasures {
  /** Height of the centre of the side area above the reference line, m. */
  height: number;
  /** Foremost and rearmost station, m, and the lowest corner at the rearmost, m. */
  nose: number;
  tailEnd: number;
  tailBottom: number;
}

/**
 * The same of a fuselage whose side is given by its outline, x aft of the datum and z above the reference line (m): area, moments and
 * height of the centre ∫ z dA/S by Green's theorem (`measureOutline`), ∫ ¼ π d² dx over its bays with d the depth that is inside.
 * Derivation: as of the four places, for any outline of straight sides.
 */
export function measureSideOutline(outline: Outline): SideOutlineMeasures {
  const { area, momentX, momentZ, secondMomentX } = measureOutline(outline);
  const bays = outlineBays(outline);
  const last = bays.at(-1)!;
  return {
    area,
    moment: momentX,
    secondMoment: secondMomentX,
    roundVolume: (Math.PI / 4) * overBays(bays, (_, depth) => depth * depth),
    height: momentZ / area,
    nose: bays[0]!.from,
    tailEnd: last.to,
    tailBottom: last.edgeTo,
  };
}

/**
 * N = q C ψ, C = 2 ∫ ¼ π d² dx: destabilising yaw couple of a slender body of depth d in sideslip ψ (rad), q dynamic
 * pressure (Pa); returns C (m³). Full potential-flow value, which a blunt rear end does not reach; holds for a flat slab as for a round body, because both
 * carry the apparent mass of the circle on their depth.
 * Source: M. M. Munk, The Aerodynamic Forces on Airship Hulls, NACA Report 184 (1924), slender limit (from memory).
 */
export function slenderBodyCouple(roundVolume: number): number {
  return 2 * nonNegative('round volume', roundVolume);
}

/** S_wet = 2 S_side + 2 w l: wetted area (m²) of a slab-sided body of side area S_side, width w and length l. Derivation: its four faces. */
export function slabWettedArea(sideArea: number, width: number, length: number): number {
  return 2 * nonNegative('side area', sideArea) + 2 * nonNegative('width', width) * nonNegative('length', length);
}

import {
  LEAST_REYNOLDS,
  LIFTING_LINE_TERMS,
  SURFACE_OVER_LINE,
  THICKEST,
  THIN_STALL,
  THINNEST,
  WING_SHARE_OF_SECTION_LIFT,
} from '../../physics/index';
import { formatNumber } from '../../units/index';
import type { Theory } from '../block';

const percent = (share: number): string => `${formatNumber(100 * share)} %`;

export const wingTheory: Theory = {
  equations: [
    {
      title: 'Area and mean chord of two panels',
      text: 'S_k = s (c_r + c_t)/2,  c̄_k = ⅔ c_r (1 + λ + λ²)/(1 + λ),  ȳ_k = (s/3) (1 + 2 λ)/(1 + λ)\nS = Σ S_k,  A = b²/S\nc̄ = Σ S_k c̄_k/S,  its leading edge at Σ S_k ȳ_k tan Λ_k/S,  x_¼ a quarter of c̄ behind it',
      doc: 's panel span, c_t its tip chord, λ = c_t/c_r, Λ sweep of its leading edge, tip aft positive.',
      source:
        'One panel: D. P. Raymer, Aircraft Design: A Conceptual Approach. Two panels: derivation, mean weighted by area.',
    },
    {
      title: 'Panels by their corners',
      text: 'S_k = ∫ c dy,  c̄_k = ∫ c² dy/S_k,  leading edge at ∫ x_l c dy/S_k\ntan Λ_½ = ∫ (x_½ − ½ c_r) y c dy/∫ y² c dy',
      doc: 'c chord at y, how much of the line fore and aft is inside, and x_l its foremost point: both straight from corner to corner, so that Simpson’s rule is exact on each bay. x_½ the middle of the chord.',
      source:
        'Derivation: the same integrals as of straight panels; Λ_½ the straight line of least weighted square through the half-chord points.',
    },
    {
      title: 'Section',
      text: `Re_0 = V_0 c̄/ν_0\nc_d0 = f_r c_d(t/c, Re_0) · (camber) + k_v c_l,i²\nC_L,max = ${WING_SHARE_OF_SECTION_LIFT} f_l c_l,max(t/c, Re_0) · (camber, nose)`,
      doc: `c_d and c_l,max of a smooth symmetrical section: the logarithm of those of 15 %, and of the ratio of each other thickness to it, straight in the logarithm of Re between measured rows, then straight across thickness. A thickness left out comes back from the others within 6 % in drag and 12 % in greatest lift. Ends: below the first row the first slope of 15 % is carried on down to Re ${LEAST_REYNOLDS / 1000} 000 and then held, above the last row it is held, and so are the ratios beyond theirs; drag is carried on across thickness to ${percent(THINNEST)} and ${percent(THICKEST)} and is no less than that of a laminar plate, greatest lift to ${percent(THIN_STALL)} and ${percent(THICKEST)}. (camber): the ratio of full-size values with and without it; (nose): that of full-size greatest lift to that at ${percent(THIN_STALL)}, for thinner sections. ν_0 of standard air at sea level. Slope, zero-lift angle and moment are full-size ones.`,
      source: `Rows of the two section tables with their sources, chiefly R. E. Sheldahl and P. C. Klimas, SAND80-2114 (1981), made from tests and computation; a later study finds its greatest lift too low at Re 160 000. Interpolation: derivation. ${WING_SHARE_OF_SECTION_LIFT} from D. P. Raymer, Aircraft Design: A Conceptual Approach, ch. 12 (from memory). The factors for roughness are estimates.`,
    },
    {
      title: 'Section and airspeed',
      text: 'c_d0 ∝ V^n,  n = ln[c_d(2 Re_0)/c_d(Re_0/2)]/ln 4,  C_L,max ∝ V^p likewise\nV^n as (1 + ½ (1 + n) x)/(1 + ½ (1 − n) x),  x = V/V_r − 1,  V_r = Re_0 ν/c̄',
      doc: 'V_r is the airspeed at which the values stand in the air of the day. From half to twice it the quotient is within 1 % of the power.',
      source: 'Derivation: Padé’s form [1/1] of the power.',
    },
    {
      title: 'Lift slope',
      text: `a = a_l g(Λ_½)/[g(0) (1 + u + u²)],  u = ${SURFACE_OVER_LINE}/A\ng(Λ) = 2π A/(2 + √(4 + (2π A/a_0)² (1 + tan² Λ)))`,
      doc: 'a_l slope by the lifting line below, which knows planform and section but takes the chord for a line and lies 3 to 10 % high; Λ_½ sweep of the half-chord line, weighted by area. Within 1 % of a vortex lattice at aspect ratios from 3 to 12, tapers from 0.4 to 1 and no sweep, 1.5 % to 30° of sweep; 2 % low at an aspect ratio of 2. Low Mach number.',
      source:
        'Fitted to lifting-surface slopes of rectangular flat plates, E. O. Tuck, J. Austral. Math. Soc. B 35 (1993) 127–144, over those of the lifting line. Sweep: USAF DATCOM 4.1.3.2 after Polhamus (from memory).',
    },
    {
      title: 'Lifting line in circular flight',
      text: 'Σ A_n sin nθ (sin θ + n μ) = μ α (1 + y/R) sin θ,  μ = c a_0/(4 b)\ny = y_m − (b/2) cos θ\ny_L(R) = ∫ y Γ (1 + y/R) dy/∫ Γ (1 + y/R) dy ≈ y_L + κ/R',
      doc: `Odd and even n, since the panels differ and the outboard wing flies faster; Γ circulation, R radius to the centreline. ${LIFTING_LINE_TERMS} terms. The wake is taken as straight; sweep is not seen.`,
      source:
        'L. Prandtl’s theory with the series of H. Glauert, The Elements of Aerofoil and Airscrew Theory, ch. XI; the terms in 1/R: derivation from the same equation with the local speed.',
    },
    {
      title: 'Drag due to lift',
      text: 'C_D = c_d0 + j C_L + k C_L²,  k = 1/(π A e),  j = −2 k_v c_l,i\n1/e = 1 + δ + π A k_v',
      doc: 'From c_d = c_d,min + k_v (c_l − c_l,i)²: a cambered section has its least drag at a lift of its own. δ = Σ n (A_n/A_1)² over n > 1 from the lifting line; k_v is the growth of section drag with lift between 0° and 4°, in Re and thickness as the drag is, held at 12 % and 18 %.',
      source:
        'Lifting line as above; k_v from R. E. Sheldahl and P. C. Klimas, SAND80-2114 (1981); c_l,i by the theory of thin sections (H. Glauert), as the section table has it.',
    },
    {
      title: 'Station of the profile drag',
      text: 'y_D(R) = ∫ y c (1 + y/R)² dy/∫ c (1 + y/R)² dy ≈ y_D + κ_D/R',
      source: 'Derivation: drag in proportion to chord and the square of the local speed, expanded in y/R.',
    },
  ],
  notModelled: [
    'Twist, dihedral and flaps.',
    'Change of section values with Reynolds number from tip to tip: all are those at the mean chord.',
    'Measurements of cambered sections, and of sections thinner than 12 % or thicker than 18 %, at the Reynolds numbers of a model: the library has none.',
    'The small moment of a symmetrical section that lifts: its lift acts within about 1 % of the chord of the quarter chord, and at low Reynolds numbers the place moves with the lift.',
    'Lift that changes by a jump or hangs on the way there, as some sections show below a Reynolds number of 100 000.',
    'The stall itself: only the lift coefficient at which it comes.',
    'Propeller wash on the wing.',
  ],
};

import { describe, expect, it } from 'vitest';
import { wing } from '../../engine/blocks/wing/index';
import {
  datcomSlope,
  FLAT_PLATE_SECTION_SLOPE,
  inducedFactor,
  laminarFriction,
  liftingLine,
  measurePlanform,
  type Planform,
  turbulentFriction,
  wingSlope,
} from '../../engine/physics/index';
import { runBlock } from '../engine/blocks/run-block';
import { halfUnit, jsonOf, usedIn } from './aero-rows';
import { latticeSlope } from './vortex-lattice';

const FILE = 'aero_wing_examples.json';
const file = jsonOf(FILE);
const used = usedIn(FILE);
const DEGREE = Math.PI / 180;
const rectangle = (aspectRatio: number): Planform => tapered(aspectRatio / 2, 1, 1);
const tapered = (half: number, root: number, tip: number): Planform => ({
  inboardSpan: half,
  outboardSpan: half,
  rootChord: root,
  inboardTipChord: tip,
  outboardTipChord: tip,
  inboardSweep: 0,
  outboardSweep: 0,
});
/** As the wing block takes them: C_D = k C_L² with the span efficiency 1/(1 + δ); the lift slope without sweep. */
const inducedDrag = (lift: number, aspectRatio: number, delta: number): number =>
  inducedFactor(aspectRatio, 1 / (1 + delta)) * lift * lift;
const helmbold = (sectionSlope: number, aspectRatio: number): number => datcomSlope(sectionSlope, aspectRatio, 0);
const ofTaper = (aspectRatio: number, taper: number): Planform => tapered((aspectRatio * (1 + taper)) / 4, 1, taper);
const near = (computed: number, printed: number, tolerance = halfUnit(printed)): void => {
  expect(Math.abs(computed - printed), `${computed} against ${printed}`).toBeLessThanOrEqual(tolerance);
};
const exampleOf = (id: string) => file.examples.find((row: { id: string }) => row.id === id);

/* Formulas as printed in the sources that the file names; compared over a range of arguments, relative 1e-12. */
const formulas: Readonly<Record<string, () => void>> = {
  // With τ of rectangular wings as tabulated for a_0 = 2π.
  'Prandtl lifting line slope': () => {
    for (const A of [4, 6, 10]) {
      const { tau } = file.rectangular_wing_lifting_line.rows.find((each: { AR: number }) => each.AR === A);
      const printed = (2 * Math.PI) / (1 + (2 * (1 + tau)) / A);
      expect(liftingLine(rectangle(A), 2 * Math.PI, 60).slope / printed).toBeCloseTo(1, 3);
    }
  },
  'induced drag': () => expect(inducedDrag(0.6, 6, 0.05)).toBeCloseTo((0.36 * 1.05) / (Math.PI * 6), 14),
  'Helmbold low aspect ratio': () => {
    for (const A of [1, 4.65, 10]) {
      expect(helmbold(2 * Math.PI, A)).toBeCloseTo((2 * Math.PI * A) / (2 + Math.sqrt(4 + A * A)), 12);
    }
  },
  'DATCOM / Polhamus': () => {
    const [a0, A, sweep] = [5.7, 5, 0.35];
    const kappa = a0 / (2 * Math.PI);
    const printed = (2 * Math.PI * A) / (2 + Math.sqrt(4 + (A / kappa) ** 2 * (1 + Math.tan(sweep) ** 2)));
    expect(datcomSlope(a0, A, sweep)).toBeCloseTo(printed, 12);
  },
  'mean aerodynamic chord, straight taper': () => {
    const [half, root, tip] = [0.6, 0.25, 0.15];
    const k = tip / root;
    const m = measurePlanform({ ...tapered(half, root, tip), inboardSweep: 0.2, outboardSweep: 0.2 });
    expect(m.meanChord).toBeCloseTo(((2 / 3) * root * (1 + k + k * k)) / (1 + k), 12);
    expect(m.meanChordEdge / Math.tan(0.2)).toBeCloseTo(((2 * half) / 6) * ((1 + 2 * k) / (1 + k)), 12);
  },
  // The same as the DATCOM form at low Mach number: sweep acts by its cosine on the section slope.
  'swept wing, Kuchemann': () => {
    const [a0, A, sweep] = [5.9, 5, 0.5];
    const a = a0 * Math.cos(sweep);
    const x = a / (Math.PI * A);
    expect(datcomSlope(a0, A, sweep)).toBeCloseTo(a / (Math.sqrt(1 + x * x) + x), 12);
  },
  // Lifting surfaces lie below lifting line and Helmbold by a known margin: 5 to 10 % at A = 4 to 8.
  'rectangular flat plate, lifting-surface expansion': () => {
    for (const A of [4, 6, 8]) {
      const tuck = 2 * Math.PI - (Math.PI / A) * (Math.log(A) + 2.562) + (1.404 / A ** 2) * (Math.log(A) + 3.645);
      for (const fast of [helmbold(2 * Math.PI, A), liftingLine(rectangle(A), 2 * Math.PI, 60).slope]) {
        expect(fast / tuck).toBeGreaterThan(1.05);
        expect(fast / tuck).toBeLessThan(1.12);
      }
    }
  },
};

/*
 * J. D. Anderson, Fundamentals of Aerodynamics and Aircraft Performance and Design; Y. A. Çengel and J. M. Cimbala, Fluid Mechanics; a public
 * hobby text. Slopes per degree as printed, forces in N, lengths as printed. Where the answer printed is from memory, the recomputation
 * beside it is met within half a unit where the same formula is used, else within what is said.
 */
const examples: Readonly<Record<string, (row: ReturnType<typeof exampleOf>) => void>> = {
  // The book takes τ for δ, which it reads off a chart. Both follow from the planform: the slope lies 1.6 % below the book's.
  anderson_5_1({ givens: g, answer, computed }) {
    const { slope, delta } = liftingLine(ofTaper(g.AR, g.taper), g.a0_per_rad, 60);
    near(slope * DEGREE, computed.a_per_deg, 0.02 * computed.a_per_deg);
    near(slope * DEGREE, answer.a_per_deg, 0.02 * answer.a_per_deg);
    near(slope * DEGREE * (g.alpha_deg - g.alpha_L0_deg), answer.CL, 0.02 * answer.CL);
    near(delta, g.delta, 0.011);
    near(inducedDrag(computed.CL, g.AR, g.delta), computed.CDi);
    near(inducedDrag(answer.CL, g.AR, g.delta), answer.CDi, 2 * halfUnit(answer.CDi));
  },
  anderson_5_2({ givens: g, answer, computed }) {
    const CL1 = Math.sqrt(g.CDi1 / inducedFactor(g.AR1, 1 / (1 + g.delta1)));
    near(CL1, computed.CL1);
    near(inducedDrag(computed.CL2, g.AR2, g.delta2), computed.CDi2);
    near(inducedDrag(answer.CL2, g.AR2, g.delta2), answer.CDi2, 2 * halfUnit(answer.CDi2));
    // Rectangular wings have these δ within 0.015, and the section slope found so gives both lifts within 4 %.
    const angle = (g.alpha_deg - g.alpha_L0_deg) * DEGREE;
    for (const [A, delta, CL] of [
      [g.AR1, g.delta1, computed.CL1],
      [g.AR2, g.delta2, computed.CL2],
    ]) {
      const line = liftingLine(rectangle(A), answer.a0_per_rad, 60);
      near(line.delta, delta, 0.015);
      near(line.slope * angle, CL, 0.04 * CL);
    }
  },
  anderson_5_3({ givens: g, answer, computed }) {
    const slope = helmbold(g.a0_per_deg / DEGREE, g.AR) * DEGREE;
    near(slope, computed.a_per_deg, 0.02 * computed.a_per_deg);
    near(g.CL / slope + g.alpha_L0_deg, answer.alpha_deg);
  },
  anderson_5_4({ givens: g, answer, computed }) {
    const a0 = g.section_cl_at_7deg / (7 - g.alpha_L0_deg) / DEGREE;
    const { slope, delta } = liftingLine(ofTaper(g.AR, g.taper), a0, 60);
    const CL = slope * (g.alpha_deg - g.alpha_L0_deg) * DEGREE;
    near(delta, g.delta, 0.005);
    near(CL, computed.CL, 0.015 * computed.CL);
    near(g.section_cd + inducedDrag(CL, g.AR, delta), answer.CD, 0.02 * answer.CD);
    near(g.section_cd + inducedDrag(computed.CL, g.AR, g.delta), computed.CD);
    near(g.section_cd + inducedDrag(computed.CL, g.AR, g.delta), answer.CD);
  },
  anderson_4_7_laminar({ givens: g, answer }) {
    near(laminarFriction(g.Re_c), answer.Cf_one_side);
    near(2 * laminarFriction(g.Re_c), answer.Cd_two_sides);
  },
  anderson_4_8_turbulent({ givens: g, answer }) {
    near(turbulentFriction(g.Re_c), answer.Cf_one_side);
    // The source doubles its rounded one-side value.
    near(2 * turbulentFriction(g.Re_c), answer.Cd_two_sides, 2 * halfUnit(answer.Cd_two_sides));
  },
  cengel_11_3_plate({ givens: g, answer }) {
    const friction = laminarFriction((g.speed_m_s * g.length_m) / g.nu_m2_s);
    near(0.5 * g.rho_kg_m3 * g.speed_m_s ** 2 * g.length_m * friction, answer.drag_per_width_N_m);
  },
  anderson_apd_2_8_helmbold({ givens: g, answer, computed }) {
    near(g.a0_per_rad / (Math.PI * g.AR), answer.a0_over_piAR, 2 * halfUnit(answer.a0_over_piAR));
    near(helmbold(g.a0_per_rad, g.AR), answer.a_per_rad);
    // The reference went on from the rounded 0.319: 4 parts in 10 000.
    near(helmbold(g.a0_per_rad, g.AR), computed.a_per_rad, 4e-4 * computed.a_per_rad);
    near(helmbold(g.a0_per_rad, g.AR) * (g.alpha_deg - g.alpha_L0_deg) * DEGREE, computed.CL, 4e-4 * computed.CL);
  },
  mac_straight_taper({ givens: g, answer, computed }) {
    const { meanChord } = measurePlanform(tapered(30, g.root_in, g.tip_in));
    near(meanChord, computed.mac_in);
    // The text rounds on the way.
    near(meanChord, answer.mac_in, 0.0005);
  },
};

/*
 * Rectangular wings by lifting line, a0 = 2π: computed in the reference with 400 odd terms, not a published table (H. Glauert, The Elements of
 * Aerofoil and Airscrew Theory, tabulates the same quantities with few terms). Half a unit of the last digit.
 */
function liftingLineRow(A: number): void {
  const row = file.rectangular_wing_lifting_line.rows.find((each: { AR: number }) => each.AR === A);
  const line = liftingLine(rectangle(A), 2 * Math.PI, 120);
  near(line.slope, row.a_per_rad);
  near(line.delta, row.delta);
  near((Math.PI * A) / line.slope - A / 2 - 1, row.tau, 2 * halfUnit(row.tau));
  near(helmbold(2 * Math.PI, A), row.helmbold_per_rad);
  near(line.station, 0, 1e-12);
}

/*
 * Rectangular flat plates by vortex lattice, computed in the reference: Helmbold's form lies 5 to 8 % above it at A = 2 to 10, the form in use within
 * 1 % from A = 4 up and 2 % at A = 2; the lattice of these tests gives the same to a third of a per cent.
 */
function liftingSurfaceRow(A: number): void {
  const row = file.rectangular_wing_lifting_surface.rows.find((each: { AR: number }) => each.AR === A);
  const ratio = helmbold(2 * Math.PI, A) / row.vortex_lattice_a_per_rad;
  expect(ratio).toBeGreaterThan(1.05);
  expect(ratio).toBeLessThan(1.08);
  const line = liftingLine(rectangle(A), 2 * Math.PI, 60).slope;
  const inUse = wingSlope(line, 2 * Math.PI, A, 0) / row.vortex_lattice_a_per_rad;
  expect(Math.abs(inUse - 1)).toBeLessThan(A < 4 ? 0.02 : 0.01);
  const own = latticeSlope({ aspectRatio: A, taper: 1, sweep: 0 }, 4, 20) / row.vortex_lattice_a_per_rad;
  expect(Math.abs(own - 1)).toBeLessThan(0.003);
}

/* The lattice of these tests, checked above against published lifting surfaces: planforms that nobody has printed. */
describe('lift slope against a vortex lattice', () => {
  const DEG = Math.PI / 180;
  const planforms = [3, 5, 8, 12].flatMap((A) =>
    [0.4, 0.7, 1].flatMap((taper) => [0, 20].map((sweep) => [A, taper, sweep] as const)),
  );
  it.each(planforms)('aspect ratio %f, taper %f, leading edge %f° aft: within 2 %', (A, taper, sweep) => {
    const root = 4 / (A * (1 + taper));
    const half = Math.tan(sweep * DEG) + (root * (taper - 1)) / 2;
    const line = liftingLine(tapered(1, root, taper * root), 2 * Math.PI, 40).slope;
    const slope = wingSlope(line, 2 * Math.PI, A, Math.atan(half));
    const lattice = latticeSlope({ aspectRatio: A, taper, sweep: sweep * DEG }, 3, 16);
    expect(Math.abs(slope / lattice - 1)).toBeLessThan(0.02);
    // The forms without a surface are 3 to 15 % high.
    expect(line / latticeSlope({ aspectRatio: A, taper, sweep: 0 }, 3, 16)).toBeGreaterThan(1.025);
  });
  it('is that of the wing block', () => {
    const { results } = runBlock(wing, { inboard_span: 0.6, outboard_span: 0.6, section_slope: 2 * Math.PI });
    const taper = 200 / 230;
    const lattice = latticeSlope({ aspectRatio: results.aspect_ratio!, taper, sweep: 0 });
    expect(Math.abs(results.lift_slope! / lattice - 1)).toBeLessThan(0.01);
  });
});

/*
 * Measured slopes of rectangular flat plates, 1/rad, digitised from a figure in a public wind-energy library (E. Branlard), reading error about
 * 0.1: the form taken for tails lies within that and 6 %.
 */
function flatPlateRow(A: number, slope: number): void {
  const computed = datcomSlope(FLAT_PLATE_SECTION_SLOPE, A, 0);
  near(computed, slope, 0.1 + 0.06 * slope);
}

describe('finite wings, sections and friction', () => {
  it.each(used)('%s', (name) => {
    if (name.startsWith('formula ')) formulas[name.slice('formula '.length)]!();
    else if (name.startsWith('lifting line AR')) liftingLineRow(Number(name.split(' ')[3]));
    else if (name.startsWith('lifting surface AR')) liftingSurfaceRow(Number(name.split(' ')[3]));
    else if (name.startsWith('flat plate')) flatPlateRow(Number(name.split(' ')[2]), Number(name.split(' ')[3]));
    else examples[name]!(exampleOf(name));
  });
});

import type { FlightSetup } from '../../../../engine/physics/flight/index';
import { degree, quern, straightCurves } from './quern';
import type { Strip, WorldCase } from './world';

/** Even strips of a side of one depth, and the three integrals that the solver takes. */
function evenSide(nose: number, tail: number, area: number): { strips: Strip[]; side: Partial<FlightSetup> } {
  const n = 50;
  const strips = Array.from({ length: n }, (_, k) => ({ x: nose + ((k + 0.5) * (tail - nose)) / n, area: area / n }));
  const integral = (power: number): number => strips.reduce((sum, s) => sum + s.area * s.x ** power, 0);
  return {
    strips,
    side: { sideArea: integral(0), sideMoment: integral(1), sideSecondMoment: integral(2) },
  };
}

const slab = evenSide(-0.17, 0.6, 0.055);
const R = quern.guideRadius + quern.cgY - quern.guideY;

const design = (changes: Partial<FlightSetup>, more: Omit<WorldCase, 'setup' | 'strips'> = {}): WorldCase => ({
  setup: { ...quern, ...slab.side, ...changes },
  strips: slab.strips,
  ...more,
});

/** Everything that a Quern does not have. */
const everything: Partial<FlightSetup> = {
  cgZ: -0.011,
  guideZ: 0.012,
  wingIncidence: 0.6 * degree,
  zeroLiftAngle: -1.4 * degree,
  momentCoefficient: -0.035,
  tailIncidence: -0.8 * degree,
  tailDragArea: 0.0004,
  liftStationTurn: 0.02,
  dragStationTurn: 0.03,
  sectionSpeed: 18,
  dragPower: -0.3,
  dragSlope: -0.006,
  finZ: 0.07,
  rudderAngle: 4 * degree,
  slenderCouple: 0.0012,
  engineY: 0.006,
  engineZ: 0.015,
  sideThrust: 2.5 * degree,
  downThrust: 1 * degree,
  rotorInertia: 6e-5,
  handleReach: 0.75,
};

/** Invented designs, each alive in some term that the others leave small. */
export const designs: Readonly<Record<string, WorldCase>> = {
  'the Quern 25': design({}),
  'the Quern at 30° of elevation': design({ height: R / 2 }),
  'the Quern at 60° of elevation': design({ height: R * Math.sin(60 * degree) }),
  'below the handle': design({ height: -0.9 }),
  'torque reversed': design({ turning: -1, spinning: -1 }, { reversed: true }),
  'clockwise flight with the usual propeller': design(
    { ...everything, turning: -1, spinning: -1 },
    { clockwise: true },
  ),
  'clockwise flight with a reversed propeller': design(
    { ...everything, turning: 1, spinning: 1 },
    { clockwise: true, reversed: true },
  ),
  'guide raised by 40 mm': design({ guideZ: 0.04 }),
  'a heavy rotor at 45° of elevation': design({ height: R * Math.SQRT1_2, rotorInertia: 4e-4 }),
  'a rotor geared against its propeller': design({ ...everything, spinning: -1, rotorInertia: 4e-4 }),
  'everything at once': design(everything),
  'everything at once, 50° up': design({ ...everything, height: R * Math.sin(50 * degree), profileDrag: 0.016 }),
  'nose far out': design({ rudderAngle: 28 * degree, rudderEffect: 0.7, guideX: 0.16, sideThrust: 9 * degree }),
  'a small fast model on thin lines': design({
    ...everything,
    mass: 0.45,
    guideRadius: 15.9,
    lineDiameter: 0.0003,
    ...straightCurves(14, 0.19, 0.18, 2900),
  }),
  'a single line': design({ lineCount: 1, lineDiameter: 0.0005, lineLinearMass: 0.0015, handleReach: 0 }),
};

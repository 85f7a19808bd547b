import { describe, expect, it } from 'vitest';
import {
  type FlightSetup,
  type FlightSolution,
  newFlightRoom,
  newSolution,
  solveFlight,
} from '../../../../engine/physics/flight/index';
import { liftLimitAt } from '../../../../engine/physics/flight/setup';
import { lineDrag } from '../../../../engine/physics/line-drag';
import { degree, quern, straightCurves } from './quern';

const room = newFlightRoom();

const fly = (changes: Partial<FlightSetup> = {}): FlightSolution => {
  const x = newSolution();
  solveFlight({ ...quern, ...changes }, room, x);
  return x;
};
const R = quern.guideRadius + quern.cgY - quern.guideY;

/** No air on body and fin, no torque: only the lines turn and roll the model. */
const bare: Partial<FlightSetup> = {
  sideArea: 0,
  sideMoment: 0,
  sideSecondMoment: 0,
  finArea: 0,
  sideThrust: 0,
  engineY: quern.cgY,
  dragStation: quern.cgY,
  liftStation: quern.cgY,
};

describe('solveFlight', () => {
  it('gives the same bits for the same set-up, whatever was solved before', () => {
    const first = fly();
    fly({ height: 15, mass: 2 });
    fly({ ...straightCurves(0.5, 0.02, 0.1, 900) });
    expect(fly()).toEqual(first);
  });

  it('takes few steps from a cold start', () => {
    const x = fly();
    expect(x.method).toBe('newton');
    expect(x.iterations).toBeLessThanOrEqual(5);
    expect(x.residual).toBeLessThan(1e-11);
    expect(x.slope).toBeLessThan(0);
  });

  it('reads engine curves from columns among others', () => {
    const { curves } = quern;
    const wide = new Float64Array(64 * 64 + 20).fill(Number.NaN);
    for (let k = 0; k < 63; k++) wide[11 + 64 * k] = curves[k]!;
    const x = fly({ curves: wide, thrustAt: 11, torqueAt: 11 + 64 * 21, shaftSpeedAt: 11 + 64 * 42, stride: 64 });
    expect(x).toEqual(fly());
  });

  it('spends the power of the propeller on drag and on the lines: P V = D V + line power', () => {
    for (const changes of [{}, { height: 12 }, { guideX: 0.11 }, { guideZ: 0.05 }]) {
      // All drag acts at the CG and the tail makes none, so that no other couple does work.
      const setup = { ...quern, ...bare, dragArea: 0, tailInducedFactor: 0, downwash: 0, ...changes };
      const x = newSolution();
      solveFlight({ ...setup, ...straightCurves(4, 0.085, 0, 1200) }, room, x);
      expect(x.status).toBe('settled');
      const omega = x.speed / x.radius;
      const lines = {
        count: setup.lineCount,
        diameter: setup.lineDiameter,
        handleReach: setup.handleReach,
        guideRadius: setup.guideRadius,
        dragCoefficient: setup.lineDragCoefficient,
        dragFactor: 1,
        kinematicViscosity: setup.kinematicViscosity,
        density: setup.density,
      };
      const linePower = lineDrag(lines, omega) * setup.guideRadius * omega;
      // The thrust points along the nose: its part along the path is what works.
      const useful = x.thrust * Math.cos(x.pitch) * Math.cos(x.sideslip) * x.speed;
      // Rolled and up high, lift ahead of the CG does a millionth of it.
      expect(useful / (x.drag * x.speed + linePower)).toBeCloseTo(1, 6);
      // With R in place of R_g the same is out by 3 % of the line power.
      expect(Math.abs(useful - x.drag * x.speed - linePower * (x.radius / setup.guideRadius))).toBeGreaterThan(0.3);
    }
  });

  it('leaves the nose on the path by the leadout rule where air turns nothing: Δ = a tan ε/(1 + a/R_g)', () => {
    const x = fly(bare);
    const a = quern.cgY - quern.guideY;
    const behind = (a * Math.tan(x.lineTrail)) / (1 + a / quern.guideRadius);
    const ruled = fly({ ...bare, guideX: quern.cgX + behind });
    expect(Math.abs(ruled.sideslip)).toBeLessThan(0.1 * degree);
    expect(fly({ ...bare, guideX: quern.cgX + behind + 0.01 }).sideslip).toBeGreaterThan(0.5 * degree);
  });

  it('hangs level with the tip weight that carries half the lines: y_cg = y_L + (F_down a + Q)/L', () => {
    // Derived for small terms: the torque of the usual propeller lifts the outboard wing, so it adds to the tip weight
    // wanted.
    const x = fly();
    const a = quern.cgY - quern.guideY;
    const wanted = quern.liftStation + (x.linePress * a + 0.25) / x.lift;
    const level = fly({ cgY: wanted, guideY: quern.guideY + wanted - quern.cgY });
    expect(Math.abs(level.outboardLow)).toBeLessThan(0.2 * degree);
  });

  it('says too little thrust where no speed has enough of it, however slack the lines would be', () => {
    const x = newSolution();
    // The lines hang below 7.2 m/s, and there is not even enough thrust for the least drag of all speeds.
    for (const [thrust, loss] of [
      [1.5, 0.3],
      [0.5, 0.1],
    ] as const) {
      solveFlight({ ...quern, ...straightCurves(thrust, loss, 0.2, 1000), height: 0 }, room, x);
      expect(x.status).toBe('too little thrust');
      expect(x.shortfall).toBeCloseTo(1.9, 1);
      expect(x.shortfallSpeed).toBeCloseTo(5, 1);
    }
    // With thrust for it at speeds at which the lines hang, it is the lines.
    const light = { ...quern, mass: 0.15, ...straightCurves(4.5, 0.3, 0.1, 1000), height: 13 };
    solveFlight(light, room, x);
    expect(x.status).toBe('lines slack');
  });
  it('rolls the other way with the torque reversed, and pitches with the rotor', () => {
    const usual = fly();
    const reversed = fly({ turning: -1 });
    expect(reversed.outboardLow - usual.outboardLow).toBeGreaterThan(1.5 * degree);
    const spun = fly({ rotorInertia: 1e-4 });
    expect(spun.elevator).toBeLessThan(usual.elevator);
    expect(fly({ rotorInertia: 1e-4, spinning: -1 }).elevator).toBeGreaterThan(reversed.elevator);
  });

  it('needs more up elevator with the CG further ahead, and adds up its drag', () => {
    const ahead = fly({ cgX: quern.cgX - 0.01 });
    const x = fly();
    expect(ahead.elevator).toBeGreaterThan(x.elevator);
    for (const each of [x, ahead]) {
      const rows = each.dragWing + each.dragInduced + each.dragTail + each.dragItems + each.dragTrim;
      expect(rows).toBeCloseTo(each.drag, 12);
      expect(each.wingLift + each.tailLift).toBeCloseTo(each.lift, 12);
    }
  });

  it('says that there is too little thrust, by how much and where', () => {
    const x = fly(straightCurves(1.2, 0.03, 0.1, 900));
    expect(x.status).toBe('too little thrust');
    expect(x.shortfall).toBeGreaterThan(0);
    expect(x.shortfallSpeed).toBeGreaterThan(5);
    expect(x.speed).toBeNaN();
    // That much more thrust at that speed is just enough.
    const more = (extra: number) => fly(straightCurves(1.2 + x.shortfall + extra, 0.03, 0.1, 900)).status;
    expect(more(0.01)).not.toBe('too little thrust');
    expect(more(-0.01)).toBe('too little thrust');
  });

  it('says that there is too little thrust where there is none at all', () => {
    const x = fly(straightCurves(-1, 0.03, 0.1, 900));
    expect(x.status).toBe('too little thrust');
    expect(x.shortfall).toBeGreaterThan(1);
    // All places of the scan were looked at, behind the first steps.
    expect(x.method).toBe('scan');
    expect(x.iterations).toBeGreaterThan(20);
  });

  it('says that the lines go slack, and above which speed they are tight', () => {
    // No tip weight, 50° up: the outboard wing rises, the lift leans inward and takes from the pull.
    const untipped = { cgY: -0.01, sideThrust: 0, height: R * Math.sin(50 * degree) };
    const x = fly({ ...untipped, ...straightCurves(4, 0.167, 0.1, 900) });
    expect(x.status).toBe('lines slack');
    expect(x.slackSpeed).toBeGreaterThan(16);
    expect(x.slackSpeed).toBeLessThan(18);
    // A propeller that stops pulling below that speed: the same, found from above in steps of a fiftieth.
    const weak = fly({ ...untipped, ...straightCurves(4, 0.4, 0.1, 900) });
    expect(weak.status).toBe('lines slack');
    expect(Math.abs(weak.slackSpeed - x.slackSpeed)).toBeLessThan(0.3);
    const strong = fly({ ...untipped, ...straightCurves(8, 0.167, 0.1, 900) });
    expect(strong.status).toBe('settled');
    expect(strong.speed).toBeGreaterThan(x.slackSpeed);
  });

  it('says that the wing would have to lift more than it can, and still gives the flight', () => {
    const x = fly({ liftLimit: 0.1 });
    expect(x.status).toBe('beyond lift limit');
    expect(x.speed).toBeCloseTo(fly().speed, 12);
    expect(fly({ liftLimit: 0.14 }).status).toBe('settled');
  });

  it('takes the greatest lift of the section at the airspeed flown', () => {
    const section = { liftLimit: 0.9, sectionSpeed: 20, liftPower: 0.3 };
    expect(liftLimitAt(section, 20)).toBe(0.9);
    expect(liftLimitAt(section, 30)).toBeCloseTo(0.9 * 1.5 ** 0.3, 14);
    expect(liftLimitAt({ ...section, liftPower: 0 }, 30)).toBe(0.9);
  });

  it('says that a height is out of reach', () => {
    expect(fly({ height: R }).status).toBe('out of reach');
    expect(fly({ height: -R * 0.99 }).status).toBe('out of reach');
  });

  it('has three ways to a solution, and each ends balanced on the fast side with tight lines', () => {
    const up = (elevation: number, thrust: number) =>
      fly({
        height: R * Math.sin(elevation * degree),
        inducedFactor: 0.02,
        ...straightCurves(thrust, thrust / 16, 0.02, 900),
      });
    const ways = { newton: fly(), march: up(62, 1.8), scan: up(70, 1.2) };
    for (const [way, x] of Object.entries(ways)) {
      expect(x.method).toBe(way);
      expect(x.status).toBe(way === 'scan' ? 'beyond lift limit' : 'settled');
      expect(x.residual).toBeLessThan(1e-9);
      expect(x.slope).toBeLessThan(0);
      expect(x.determinant).toBeGreaterThan(0);
      expect(x.pullRadial).toBeGreaterThan(0);
    }
  });

  it('takes the fast side of the power curve', () => {
    const draggy = { inducedFactor: 0.5, ...straightCurves(6.2, 0.12, 0.1, 900) };
    const x = fly(draggy);
    expect(x.status).toBe('settled');
    expect(x.slope).toBeLessThan(0);
    // More thrust makes a model on the fast side faster.
    expect(fly({ ...draggy, ...straightCurves(6.3, 0.12, 0.1, 900) }).speed).toBeGreaterThan(x.speed);
  });

  it('refuses what no set-up can be, naming value and limit', () => {
    expect(() => fly({ mass: 0 })).toThrow(new RangeError('mass is 0; it must be greater than 0'));
    expect(() => fly({ guideRadius: -20 })).toThrow(RangeError);
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bladeShapes } from '../../../../engine/library/index';
import {
  newPropellerState,
  type PropellerState,
  preparePropeller,
  propellerState,
  shapedPropeller,
} from '../../../../engine/physics/index';
import {
  bladeAngle,
  DRAG,
  LIFT,
  newAnnulus,
  newAnnulusFlow,
  newSectionFlow,
  sectionAtAngle,
  sectionInFlow,
  setAnnulus,
  solveAnnulus,
} from '../../../../engine/physics/propeller/index';
import { idealEfficiency, leastPower } from '../../../published/ideal-disc';

const AIR = { kinematicViscosity: 1.46e-5, soundSpeed: 340 };
const INCH = 0.0254;
const sport = bladeShapes.find((row) => row.name === 'sport')!;
function state(diameter: number, pitch: number, J: number, rpm: number, rings = 10, shape = sport): PropellerState {
  const out = newPropellerState();
  propellerState(preparePropeller(shapedPropeller(shape, 2, diameter, pitch), rings), J, rpm / 60, AIR, out);
  return out;
}

describe('a propeller by blade elements', () => {
  it('needs no more than ten rings for 1 % of its thrust and power', () => {
    for (const J of [0, 0.3, 0.6]) {
      const [few, many] = [state(9 * INCH, 6 * INCH, J, 12000), state(9 * INCH, 6 * INCH, J, 12000, 80)];
      expect(Math.abs(few.thrust / many.thrust - 1)).toBeLessThan(0.01);
      expect(Math.abs(few.power / many.power - 1)).toBeLessThan(0.01);
    }
  });
  it('never does better than an ideal disc, settles, and has finite coefficients', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...bladeShapes),
        fc.double({ min: 0.08, max: 0.5, noNaN: true }),
        fc.double({ min: 0, max: 1.6, noNaN: true }),
        fc.double({ min: 0, max: 2.5, noNaN: true }),
        fc.double({ min: 1000, max: 40000, noNaN: true }),
        (shape, diameter, pitchRatio, J, rpm) => {
          const found = state(diameter, pitchRatio * diameter, J, rpm, 10, shape);
          expect(found.settled).toBe(true);
          expect(Number.isFinite(found.thrust) && Number.isFinite(found.power)).toBe(true);
          expect(found.residual).toBeLessThan(1e-3);
          if (found.thrust > 0) {
            expect(leastPower(found.thrust, J)).toBeLessThan(found.power);
            if (J > 0.01) expect((J * found.thrust) / found.power).toBeLessThan(idealEfficiency(found.thrust, J));
          }
        },
      ),
      { numRuns: 300 },
    );
  });
  it('pulls less the faster it advances, and windmills far beyond its pitch', () => {
    const thrusts = Array.from({ length: 25 }, (_, k) => state(9 * INCH, 6 * INCH, 0.08 * k, 12000).thrust);
    for (let k = 8; k < thrusts.length; k++) expect(thrusts[k]!).toBeLessThan(thrusts[k - 1]!);
    const wind = state(9 * INCH, 6 * INCH, 1.4, 12000);
    expect(wind.thrust).toBeLessThan(0);
    expect(wind.power).toBeLessThan(0);
  });
  it('stops pulling somewhat beyond its marked pitch', () => {
    expect(state(9 * INCH, 6 * INCH, 1.05 * (6 / 9), 12000).thrust).toBeGreaterThan(0);
    expect(state(9 * INCH, 6 * INCH, 1.5 * (6 / 9), 12000).thrust).toBeLessThan(0);
  });
  it('with no pitch pulls a little at rest, as its section is cambered, and brakes in flight', () => {
    const still = state(9 * INCH, 0, 0, 12000);
    expect(still.thrust).toBeGreaterThan(0);
    expect(still.thrust).toBeLessThan(0.4 * state(9 * INCH, 6 * INCH, 0, 12000).thrust);
    expect(state(9 * INCH, 0, 0.4, 12000).thrust).toBeLessThan(0);
  });
  it('refuses what is no propeller', () => {
    expect(() => state(0, 0.1, 0, 9000)).toThrow('propeller diameter is 0; it must be greater than 0');
    expect(() => state(0.2, 0.1, -0.1, 9000)).toThrow('advance ratio is -0.1; it must be 0 or greater');
    expect(() => state(0.2, 0.1, 0, 0)).toThrow('shaft speed is 0; it must be greater than 0');
  });
});

describe('one ring', () => {
  const prepared = preparePropeller(shapedPropeller(sport, 2, 9 * INCH, 6 * INCH));
  const ring = newAnnulus();
  const flow = newAnnulusFlow();
  it('balances lift and momentum, told independently from speeds', () => {
    setAnnulus(prepared, 6, 0.4, 200, AIR, ring);
    solveAnnulus(ring, flow);
    const added = Math.sqrt(ring.advance ** 2 + ring.radius ** 2 - flow.speed ** 2);
    const axial = added * Math.cos(flow.inflow);
    const loss = (2 / Math.PI) * Math.acos(Math.exp(-ring.tip / Math.sin(flow.inflow)));
    const chord = 2 * Math.PI * ring.radius * ring.solidity;
    const fromBlades = 0.5 * flow.speed ** 2 * chord * flow.lift * Math.cos(flow.inflow);
    const fromMomentum = 2 * Math.PI * ring.radius * loss * (ring.advance + axial) * 2 * axial;
    expect(fromBlades / fromMomentum).toBeCloseTo(1, 3);
  });
  it('settles where the blade meets the flow without lift, and says where it would push the air forward', () => {
    setAnnulus(prepared, 6, 0.4, 200, AIR, ring);
    const undisturbed = Math.atan2(ring.advance, ring.radius);
    for (const off of [-1e-15, 0, 1e-16, 1e-15, 1e-9]) {
      ring.angle = undisturbed + ring.section.zeroLiftAngle + off;
      solveAnnulus(ring, flow);
      expect(flow.status).toBe('settled');
      expect(flow.inflow).toBeCloseTo(undisturbed, 6);
    }
    ring.angle = ring.section.zeroLiftAngle - 0.05;
    solveAnnulus(ring, flow);
    expect(flow.status).toBe('no sign change');
  });
  it('loses nothing at the tip when the blades are many', () => {
    setAnnulus(prepared, 6, 0.4, 200, AIR, ring);
    ring.tip = 1e6;
    solveAnnulus(ring, flow);
    const undisturbed = Math.atan2(ring.advance, ring.radius);
    const whole =
      (4 * Math.sin(flow.inflow) * Math.sin(flow.inflow - undisturbed)) / Math.cos(flow.inflow - undisturbed);
    expect((ring.solidity * flow.lift) / whole).toBeCloseTo(1, 3);
  });
});

describe('the section of the blades', () => {
  const flow = newSectionFlow();
  const out = new Float64Array(2);
  const at = (angle: number, reynolds: number, mach = 0.1): readonly [number, number] => {
    sectionInFlow(reynolds, mach, 0.75, flow);
    sectionAtAngle(flow, angle, out);
    return [out[LIFT]!, out[DRAG]!];
  };
  it('lifts more and drags less at a larger Reynolds number', () => {
    expect(at(0.05, 1e5)[0]).toBeGreaterThan(at(0.05, 3e4)[0]);
    expect(at(0.05, 1e5)[1]).toBeLessThan(at(0.05, 3e4)[1]);
  });
  it('does not run away at the Reynolds numbers of racing engines', () => {
    const [lift, drag] = at(0, 5e5, 0.6);
    expect(lift).toBeGreaterThan(0.4);
    expect(lift).toBeLessThan(0.9);
    expect(drag).toBeGreaterThan(0.008);
  });
  it('stalls: lift falls back and drag leaps', () => {
    expect(at(0.4, 8e4)[0]).toBeLessThan(at(0.2, 8e4)[0]);
    expect(at(0.4, 8e4)[1]).toBeGreaterThan(5 * at(0.1, 8e4)[1]);
  });
  it('gains lift with Mach number as Prandtl and Glauert have it, and drag beyond 0.7', () => {
    expect(at(0.03, 2e5, 0.6)[0] / at(0.03, 2e5, 0)[0]).toBeCloseTo(1 / 0.8, 10);
    expect(at(-0.09, 2e5, 0.9)[1] - at(-0.09, 2e5, 0.7)[1]).toBeCloseTo(20 * 0.2 ** 4, 3);
  });
  it('has the angle of a helix', () => {
    expect(bladeAngle(2 * Math.PI, 1)).toBeCloseTo(Math.PI / 4, 12);
  });
});

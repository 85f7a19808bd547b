import { describe, expect, it } from 'vitest';
import {
  alongLeg,
  energyToYield,
  type GearLeg,
  gearLeg,
  musicWireModuli,
  musicWireStrength,
  sinkSpeedToYield,
  type Vector,
} from '../../../engine/physics/index';

const d = 0.003;
const wire = { diameter: d, ...musicWireModuli(d), between: 0 };
const EI = (wire.young * Math.PI * d ** 4) / 64;
const GJ = (wire.shear * Math.PI * d ** 4) / 32;
const straight: GearLeg = {
  ...wire,
  points: [
    [0, 0, 0],
    [0, 0.12, 0],
  ],
};
const closeTo = (value: number, wanted: number): void => expect(value / wanted).toBeCloseTo(1, 12);

describe('a gear leg', () => {
  it('is a cantilever when it is straight: P L³/(3 E I), 32 P L/(π d³)', () => {
    const leg = gearLeg(straight, [0, 0, 1]);
    closeTo(leg.compliance, 0.12 ** 3 / (3 * EI));
    closeTo(leg.stress, (32 * 0.12) / (Math.PI * d ** 3));
    expect(leg.at).toBe(0);
  });
  it('adds the twist of a bar that stands square to the arm: P a² L/(G J)', () => {
    const [bar, arm] = [0.04, 0.1];
    const leg = gearLeg(
      {
        ...wire,
        points: [
          [0, 0, 0],
          [0, bar, 0],
          [arm, bar, 0],
        ],
      },
      [0, 0, 1],
    );
    closeTo(leg.compliance, (arm ** 3 + bar ** 3) / (3 * EI) + (arm ** 2 * bar) / GJ);
  });
  it('gives nothing along its own length', () => {
    expect(gearLeg(straight, [0, 1, 0])).toEqual({ compliance: 0, stress: 0, at: 0 });
  });
  it('does not care where a straight piece is divided, nor for places that coincide', () => {
    const whole: Vector[] = [
      [0, 0, 0],
      [0.03, 0.04, -0.1],
    ];
    const divided: Vector[] = [
      [0, 0, 0],
      [0.015, 0.02, -0.05],
      [0.015, 0.02, -0.05],
      [0.03, 0.04, -0.1],
    ];
    const [a, b] = [whole, divided].map((points) => gearLeg({ ...wire, points }, [0.2, 0, 1]));
    closeTo(b!.compliance, a!.compliance);
    closeTo(b!.stress, a!.stress);
  });
  it('is mirrored without change', () => {
    const points: Vector[] = [
      [0, 0, 0],
      [0.01, 0.03, -0.02],
      [0.03, 0.08, -0.1],
    ];
    const mirrored = points.map(([x, y, z]): Vector => [x, -y, z]);
    expect(gearLeg({ ...wire, points: mirrored }, [0.3, 0, 1])).toEqual(gearLeg({ ...wire, points }, [0.3, 0, 1]));
  });
  it('of one piece also turns at its strap: M² w/(2 E I)', () => {
    const [held, free] = [0, 0.05].map((between) => gearLeg({ ...straight, between }, [0, 0, 1]));
    closeTo(free!.compliance - held!.compliance, (0.12 ** 2 * 0.05) / (2 * EI));
    expect(free!.stress).toBe(held!.stress);
  });
  it('tells bending, torsion and stress along it, greatest where the answer says', () => {
    const leg: GearLeg = {
      ...wire,
      points: [
        [0, 0, 0],
        [0, 0.04, 0],
        [0.1, 0.04, 0],
      ],
    };
    const line = alongLeg(leg, [0, 0, 5]);
    expect(line.distance).toEqual([0, 0.04, 0.04, 0.14]);
    expect(line.bending.map((moment) => Number(moment.toFixed(12)))).toEqual([0.2, 0, 0.5, 0]);
    expect(line.torsion.map((moment) => Number(Math.abs(moment).toFixed(12)))).toEqual([0.5, 0.5, 0, 0]);
    closeTo(Math.max(...line.stress), 5 * gearLeg(leg, [0, 0, 1]).stress);
  });
  it('takes ½ F²C before it yields, and that much of a landing', () => {
    const leg = gearLeg(straight, [0, 0, 1]);
    const strength = 0.7 * musicWireStrength(d);
    const load = strength / leg.stress;
    const energy = energyToYield(leg, strength);
    closeTo(energy, (load * load * leg.compliance) / 2);
    closeTo((0.8 * sinkSpeedToYield(energy, 2, 0.8) ** 2) / 2, 2 * energy);
  });
  it('refuses what is no leg', () => {
    expect(() => gearLeg({ ...wire, points: [[0, 0, 0]] }, [0, 0, 1])).toThrow(
      'a gear leg has 1 places; it must have at least 2',
    );
    expect(() => gearLeg({ ...straight, diameter: 0 }, [0, 0, 1])).toThrow(
      'wire diameter is 0; it must be greater than 0',
    );
    expect(() => gearLeg(straight, [0, 0, 0])).toThrow('force is 0; it must be greater than 0');
  });
});

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bladeShapes } from '../../../engine/library/index';
import {
  advanceStepOf,
  FUELS,
  fuelFlow,
  motorCurrent,
  motorTorque,
  newPropellerState,
  PROPELLER_KNOTS,
  type PropellerTable,
  powerCoefficientAt,
  preparePropeller,
  propellerMass,
  propellerState,
  shaftSpeedAt,
  shapedPropeller,
  tableThrust,
  tableTorque,
  tabulatePropeller,
  tachometerTorque,
  throttleFor,
  thrustCoefficientAt,
  twoStrokeTorque,
  zeroThrustAdvance,
} from '../../../engine/physics/index';
import { leastPower } from '../../published/ideal-disc';

const INCH = 0.0254;
const RPM = (2 * Math.PI) / 60;
const AIR = { kinematicViscosity: 1.46e-5, soundSpeed: 340.3 };
const RHO = 1.225;
const blade = (diameter: number, pitch: number, shape = 0) =>
  preparePropeller(shapedPropeller(bladeShapes[shape]!, 2, diameter, pitch));
function tableOf(diameter: number, pitch: number, shape = 0): PropellerTable {
  const values = new Float64Array(2 * PROPELLER_KNOTS);
  const table = {
    diameter,
    advanceStep: advanceStepOf(pitch, diameter),
    values,
    thrustAt: 0,
    powerAt: PROPELLER_KNOTS,
    stride: 1,
  };
  expect(tabulatePropeller(blade(diameter, pitch, shape), AIR, table).settled).toBe(true);
  return table;
}

describe('the table of a propeller', () => {
  const state = newPropellerState();
  it('gives what blade elements give between its knots, within 3 % of the greatest', () => {
    for (const [inches, pitch, shape] of [
      [9, 6, 0],
      [10, 4, 1],
      [7, 7, 2],
    ] as const) {
      const [diameter, marked] = [inches * INCH, pitch * INCH];
      const table = tableOf(diameter, marked, shape);
      const still = [thrustCoefficientAt(table, 0, 120), powerCoefficientAt(table, 0, 120)] as const;
      for (const rpm of [5000, 8000, 11000, 14000, 18000]) {
        const tipSpeed = (Math.PI * rpm * diameter) / 60;
        for (let J = 0; J < (1.2 * marked) / diameter; J += 0.037) {
          propellerState(blade(diameter, marked, shape), J, rpm / 60, AIR, state);
          expect(Math.abs(thrustCoefficientAt(table, J, tipSpeed) - state.thrust)).toBeLessThan(0.03 * still[0]);
          expect(Math.abs(powerCoefficientAt(table, J, tipSpeed) - state.power)).toBeLessThan(0.03 * still[1]);
        }
      }
    }
  });
  it('stays below the ideal disc between its knots too', () => {
    for (const shape of bladeShapes.keys()) {
      const table = tableOf(9 * INCH, 6 * INCH, shape);
      for (let tip = 30; tip < 300; tip += 17) {
        for (let J = 0; J < 1.1; J += 0.013) {
          const thrust = thrustCoefficientAt(table, J, tip);
          if (thrust > 0) expect(powerCoefficientAt(table, J, tip)).toBeGreaterThan(leastPower(thrust, J));
        }
      }
    }
  });
  it('means thrust and torque by their definitions', () => {
    const table = tableOf(9 * INCH, 6 * INCH);
    const [n, V] = [200, 20];
    const [J, tip] = [V / (n * 9 * INCH), Math.PI * n * 9 * INCH];
    const thrust = thrustCoefficientAt(table, J, tip) * RHO * n ** 2 * (9 * INCH) ** 4;
    const power = powerCoefficientAt(table, J, tip) * RHO * n ** 3 * (9 * INCH) ** 5;
    expect(tableThrust(table, RHO, V, 2 * Math.PI * n)).toBeCloseTo(thrust, 12);
    expect(tableTorque(table, RHO, V, 2 * Math.PI * n) * 2 * Math.PI * n).toBeCloseTo(power, 9);
  });
  it('has its zero thrust where thrust changes its sign', () => {
    const table = tableOf(9 * INCH, 6 * INCH);
    const zero = zeroThrustAdvance(table, 140);
    expect(Math.abs(thrustCoefficientAt(table, zero, 140))).toBeLessThan(1e-6);
    expect(zero).toBeGreaterThan(6 / 9);
  });
});

describe('torque of a two-stroke', () => {
  const points = { peakTorque: 0.25, torqueSpeed: 9500 * RPM, peakPower: 300, powerSpeed: 13500 * RPM };
  const torque = twoStrokeTorque(points);
  it('goes through both peaks, with a peak of torque and of power there', () => {
    expect(torque(points.torqueSpeed)).toBeCloseTo(0.25, 12);
    expect(torque(points.powerSpeed) * points.powerSpeed).toBeCloseTo(300, 9);
    for (let rpm = 3000; rpm < 24000; rpm += 100) {
      expect(torque(rpm * RPM)).toBeLessThanOrEqual(0.25 + 1e-12);
      expect(torque(rpm * RPM) * rpm * RPM).toBeLessThanOrEqual(300 + 1e-9);
    }
    expect(torque(2 * points.powerSpeed)).toBeCloseTo(0, 12);
  });
  it('leaves seven tenths of its peak at rest, by a parabola with its top at the peak', () => {
    expect(torque(0)).toBeCloseTo(0.7 * 0.25, 14);
    expect(torque(points.torqueSpeed / 2)).toBeCloseTo((1 - 0.3 / 4) * 0.25, 14);
  });
  it('is a cubic between the peaks', () => {
    // Half way, Hermite's cubic has the mean of both values and an eighth of the difference of their slopes times the distance.
    const [low, high] = [points.torqueSpeed, points.powerSpeed];
    const end = 300 / high;
    expect(torque((low + high) / 2)).toBeCloseTo((0.25 + end) / 2 + ((high - low) * (end / high)) / 8, 14);
  });
  it('is smooth across the peaks', () => {
    for (const at of [points.torqueSpeed, points.powerSpeed]) {
      const [before, after] = [torque(at) - torque(at - 0.01), torque(at + 0.01) - torque(at)];
      expect(Math.abs(after - before)).toBeLessThan(1e-7);
    }
  });
  it('refuses peaks that do not go together', () => {
    expect(() => twoStrokeTorque({ ...points, powerSpeed: 900 })).toThrow(
      /speed of peak power is 900; it must be above/,
    );
    expect(() => twoStrokeTorque({ ...points, peakPower: 400 })).toThrow(/it must not be above the peak, 0.25/);
  });
});

describe('torque by tachometer', () => {
  it('goes through its readings; with one, power has its peak there', () => {
    const one = tachometerTorque({ shaftSpeed: 1000, torque: 0.2 });
    expect(one(1000)).toBe(0.2);
    expect(one(1001) * 1001).toBeLessThan(200);
    expect(one(999) * 999).toBeLessThan(200);
    const two = tachometerTorque({ shaftSpeed: 1000, torque: 0.2 }, { shaftSpeed: 1200, torque: 0.15 });
    expect(two(1000)).toBe(0.2);
    expect(two(1200)).toBeCloseTo(0.15, 14);
    expect(two(1100)).toBeCloseTo(0.175, 14);
  });
});

describe('an electric motor', () => {
  const motor = { speedPerVolt: 100, resistance: 0.06, idleCurrent: 1, voltage: 15, packResistance: 0.03 };
  it('idles at its idle current, and at rest has only its resistance against it', () => {
    const idle = 100 * (15 - 0.09);
    expect(motorTorque(motor, idle)).toBeCloseTo(0, 12);
    expect(motorCurrent(motor, motorTorque(motor, idle))).toBeCloseTo(1, 12);
    expect(motorCurrent(motor, motorTorque(motor, 0))).toBeCloseTo(15 / 0.09, 9);
  });
  it('needs full throttle at its own torque, and less for less; power balances', () => {
    for (const speed of [600, 900, 1200]) {
      const torque = motorTorque(motor, speed);
      expect(throttleFor(motor, speed, torque)).toBeCloseTo(1, 9);
      const part = throttleFor(motor, speed, 0.5 * torque);
      expect(part).toBeLessThan(1);
      const current = motorCurrent(motor, 0.5 * torque);
      const drawn = part * current;
      const given = drawn * (motor.voltage - drawn * motor.packResistance);
      expect(given).toBeCloseTo(current ** 2 * motor.resistance + (current * speed) / motor.speedPerVolt, 9);
    }
  });
  it('can need more than there is', () => {
    expect(throttleFor(motor, 1400, 2 * motorTorque(motor, 1400))).toBeGreaterThan(1);
    expect(throttleFor(motor, 1400, 5)).toBeNaN();
    expect(throttleFor({ ...motor, packResistance: 0 }, 1400, 0)).toBeCloseTo((0.06 + 14) / 15, 12);
  });
});

describe('engine and propeller', () => {
  it('balance, whatever their size, and settle', () => {
    const table = tableOf(9 * INCH, 6 * INCH);
    fc.assert(
      fc.property(
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 100, noNaN: true }),
        (top, airspeed) => {
          const torque = tachometerTorque({ shaftSpeed: 1200, torque: top });
          const root = shaftSpeedAt(torque, table, RHO, airspeed, 6 * INCH, 300, 5000);
          expect(root.status).toBe('settled');
          expect(torque(root.value)).toBeCloseTo(tableTorque(table, RHO, airspeed, root.value), 4);
        },
      ),
      { numRuns: 200 },
    );
  });
  it('have no answer where the propeller asks too much at the slowest running', () => {
    const table = tableOf(16 * INCH, 12 * INCH);
    const torque = tachometerTorque({ shaftSpeed: 1200, torque: 0.05 });
    expect(shaftSpeedAt(torque, table, RHO, 0, 12 * INCH, 500, 5000).status).toBe('no sign change');
  });
});

it('a moulded 9×6 weighs and turns as such propellers do: 10 to 25 g', () => {
  const { mass, inertia } = propellerMass(blade(9 * INCH, 6 * INCH, 1), 1350);
  expect(mass).toBeGreaterThan(0.01);
  expect(mass).toBeLessThan(0.025);
  expect(inertia / (mass * (9 * INCH) ** 2)).toBeGreaterThan(0.02);
  expect(inertia / (mass * (9 * INCH) ** 2)).toBeLessThan(1 / 12);
});

it('fuel flow is consumption times power over density, and none where the air drives the engine', () => {
  const { consumption, density } = FUELS.glow;
  expect(fuelFlow(300, consumption, density) * 3600 * density).toBeCloseTo(0.3 * 3, 12);
  expect(fuelFlow(-50, consumption, density)).toBe(0);
});

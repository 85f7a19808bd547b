import { describe, expect, it } from 'vitest';
import {
  lapPower,
  lineDrag,
  newFlightRoom,
  newSolution,
  propellerInertia,
  solveFlight,
  staticTorque,
  stillThrust,
  type TimedLap,
  thrustAtPower,
  thrustLaw,
  thrustOfLap,
  zeroThrustSpeed,
} from '../../../engine/physics/index';
import { quern } from './flight/quern';

const room = newFlightRoom();

describe('thrust law', () => {
  it('goes through the pull at rest and the speed of zero thrust', () => {
    expect(thrustLaw(8, 8 / 0.17, 0)).toBe(8);
    expect(thrustLaw(8, 8 / 0.17, 24.66)).toBeCloseTo(8 - 0.17 * 24.66, 12);
    expect(thrustLaw(8, 40, 40)).toBe(0);
    expect(thrustLaw(8, 40, 60)).toBe(-4);
  });

  it('takes 1.15 × rpm × pitch for the speed of zero thrust', () => {
    expect(zeroThrustSpeed(200 * 2 * Math.PI, 0.1524)).toBeCloseTo(1.15 * 200 * 0.1524, 10);
  });

  it('guesses the torque at rest from twice the power of an ideal disc', () => {
    const disc = (Math.PI / 4) * (9 * 0.0254) ** 2;
    const ideal = 8 * Math.sqrt(8 / (2 * 1.225 * disc));
    expect(staticTorque(8, 9 * 0.0254, 1.225, 1680) * 1680).toBeCloseTo(2 * ideal, 10);
    expect(staticTorque(8, 9 * 0.0254, 1.225, 1680)).toBeLessThan(0.25);
  });
  it('guesses the inertia of a 9 in propeller of 20 g as that of a bar that tapers to a fifth', () => {
    const [diameter, mass] = [9 * 0.0254, 0.02];
    // ∫ (1 − 0.8 x) x² dx/∫ (1 − 0.8 x) dx over half of the length.
    const share = (1 / 3 - 0.8 / 4) / (1 - 0.8 / 2) / 4;
    expect(Math.abs(propellerInertia(diameter) / (share * mass * diameter ** 2) - 1)).toBeLessThan(0.02);
  });

  it('refuses negative pull', () => {
    expect(() => thrustLaw(-1, 40, 0)).toThrow(new RangeError('static thrust is -1; it must be 0 or greater'));
  });
});

const lines = {
  count: quern.lineCount,
  diameter: quern.lineDiameter,
  handleReach: quern.handleReach,
  guideRadius: quern.guideRadius,
  dragCoefficient: quern.lineDragCoefficient,
  dragFactor: 1,
  kinematicViscosity: quern.kinematicViscosity,
  density: quern.density,
};
const flown = newSolution();
solveFlight(quern, room, flown);
const lap: TimedLap = {
  lapTime: (2 * Math.PI * flown.radius * Math.cos(flown.elevation)) / flown.speed,
  mass: quern.mass,
  gravity: quern.gravity,
  radius: flown.radius,
  height: quern.height,
  lines,
  lineLinearMass: quern.lineLinearMass,
  dragArea: quern.dragArea + quern.wingArea * quern.profileDrag,
  wingArea: quern.wingArea,
  inducedFactor: quern.inducedFactor,
  propellerDiameter: 9 * 0.0254,
};

describe('power of a timed lap', () => {
  it('finds speed and thrust of a flight from its lap time, side force and trim left out', () => {
    const found = lapPower(lap);
    expect(found.speed).toBeCloseTo(flown.speed, 10);
    expect(found.thrust / flown.thrust).toBeGreaterThan(0.98);
    expect(found.thrust / flown.thrust).toBeLessThan(1.02);
    expect(found.usefulPower).toBe(found.thrust * found.speed);
    expect(found.idealPower).toBeGreaterThan(found.usefulPower);
  });

  it('is the energy of drag and lines', () => {
    const found = lapPower(lap);
    const q = 0.5 * 1.225 * found.speed ** 2;
    const rate = found.speed / lap.radius;
    const drag = q * lap.dragArea + (lap.inducedFactor * flown.lift ** 2) / (q * lap.wingArea);
    expect(found.usefulPower / (drag * found.speed + lineDrag(lines, rate) * 18.9 * rate)).toBeCloseTo(1, 2);
  });

  it('gives the lap back: thrust at that speed from the power held', () => {
    const found = lapPower(lap);
    expect(thrustAtPower(found.idealPower, found.speed, 1.225, lap.propellerDiameter)).toBeCloseTo(found.thrust, 12);
  });

  it('flies the timed lap again within half a per cent when the power is held', () => {
    const power = lapPower(lap).idealPower;
    const curves = Float64Array.from(quern.curves, (value, k) =>
      k < 21 ? thrustAtPower(power, 5 * k, 1.225, lap.propellerDiameter) : value,
    );
    const again = newSolution();
    solveFlight({ ...quern, curves }, room, again);
    expect(again.status).toBe('settled');
    expect(Math.abs(again.speed / flown.speed - 1)).toBeLessThan(0.005);
  });

  it('takes more power for a shorter lap, a heavier model and thicker lines', () => {
    const power = (changes: Partial<TimedLap>) => lapPower({ ...lap, ...changes }).usefulPower;
    expect(power({ lapTime: lap.lapTime * 0.95 })).toBeGreaterThan(1.1 * power({}));
    expect(power({ mass: 1 })).toBeGreaterThan(power({}));
    expect(power({ lines: { ...lines, diameter: 0.00046 } })).toBeGreaterThan(power({}));
  });

  it('refuses a height beyond the lines', () => {
    expect(() => lapPower({ ...lap, height: 20 })).toThrow(
      new RangeError(`height is 20; it must be less than the radius ${lap.radius}`),
    );
  });
});

describe('thrust of a timed lap', () => {
  const [D, lapSpeed, power] = [0.2, 40, 400];
  const ideal = (V: number): number => thrustAtPower(power, V, 1.2, D);
  const at = (V: number, still: number): number => thrustOfLap(power, V, 1.2, D, { lapSpeed, still });
  it('is what the torque gives at rest until an ideal propeller pulls less, and that of the ideal one in the lap and beyond', () => {
    const still = 1.4 * ideal(lapSpeed);
    expect([at(0, still), at(10, still)]).toEqual([still, still]);
    expect(still).toBeLessThan(ideal(10));
    for (const V of [35, 40, 60]) expect(at(V, still)).toBe(ideal(V));
  });
  it('is never less than in the lap itself', () => {
    expect(at(0, 0.5 * ideal(lapSpeed))).toBe(ideal(lapSpeed));
    expect(at(50, 0.5 * ideal(lapSpeed))).toBe(ideal(50));
  });
  it('goes at rest as a screw of that pitch with a quarter more', () => {
    expect(stillThrust(0.25, 0.1524)).toBeCloseTo((1.26 * 2 * Math.PI * 0.25) / 0.1524, 12);
    expect(() => stillThrust(-1, 0.1)).toThrow('torque is -1; it must be 0 or greater');
    expect(() => stillThrust(0.2, 0)).toThrow('pitch is 0; it must be greater than 0');
  });
});

describe('thrust at constant power', () => {
  const D = 0.23;
  const A = (Math.PI / 4) * D * D;

  it('has the static thrust of momentum theory at rest and P/V at high speed', () => {
    expect(thrustAtPower(100, 0, 1.225, D)).toBeCloseTo(Math.cbrt(2 * 1.225 * A * 100 ** 2), 12);
    expect(thrustAtPower(100, 1000, 1.225, D) * 1000).toBeCloseTo(100, 3);
    expect(thrustAtPower(0, 10, 1.225, D)).toBe(0);
  });

  it('falls smoothly with speed and satisfies its equation', () => {
    let before = Number.POSITIVE_INFINITY;
    for (let V = 0; V <= 100; V += 0.5) {
      const T = thrustAtPower(100, V, 1.225, D);
      expect(T).toBeLessThan(before);
      const w = -V / 2 + Math.sqrt((V * V) / 4 + T / (2 * 1.225 * A));
      expect(T * (V + w)).toBeCloseTo(100, 9);
      before = T;
    }
  });
});

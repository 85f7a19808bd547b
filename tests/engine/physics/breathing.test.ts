import { describe, expect, it } from 'vitest';
import {
  chargeShare,
  dryAirDensity,
  dryPart,
  levelDragArea,
  moistAirDensity,
  motorTorque,
  nearPower,
  PACK_EXPONENT,
  propellerShare,
  saturationPressure,
  shaftShare,
  speedOfLap,
} from '../../../engine/physics/index';

describe('charge of an engine', () => {
  it('is the dry air in the volume, to its power', () => {
    expect(chargeShare(1.1, 1.2, 0.98, 0.99, 1)).toBeCloseTo((1.1 * 0.98) / (1.2 * 0.99), 15);
    expect(chargeShare(1.1, 1.2, 1, 1, 1.2)).toBeCloseTo((1.1 / 1.2) ** 1.2, 15);
    for (const exponent of [0, 0.5, 1, 1.2]) expect(chargeShare(1.1337, 1.1337, 0.9825, 0.9825, exponent)).toBe(1);
  });
  it('refuses air that is none', () => {
    expect(() => chargeShare(0, 1.2, 1, 1, 1)).toThrow('air density is 0; it must be greater than 0');
    expect(() => chargeShare(1.2, -1, 1, 1, 1)).toThrow('air density known is -1; it must be greater than 0');
    expect(() => chargeShare(1.2, 1.2, 0, 1, 1)).toThrow('dry part is 0; it must be greater than 0');
    expect(() => chargeShare(1.2, 1.2, 1, 0, 1)).toThrow('dry part known is 0; it must be greater than 0');
    expect(() => chargeShare(1.2, 1.2, 1, 1, -1)).toThrow('exponent is -1; it must be 0 or greater');
  });
  it('holds dry air at its part of the pressure', () => {
    for (const [pressure, temperature, humidity] of [
      [101325, 308.15, 1],
      [84556, 288.15, 0.6],
      [101325, 268.15, 0.9],
    ] as const) {
      const density = moistAirDensity(pressure, temperature, humidity);
      const dry = dryAirDensity(pressure - humidity * saturationPressure(temperature), temperature);
      // Air as an ideal gas is 0.04 % lighter, vapour without enhancement 0.4 %.
      expect(Math.abs((density * dryPart(density, temperature, humidity)) / dry - 1)).toBeLessThan(7e-4);
    }
    expect(dryPart(1.2, 288.15, 0)).toBe(1);
    // 30.4 g of water in a cubic metre of saturated air at 30 °C (from memory).
    expect(1.15 * (1 - dryPart(1.15, 303.15, 1))).toBeCloseTo(0.0304, 4);
  });
});

describe('a given propeller in other air', () => {
  it('keeps its rpm where power goes with density, and gives the power that it takes', () => {
    expect(shaftShare(1.1 / 1.225, 1.1, 1.225)).toBe(1);
    for (const w of [0.8, 1, 1.1]) {
      const n = shaftShare(w, 1.1, 1.225);
      expect((1.1 / 1.225) * n ** 3).toBeCloseTo(w, 14);
      expect(propellerShare(n, 1.1, 1.225) * n).toBeCloseTo(w, 14);
    }
    expect(() => shaftShare(-1, 1.1, 1.225)).toThrow('share of power is -1; it must be 0 or greater');
    expect(() => propellerShare(-1, 1.1, 1.225)).toThrow('share of rpm is -1; it must be 0 or greater');
  });

  it('on a pack takes the power that the motor gives with a fifth of its idle rpm lost', () => {
    const motor = { speedPerVolt: 100, resistance: 0.06, packResistance: 0.03, idleCurrent: 0, voltage: 12 };
    const idle = motor.speedPerVolt * motor.voltage;
    const load = motorTorque(motor, 0.8 * idle) / (0.8 * idle) ** 2;
    const power = (density: number): number => {
      let [low, high] = [0, idle];
      for (let k = 0; k < 60; k++) {
        const speed = (low + high) / 2;
        if (motorTorque(motor, speed) > density * load * speed * speed) low = speed;
        else high = speed;
      }
      return low * motorTorque(motor, low);
    };
    const exponent = Math.log(power(1.001) / power(0.999)) / Math.log(1.001 / 0.999);
    expect(exponent).toBeCloseTo(PACK_EXPONENT, 5);
  });
});

describe('drag area of a level lap', () => {
  const wing = { area: 0.22, profileDrag: 0.012, sectionSpeed: 20, dragPower: -0.3, dragSlope: 0.002 };
  it('is that of the wing at the speed of the lap, with what its camber makes of the weight, and of the rest', () => {
    const speed = speedOfLap(19, 1.5, 4.9);
    expect(speed).toBeCloseTo((2 * Math.PI * 19 * Math.cos(Math.asin(1.5 / 19))) / 4.9, 12);
    const lift = (2 * 8.3) / (1.2 * speed ** 2 * 0.22);
    const expected = 0.22 * (0.012 * nearPower(speed, 20, -0.3) + 0.002 * lift) + 0.004;
    expect(levelDragArea(wing, 0.004, speed, 8.3, 1.2)).toBeCloseTo(expected, 14);
  });
  it('refuses a lap without time and air without density', () => {
    expect(() => speedOfLap(19, 1.5, 0)).toThrow('lap time is 0; it must be greater than 0');
    expect(() => levelDragArea(wing, 0.004, 20, 8.3, 0)).toThrow('air density is 0; it must be greater than 0');
  });
});

import { describe, expect, it } from 'vitest';
import {
  dryAirDensity,
  geopotentialHeight,
  moistAirDensity,
  saturationPressure,
  standardPressure,
  standardTemperature,
  viscosityOfAir,
} from '../../../engine/physics/index';

describe('the standard atmosphere', () => {
  it('is in hydrostatic balance: dp/dh = −ρ g', () => {
    for (const h of [-500, 0, 800, 2500, 6000]) {
      const slope = (standardPressure(h + 1) - standardPressure(h - 1)) / 2;
      expect(slope / (-dryAirDensity(standardPressure(h), standardTemperature(h)) * 9.80665)).toBeCloseTo(1, 7);
    }
  });
  it('is refused outside the troposphere', () => {
    expect(() => standardPressure(20000)).toThrow(
      new RangeError('geopotential height is 20000; it must lie from -1000 to 11000'),
    );
  });
  it('has a geopotential height a little below the elevation, and the same at sea level', () => {
    expect(geopotentialHeight(0)).toBe(0);
    expect(geopotentialHeight(2000)).toBeCloseTo(2000 - 2000 ** 2 / 6356766, 3);
  });
});

describe('moist air', () => {
  it('without moisture is within 0.08 % of the ideal gas', () => {
    for (const t of [263.15, 288.15, 303.15]) {
      expect(moistAirDensity(101325, t, 0) / dryAirDensity(101325, t) - 1).toBeGreaterThan(0);
      expect(moistAirDensity(101325, t, 0) / dryAirDensity(101325, t) - 1).toBeLessThan(8e-4);
    }
  });
  it('is lighter the moister it is, by 0.378 of the vapour pressure', () => {
    const [dry, wet] = [moistAirDensity(101325, 293.15, 0), moistAirDensity(101325, 293.15, 1)];
    expect((dry - wet) / dry).toBeCloseTo((0.378 * saturationPressure(293.15)) / 101325, 4);
  });
  it('boils where saturation pressure is near one atmosphere', () => {
    expect(saturationPressure(373.15) / 101325).toBeCloseTo(1, 2);
  });
  it('refuses a humidity beyond 1, and air that is not on earth', () => {
    expect(() => moistAirDensity(101325, 288, 50)).toThrow(
      new RangeError('relative humidity is 50; it must lie from 0 to 1'),
    );
    expect(() => moistAirDensity(1013, 288, 0.5)).toThrow(
      new RangeError('pressure is 1013; it must lie from 30000 to 120000'),
    );
  });
});

describe('viscosity of air', () => {
  it('grows with temperature, between its square root and its 1.5th power', () => {
    const ratio = viscosityOfAir(310) / viscosityOfAir(280);
    expect(ratio).toBeGreaterThan((310 / 280) ** 0.5);
    expect(ratio).toBeLessThan((310 / 280) ** 1.5);
  });
});

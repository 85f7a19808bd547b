import { expect, test } from 'vitest';
import { STATIC_SCREW, stillThrust } from '../../engine/physics/index';
import { measuredPropellers } from './propeller-rows';

/* UIUC Propeller Database, volume 1, as in propeller_static.csv, with a pitch marked on them: C_T and C_P at rest; P p/(2π Q) = (C_T/C_P) (p/D). */
const ratios = measuredPropellers
  .filter(({ name, still }) => still.length > 0 && !name.startsWith('NR640'))
  .map(({ name, still, pitch, diameter }) => {
    const states = still.map(({ rpm, CT, CP }) => {
      const turns = rpm / 60;
      const torque = (CP * 1.2 * turns ** 2 * diameter ** 5) / (2 * Math.PI);
      return (CT * 1.2 * turns ** 2 * diameter ** 4) / stillThrust(torque, pitch);
    });
    return { name, over: states.reduce((sum, x) => sum + x, 0) / states.length };
  });

test('thrust at rest over that of the screw is the mean of the measured propellers', () => {
  expect(ratios.length).toBe(12);
  expect(ratios.reduce((sum, { over }) => sum + over, 0) / ratios.length).toBeCloseTo(1, 2);
  for (const { name, over } of ratios) {
    expect(over * STATIC_SCREW, name).toBeGreaterThan(1);
    expect(over * STATIC_SCREW, name).toBeLessThan(1.58);
  }
});

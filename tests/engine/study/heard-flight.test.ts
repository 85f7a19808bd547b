import { expect, test } from 'vitest';
import type { Heard } from '../../../engine/physics/index';
import { heardFlight } from '../../../engine/study/listening/flight';

const heard: Heard = {
  turns: { value: 180, error: 0.1 },
  laps: [],
  lap: { value: 5, error: 0.01 },
  mach: { value: 0.07, error: 0.0007 },
  track: { times: new Float64Array(0), heard: new Float64Array(0), fitted: new Float64Array(0) },
};

test('speed and radius come from the swing, the lap and the air', () => {
  // ISO 2533: speed of sound 340.294 m/s at sea level.
  const standard = heardFlight(heard, {});
  expect(standard.speed!.value).toBeCloseTo(0.07 * 340.294, 3);
  expect(standard.radius!.value).toBeCloseTo((0.07 * 340.294 * 5) / (2 * Math.PI), 3);
  expect(standard.radius!.error / standard.radius!.value).toBeCloseTo(Math.hypot(0.01, 0.002), 9);
  const thin = heardFlight(heard, { air: { pressure: 101_325, density: 1.1 } });
  expect(thin.speed!.value).toBeCloseTo(0.07 * Math.sqrt((1.4 * 101_325) / 1.1), 9);
});

test('nothing of it where no lap is told', () => {
  expect(heardFlight({ ...heard, lap: 'unsure' }, {}).speed).toBeUndefined();
  expect(heardFlight({ ...heard, mach: undefined }, {}).radius).toBeUndefined();
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { heardShift } from '../../../../engine/physics/listening/circle-shift';
import { cases } from '../../../cases';

const TURN = 2 * Math.PI;

/** Two wave crests a moment apart, each followed through the air by itself: how much closer they come in than they were given off. */
function byCrests(theta: number, radius: number, distance: number, speed: number, sound: number) {
  const lap = (TURN * radius) / speed;
  const heardAt = (angle: number): number =>
    (angle * lap) / TURN + Math.hypot(distance - radius * Math.cos(angle), radius * Math.sin(angle)) / sound;
  const step = 1e-5;
  const shift = (2 * step * lap) / TURN / (heardAt(theta + step) - heardAt(theta - step));
  return { shift, psi: (TURN * (heardAt(theta) - heardAt(0))) / lap };
}

test('the pitch heard is that of crests followed through the air one by one', () => {
  const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
  fc.assert(
    fc.property(
      fc.record({
        theta: real(-3, 3),
        radius: real(10, 20),
        out: real(1.1, 5),
        speed: real(10, 85),
        sound: real(320, 350),
      }),
      ({ theta, radius, out, speed, sound }) => {
        const { shift, psi } = byCrests(theta, radius, out * radius, speed, sound);
        expect(heardShift(psi, { mach: speed / sound, ratio: 1 / out })).toBeCloseTo(shift, 7);
      },
    ),
    { numRuns: cases(200), seed: 14 },
  );
});

// C. Doppler's principle for a source that comes straight on: f₀/(1 − v/c), and f₀/(1 + v/c) going straight away. Standard result.
test('from outside the circle the model comes straight on once a lap, and goes straight away once', () => {
  const all = Array.from({ length: 4000 }, (_, k) =>
    heardShift((TURN * k) / 4000 - Math.PI, { mach: 0.1, ratio: 0.6 }),
  );
  expect(Math.max(...all)).toBeCloseTo(1 / 0.9, 6);
  expect(Math.min(...all)).toBeCloseTo(1 / 1.1, 6);
});

test('as many periods come in during a lap as are given off', () => {
  const all = Array.from({ length: 4000 }, (_, k) =>
    heardShift((TURN * k) / 4000 - Math.PI, { mach: 0.2, ratio: 0.8 }),
  );
  expect(all.reduce((sum, shift) => sum + shift, 0) / all.length).toBeCloseTo(1, 9);
});

test.each([
  [{ mach: 0.95, ratio: 0.5 }, 'speed over that of sound is 0.95; it must lie from 0 to 0.9'],
  [{ mach: 0.1, ratio: 1 }, 'radius over distance is 1; it must lie from 0.001 to 0.999'],
])('an impossible circle is refused: %o', (circle, message) => {
  expect(() => heardShift(0, circle)).toThrow(new RangeError(message));
});

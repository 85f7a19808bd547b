import { expect, it } from 'vitest';
import { cableLever, cablePulled, turnToPull } from '../../../../engine/physics/index';

const cable = { arm: 0.03, length: 0.15, angle: Math.PI / 2 };

it('pulls nothing at rest, by its whole arm at first, and by its lever arm everywhere', () => {
  expect(cablePulled(cable, 0)).toBeCloseTo(0, 15);
  expect(cableLever(cable, 0)).toBeCloseTo(0.03, 15);
  for (const turn of [0.2, 0.7]) {
    const slope = (cablePulled(cable, turn + 1e-6) - cablePulled(cable, turn - 1e-6)) / 2e-6;
    expect(cableLever(cable, turn)).toBeCloseTo(slope, 9);
  }
});
it('of a very long cable is arm × sine of the turn', () => {
  expect(cablePulled({ ...cable, length: 1e5 }, 0.6)).toBeCloseTo(0.03 * Math.sin(0.6), 7);
});
it('comes back from the pull to the turn, and says where none pulls so far', () => {
  for (const turn of [0.1, 0.5, 0.9]) expect(turnToPull(cable, cablePulled(cable, turn))).toBeCloseTo(turn, 12);
  expect(turnToPull(cable, 0.07)).toBeNaN();
});

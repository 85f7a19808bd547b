import { describe, expect, it } from 'vitest';
import { greatestStep, mainWheelShare, noseOverRatio, restPitch, standAt } from '../../../engine/physics/index';

const axle = { x: 0.01, z: -0.13 };
const radius = 0.025;

describe('standing on the ground', () => {
  it.each([
    ['tail rest', { x: 0.59, z: -0.04 }],
    ['nose wheel', { x: -0.15, z: -0.15 }],
    ['nose wheel, level', { x: -0.15, z: -0.155 }],
  ])('touches it with main wheels and %s', (_, support) => {
    const pitch = restPitch(axle, radius, support)!;
    expect(Math.abs(pitch)).toBeLessThan(0.4);
    const stand = standAt(axle, radius, pitch);
    expect(stand.height(support)).toBeCloseTo(0, 14);
    expect(stand.height(axle)).toBeCloseTo(radius, 14);
  });
  it('is level where the support is level with the wheels, and nose up where a tail rest is higher', () => {
    expect(restPitch(axle, radius, { x: 0.59, z: -0.155 })).toBeCloseTo(0, 14);
    expect(restPitch(axle, radius, { x: 0.59, z: -0.04 })!).toBeGreaterThan(0.1);
  });
  it('has no answer with the support inside the wheel', () => {
    expect(restPitch(axle, radius, { x: 0.02, z: -0.13 })).toBeUndefined();
  });
  it('shares the weight by the arms', () => {
    expect(mainWheelShare(0.05, 0.5)).toBeCloseTo(0.9, 14);
    expect(mainWheelShare(0, 0.5)).toBe(1);
  });
});

describe('nosing over', () => {
  const base = { mass: 0.85, arm: 0.04, height: 0.15, thrust: 0, thrustHeight: 0.15, thrustAlong: -0.2, pitch: 0 };
  it('without thrust is the arm over the height', () => {
    expect(noseOverRatio(base)).toBeCloseTo(0.04 / 0.15, 14);
  });
  it('is untouched by thrust through the CG, worse with the thrust line above it, better below', () => {
    expect(noseOverRatio({ ...base, thrust: 8 })).toBeCloseTo(0.04 / 0.15, 14);
    expect(noseOverRatio({ ...base, thrust: 8, thrustHeight: 0.17 })).toBeLessThan(0.04 / 0.15);
    expect(noseOverRatio({ ...base, thrust: 8, thrustHeight: 0.13 })).toBeGreaterThan(0.04 / 0.15);
  });
  it('at the limit leaves no moment about the contact', () => {
    const n = { ...base, thrust: 6, thrustHeight: 0.18, pitch: 0.2 };
    const weight = n.mass * 9.80665;
    const drag = noseOverRatio(n) * (weight - n.thrust * Math.sin(n.pitch));
    const acceleration = (n.thrust * Math.cos(n.pitch) - drag) / n.mass;
    // Weight, inertia and thrust about the contact; drag and load pass through it.
    const moment =
      weight * n.arm +
      n.mass * acceleration * n.height -
      n.thrust * Math.cos(n.pitch) * n.thrustHeight -
      n.thrust * Math.sin(n.pitch) * n.thrustAlong;
    expect(moment).toBeCloseTo(0, 12);
  });
  it('climbs a step until the force at its edge passes through the CG', () => {
    const step = greatestStep(radius, 0.04, 0.15);
    const slope = Math.sqrt(2 * radius * step - step * step) / (radius - step);
    expect(slope).toBeCloseTo(0.04 / (0.15 - radius), 12);
    expect(greatestStep(radius, 0, 0.15)).toBe(0);
    expect(greatestStep(radius, 1, 0.02)).toBeCloseTo(radius, 14);
  });
});

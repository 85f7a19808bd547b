import { describe, expect, it } from 'vitest';
import {
  bodyFormFactor,
  frictionDragArea,
  laminarFriction,
  MODEL_TRANSITION,
  plateFriction,
  surfaceFormFactor,
  turbulentFriction,
} from '../../../engine/physics/index';

describe('friction of a flat plate', () => {
  it('is laminar up to the transition, and continuous there', () => {
    expect(plateFriction(1e5, 2e5)).toBe(laminarFriction(1e5));
    expect(plateFriction(2e5 * (1 + 1e-12), 2e5)).toBeCloseTo(laminarFriction(2e5), 12);
  });
  it('lies between the laminar and the turbulent law beyond it, and tends to the turbulent one', () => {
    for (const reynolds of [3e5, 1e6, 5e6]) {
      expect(plateFriction(reynolds, 2e5)).toBeGreaterThan(laminarFriction(reynolds));
      expect(plateFriction(reynolds, 2e5)).toBeLessThan(turbulentFriction(reynolds));
    }
    expect(plateFriction(1e11, 2e5) / turbulentFriction(1e11)).toBeCloseTo(1, 3);
  });
  it('is the local friction added up: the plate of twice the length carries the front half unchanged', () => {
    // Drag over width grows by what the turbulent law adds from Re to 2 Re.
    const drag = (reynolds: number): number => reynolds * plateFriction(reynolds, 2e5);
    const turbulent = (reynolds: number): number => reynolds * turbulentFriction(reynolds);
    expect(drag(8e5) - drag(4e5)).toBeCloseTo(turbulent(8e5) - turbulent(4e5), 9);
  });
  it('refuses still air', () => {
    expect(() => laminarFriction(0)).toThrow(new RangeError('Reynolds number is 0; it must be greater than 0'));
  });
});

describe('form factors', () => {
  it('are 1 for nothing thick, and grow', () => {
    expect(surfaceFormFactor(0)).toBe(1);
    expect(bodyFormFactor(0, 1)).toBe(1);
    expect(surfaceFormFactor(0.12)).toBeCloseTo(1.2524, 4);
    expect(bodyFormFactor(0.2, 1)).toBeCloseTo(1 + 1.5 * 0.2 ** 1.5 + 7 * 0.008, 14);
  });
});

describe('drag area by friction', () => {
  it('is friction × form factor × wetted area', () => {
    const reynolds = (25 * 0.5) / 1.46e-5;
    expect(frictionDragArea(0.1, 0.5, 1.1, 25, 1.46e-5)).toBeCloseTo(
      0.1 * 1.1 * plateFriction(reynolds, MODEL_TRANSITION),
      15,
    );
  });
  it('of no area is nothing, even without length', () => {
    expect(frictionDragArea(0, 0, 1.1, 25, 1.46e-5)).toBe(0);
  });
});

import { describe, expect, it } from 'vitest';
import { integrate } from '../../../engine/numerics/index';
import { cylinderDragCoefficient } from '../../../engine/physics/cylinder-drag';
import {
  lineDrag,
  lineDragAt,
  newLineDragLaw,
  prepareLineDrag,
  type TurningLines,
} from '../../../engine/physics/line-drag';
import { meanCylinderDrag } from '../../../engine/physics/mean-cylinder-drag';

const pair: TurningLines = {
  count: 2,
  diameter: 0.00038,
  handleReach: 0.6,
  guideRadius: 18.9,
  dragCoefficient: 1.15,
  dragFactor: 1,
  kinematicViscosity: 1.46e-5,
  density: 1.225,
};
const omega = 24.66 / 19.425;
const clean = { ...pair, dragCoefficient: Number.NaN };

/** F by plain integration of the formula. */
function plain(lines: TurningLines, rate: number): number {
  const element = (r: number): number => {
    const speed = rate * r;
    const coefficient = Number.isNaN(lines.dragCoefficient)
      ? cylinderDragCoefficient((speed * lines.diameter) / lines.kinematicViscosity)
      : lines.dragCoefficient;
    return 0.5 * lines.density * coefficient * lines.diameter * lines.count * lines.dragFactor * speed * speed * r;
  };
  const middle = (lines.handleReach + lines.guideRadius) / 6;
  return (
    (integrate(element, lines.handleReach, middle, 60) + integrate(element, middle, lines.guideRadius, 60)) /
    lines.guideRadius
  );
}

describe('line drag by moments about the pilot', () => {
  it.each([
    ['one coefficient', pair],
    ['local Reynolds number', clean],
    ['local Reynolds number, single thick line, long reach', { ...clean, count: 1, diameter: 0.0012, handleReach: 2 }],
    ['local Reynolds number from the very axis', { ...clean, handleReach: 1e-6 }],
    ['a factor for vibration', { ...clean, dragFactor: 2.5 }],
  ])('is the integral of its elements: %s', (_, lines) => {
    for (const rate of [0.4, omega, 3]) {
      expect(lineDrag(lines, rate) / plain(lines, rate)).toBeCloseTo(1, 7);
    }
  });

  it('takes 0 for the reach of the hand', () => {
    expect(lineDrag({ ...clean, handleReach: 0 }, omega)).toBeCloseTo(
      lineDrag({ ...clean, handleReach: 1e-7 }, omega),
      9,
    );
  });

  it('is the quarter rule for a line from the very axis with one coefficient', () => {
    const lines = { ...pair, handleReach: 0 };
    const full = 0.5 * 1.225 * (omega * 18.9) ** 2 * 1.15 * 2 * 0.00038 * 18.9;
    expect(lineDrag(lines, omega) / full).toBeCloseTo(1 / 4, 12);
  });

  it('is not the quarter rule when the coefficient falls outward: the slow part of the line counts more', () => {
    const full = 0.5 * 1.225 * (omega * 18.9) ** 2 * 2 * 0.00038 * 18.9;
    const outer = cylinderDragCoefficient((omega * 18.9 * 0.00038) / 1.46e-5);
    expect(lineDrag({ ...clean, handleReach: 0 }, omega)).toBeGreaterThan(1.02 * (full / 4) * outer);
  });

  it.each([pair, clean])('gives the slope with the rate of turn (coefficient %#)', (lines) => {
    const law = newLineDragLaw();
    prepareLineDrag(lines, law);
    const out = new Float64Array(6);
    const at = (rate: number, o: number): void => {
      out[o] = rate;
      lineDragAt(law, out, o);
    };
    for (const rate of [0.2, 0.9, 2.7]) {
      at(rate, 0);
      at(rate * 1.00001, 2);
      at(rate * 0.99999, 4);
      expect(out[1]! / ((out[2]! - out[4]!) / (2e-5 * rate))).toBeCloseTo(1, 6);
    }
  });

  it('refuses what no line can be', () => {
    expect(() => lineDrag({ ...pair, handleReach: 20 }, omega)).toThrow(
      new RangeError('handle reach is 20; it must lie from 0 to 18.9'),
    );
    expect(() => lineDrag({ ...clean, diameter: 0 }, omega)).toThrow(
      new RangeError('line diameter is 0; it must be greater than 0'),
    );
    expect(() => lineDrag(pair, 0)).toThrow(new RangeError('rate of turn is 0; it must be greater than 0'));
  });
});

describe('meanCylinderDrag', () => {
  const out = new Float64Array(2);
  const read = (re: number): [number, number] => {
    meanCylinderDrag(Math.log(re), out, 0);
    return [out[0]!, out[1]!];
  };

  it('is the weighted mean of the coefficient, within 1e-8', () => {
    for (const re of [0.3, 2, 17, 140, 655, 3000, 40000]) {
      // Substituting x = Re u⁴ takes the steep start out of the integrand.
      const mean = integrate((u) => 4 * cylinderDragCoefficient(re * u ** 4) * u ** 15, 0, 1, 120);
      expect(read(re)[0] / mean).toBeCloseTo(1, 7);
    }
  });

  it('has slope C_d − 4 g in ln Re, without steps, and stays where the table ends', () => {
    for (const re of [0.5, 33.3, 655, 1e4]) {
      expect(read(re)[1]).toBeCloseTo(cylinderDragCoefficient(re) - 4 * read(re)[0], 5);
    }
    expect(read(0.01)).toEqual([read(0.1)[0], 0]);
    expect(read(1e9)).toEqual([read(1e8)[0], 0]);
  });
});

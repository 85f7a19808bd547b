import { describe, expect, it } from 'vitest';
import { integrate } from '../../../engine/numerics/index';
import {
  LINE_KINDS,
  LINE_MEASURES,
  lineBreakingLoad,
  lineLinearMass,
  lineMakeup,
  lineStiffness,
  lineStretch,
  linesMass,
  linesPressDown,
  pullAtHandle,
  stretchAngle,
} from '../../../engine/physics/index';

const kind = (name: string) => LINE_KINDS.find((each) => each.name === name)!;

describe('kinds of line', () => {
  it('weighs a strand as seven wires of a third of the diameter', () => {
    const seven = 7 * (Math.PI / 4) * (0.00038 / 3) ** 2 * 8000;
    expect(lineLinearMass(kind('stranded_steel'), 0.00038)).toBeCloseTo(seven, 12);
    // About 0.7 g a metre at 0.38 mm.
    expect(Math.abs(seven / 0.0007 - 1)).toBeLessThan(0.01);
  });

  it('orders the kinds as on the field: solid is strongest and stiffest, braid lightest', () => {
    const [stranded, solid, braid] = LINE_KINDS.map((each) => ({
      mass: lineLinearMass(each, 0.00038),
      stiff: lineStiffness(each, 0.00038),
      strong: lineBreakingLoad(each, 0.00038),
    }));
    expect(solid!.strong).toBeGreaterThan(stranded!.strong);
    expect(solid!.stiff).toBeGreaterThan(stranded!.stiff);
    expect(braid!.mass).toBeLessThan(stranded!.mass / 5);
  });

  it('refuses a line without diameter', () => {
    expect(() => lineLinearMass(kind('solid_steel'), 0)).toThrow(
      new RangeError('line diameter is 0; it must be greater than 0'),
    );
  });
});

describe('make-up of the lines', () => {
  const fittings = { handleCable: 0.1, connectors: 0.03, exposedLeadout: 0.08, guideArm: 0.515, wraps: 0.16 };

  it('comes to the same lines whichever way they are measured', () => {
    const flying = lineMakeup(18.3, 'grip_to_guide', fittings);
    expect(flying.flying).toBe(18.3);
    expect(flying.toCentreline).toBeCloseTo(18.815, 12);
    expect(flying.eyelets).toBeCloseTo(18.09, 12);
    expect(flying.cut).toBeCloseTo(18.25, 12);
    const again = [
      lineMakeup(flying.toCentreline, 'grip_to_centreline', fittings),
      lineMakeup(flying.eyelets, 'eyelet_to_eyelet', fittings),
    ];
    for (const other of again) {
      for (const [name, length] of Object.entries(flying)) {
        expect(other[name as keyof typeof other]).toBeCloseTo(length, 12);
      }
    }
  });

  it('is worth some 3 % of the radius when confused', () => {
    const lengths = LINE_MEASURES.map((measure) => lineMakeup(18.3, measure, fittings).flying);
    const [most, least] = [Math.max(...lengths), Math.min(...lengths)];
    expect((most - least) / 18.9).toBeGreaterThan(0.03);
    expect((most - least) / 18.9).toBeLessThan(0.045);
  });

  it('gives a negative length where the fittings are longer than the lines', () => {
    expect(lineMakeup(0.1, 'grip_to_guide', fittings).eyelets).toBeLessThan(0);
  });
});

describe('loads of the lines', () => {
  it('press on the guide as the moments about the pilot say, hanging still', () => {
    const perLength = 0.0014;
    const hanging = integrate((r) => (perLength * 9.80665 * Math.cos(0.3) * r) / 18.9, 0.6, 18.9, 8);
    const mass = linesMass(2, 0.0007, 18.3);
    expect(mass).toBeCloseTo(perLength * 18.3, 14);
    expect(linesPressDown(mass, 9.80665, 0.3, 0.6, 18.9, 0, 19.4)).toBeCloseTo(hanging, 12);
  });

  it('press by their own centrifugal load within 1 % of the integral, and at 60° that is most of it', () => {
    const [mass, phi, V, R] = [0.0256, Math.PI / 3, 20.5, 19.425];
    const still = linesPressDown(mass, 9.80665, phi, 0.6, 18.9, 0, R);
    const moving = linesPressDown(mass, 9.80665, phi, 0.6, 18.9, V, R) - still;
    const element = (r: number) => ((mass / 18.3) * (V / R) ** 2 * r * Math.tan(phi) * r) / 18.9;
    expect(moving / integrate(element, 0.6, 18.9, 8)).toBeCloseTo(1, 2);
    expect(moving).toBeGreaterThan(3 * still);
  });

  it('pull at the handle by what swings in the lines, less their weight up the slope', () => {
    const swing = integrate((r) => 0.0014 * 1.27 ** 2 * r, 0.6, 18.9, 4);
    expect(pullAtHandle(25, 0.0014, 1.27, 0.6, 18.9, 0.25, 0)).toBeCloseTo(25 + swing, 12);
    expect(pullAtHandle(25, 0.0014, 1.27, 0.6, 18.9, 0.25, Math.PI / 6)).toBeCloseTo(25 + swing - 0.125, 12);
  });

  it('stretch by Hooke and cost handle angle', () => {
    expect(lineStretch(12.7, 18.3, 17000)).toBeCloseTo(0.01367, 5);
    expect(stretchAngle(0.0137, 0.09)).toBeCloseTo(Math.atan(0.0137 / 0.09), 14);
    expect(() => lineStretch(10, 18, 0)).toThrow(new RangeError('line stiffness is 0; it must be greater than 0'));
  });
});

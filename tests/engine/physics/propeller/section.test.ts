import { describe, expect, it } from 'vitest';
import {
  DRAG,
  LIFT,
  newSectionFlow,
  sectionAtAngle,
  sectionInFlow,
} from '../../../../engine/physics/propeller/section';

/* The numbers were fitted once to measured propellers; here they stand again as the reference tells them, put into the equations by hand. */
const flow = newSectionFlow();
const at = (reynolds: number, mach = 0, share = 0.7) => {
  sectionInFlow(reynolds, mach, share, flow);
  return { ...flow };
};

describe('the blade section in its flow', () => {
  it('has at Re 50 000 and low speed the numbers that were fitted', () => {
    expect(at(5e4)).toEqual({ zeroLiftAngle: -0.0706, slope: 5.66, stall: 0.3, drag: 0.0401 });
  });
  it('changes with the decade of Re from a fifth to twice that, and not beyond', () => {
    const decades = Math.log10(1.5);
    expect(at(7.5e4).zeroLiftAngle).toBeCloseTo(-0.0706 - 0.0808 * decades, 14);
    expect(at(7.5e4).stall).toBeCloseTo(0.3 + 0.067 * decades, 14);
    expect(at(1e6).zeroLiftAngle).toBeCloseTo(-0.0706 - 0.0808 * 0.3, 14);
    expect(at(1e6).stall).toBeCloseTo(0.3 + 0.067 * 0.3, 14);
    expect(at(1e3).zeroLiftAngle).toBeCloseTo(-0.0706 + 0.0808 * 0.7, 14);
    expect(at(1e3).stall).toBeCloseTo(0.3 - 0.067 * 0.7, 14);
  });
  it('has a drag that falls with Re to the power 0.6, from 200 000 on 0.2, and no more below 10 000', () => {
    expect(at(1e5).drag).toBeCloseTo(0.0401 * 2 ** -0.6, 14);
    const bend = 0.0401 * 10 ** (-0.6 * 0.6);
    expect(at(5e4 * 10 ** 0.6).drag).toBeCloseTo(bend, 14);
    expect(at(5e4 * 10 ** 1.6).drag).toBeCloseTo(bend * 10 ** -0.2, 14);
    expect(at(1e3).drag).toBeCloseTo(0.0401 * 10 ** (0.6 * 0.7), 14);
    expect(at(0)).toEqual(at(1));
  });
  it('lifts more with the Mach number up to 0.75, and has wave drag from 0.7 on', () => {
    expect(at(5e4, 0.6).slope).toBeCloseTo(5.66 / 0.8, 12);
    expect(at(5e4, 0.9).slope).toBeCloseTo(5.66 / Math.sqrt(1 - 0.75 ** 2), 12);
    expect(at(5e4, 0.7).drag).toBeCloseTo(0.0401, 14);
    expect(at(5e4, 0.9).drag).toBeCloseTo(0.0401 + 20 * 0.2 ** 4, 14);
  });
  it('stalls later inboard of half radius', () => {
    expect(at(5e4, 0, 0.2).stall).toBeCloseTo(0.3 + 0.6 * 0.3, 14);
    expect(at(5e4, 0, 0.5).stall).toBe(0.3);
  });
});

describe('lift and drag of the blade section', () => {
  const out = new Float64Array(2);
  const coefficients = (fromZero: number) => {
    sectionAtAngle(at(5e4), fromZero - 0.0706, out);
    return { lift: out[LIFT]!, drag: out[DRAG]! };
  };
  it('are a sin α cos α and little more than the least drag where the flow holds', () => {
    const { lift, drag } = coefficients(0.05);
    const attached = 1 / (1 + Math.exp((0.05 - 0.3) / 0.049));
    expect(lift).toBeCloseTo(5.66 * ((1 + Math.sqrt(attached)) / 2) ** 2 * Math.sin(0.05) * Math.cos(0.05), 13);
    expect(drag).toBeCloseTo(0.0401 + 0.005 * lift ** 2 + 1.8 * (1 - attached) * Math.sin(0.05) ** 2, 14);
    expect(coefficients(0).lift).toBeCloseTo(0, 14);
  });
  it('have half of the chord attached at the stall', () => {
    const { lift, drag } = coefficients(0.3);
    const K = ((1 + Math.SQRT1_2) / 2) ** 2;
    expect(lift).toBeCloseTo(5.66 * K * Math.sin(0.3) * Math.cos(0.3), 13);
    expect(drag).toBeCloseTo(0.0401 + 0.005 * lift ** 2 + 0.9 * Math.sin(0.3) ** 2, 13);
  });
  it('stall at 0.12 upside down', () => {
    const { lift } = coefficients(-0.12);
    expect(lift).toBeCloseTo(-5.66 * ((1 + Math.SQRT1_2) / 2) ** 2 * Math.sin(0.12) * Math.cos(0.12), 13);
  });
  it('are those of a plate far beyond', () => {
    const { lift, drag } = coefficients(Math.PI / 2);
    expect(lift).toBeCloseTo(0, 13);
    expect(drag).toBeCloseTo(0.0401 + 1.8, 6);
  });
});

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { thrustAtPower } from '../../engine/physics/index';
import { idealEfficiency, leastPower } from './ideal-disc';
import { computedPropeller, computedState, designPoint, errors, nearDesign, SHARES } from './propeller-agreement';
import { measuredPropellers, outlines } from './propeller-rows';

const here = new URL('.', import.meta.url);
const notes = JSON.parse(readFileSync(new URL('propeller_notes.json', here), 'utf8'));
const notUsed: readonly { file: string; row: string; reason: string }[] = JSON.parse(
  readFileSync(new URL('propeller.not-used.json', here), 'utf8'),
);
const rootMeanSquare = (values: readonly number[]): number =>
  Math.sqrt(values.reduce((sum, value) => sum + value * value, 0) / values.length);
const meanOf = (values: readonly number[]): { mean: number; error: number } => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const variance = values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1);
  return { mean, error: Math.sqrt(variance / values.length) };
};
const withChords = measuredPropellers.filter((each) => each.blade.length > 0);

describe('the measured sets', () => {
  it('are all used, or listed with the reason', () => {
    const used = new Set(withChords.map((each) => each.name));
    expect(outlines.filter((name) => !used.has(name)).sort()).toEqual(notUsed.map((each) => each.row).sort());
    for (const { file, reason } of notUsed) {
      expect(file).toBe('propeller_geometry.csv');
      expect(reason).toMatch(/^[A-Z].{20,}\.$/);
    }
  });
  it.each(measuredPropellers)('$name lies below the ideal disc in every row', ({ still, moving }) => {
    for (const { J, CT, CP } of [...still, ...moving]) if (CT > 0) expect(leastPower(CT, J)).toBeLessThan(CP);
  });
});

/*
 * Blade elements against the tunnel (UIUC Propeller Database, as above), nothing fitted to one propeller. What is reached: near
 * best efficiency 11 % in the middle of the sets and 35 % at worst, since the zero-lift angle of real blades lies up to 3° beside
 * the mean one. The reference shows every row.
 */
describe('blade elements', () => {
  const atBest = withChords.map((each) => errors(computedPropeller(each), designPoint(each)));
  const median = (values: readonly number[]): number =>
    [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)]!;
  it('come within 12 % of thrust and power near best efficiency on half of the propellers', () => {
    expect(median(atBest.map((each) => Math.abs(each.thrust)))).toBeLessThan(0.12);
    expect(median(atBest.map((each) => Math.abs(each.power)))).toBeLessThan(0.12);
  });
  it('have no common bias near best efficiency', () => {
    expect(Math.abs(median(atBest.map((each) => each.thrust)))).toBeLessThan(0.03);
    expect(Math.abs(median(atBest.map((each) => each.power)))).toBeLessThan(0.03);
  });
  /*
   * A blade set wrong puts thrust and power wrong together; what they are to each other tells the drag of the section, and scatters by a
   * third as much. The numbers were fitted to all rows at once, which leaves the best efficiency 5 % low and the pull for the power at rest 2 %
   * high in the mean: more than one standard error beside that, and the section has another drag or another stall.
   */
  it('put the best efficiency 5 % too low in the mean, to its standard error of 1.1 %', () => {
    const { mean, error } = meanOf(atBest.map(({ thrust, power }) => (1 + thrust) / (1 + power) - 1));
    expect(error).toBeLessThan(0.012);
    expect(Math.abs(mean + 0.049)).toBeLessThan(error);
  });
  it('put the merit at rest 2 % too high in the mean, to its standard error of 1.9 %', () => {
    const merits = withChords.flatMap((each) =>
      [each.still[0]!, each.still.at(-1)!].map((state) => {
        const { thrust, power } = errors(computedPropeller(each), state);
        return (1 + thrust) ** 1.5 / (1 + power) - 1;
      }),
    );
    const { mean, error } = meanOf(merits);
    expect(error).toBeLessThan(0.02);
    expect(Math.abs(mean - 0.023)).toBeLessThan(error);
  });
  it('spread by 13 % in thrust and 15 % in power over all propellers and three advance ratios', () => {
    const all = withChords.flatMap((each) =>
      SHARES.map((share) => errors(computedPropeller(each), nearDesign(each, share))),
    );
    expect(rootMeanSquare(all.map((each) => each.thrust))).toBeLessThan(0.135);
    expect(rootMeanSquare(all.map((each) => each.power))).toBeLessThan(0.153);
  });
  it.each(measuredPropellers)('$name: thrust at rest rises with rpm as measured, within 14 points', (measured) => {
    const computed = computedPropeller(measured);
    const [slow, fast] = [measured.still[0]!, measured.still.at(-1)!];
    const rise = computedState(computed, fast).thrust / computedState(computed, slow).thrust - 1;
    expect(rise).toBeGreaterThan(0);
    expect(Math.abs(rise - (fast.CT / slow.CT - 1))).toBeLessThan(0.14);
  });
  it('foretell the rise on the blade where it was measured largest', () => {
    const steepest = measuredPropellers.find((each) => each.name === '9x4 thick free-flight')!;
    const [slow, fast] = [steepest.still[0]!, steepest.still.at(-1)!];
    const computed = computedPropeller(steepest);
    expect(fast.CT / slow.CT - 1).toBeCloseTo(0.31, 2);
    expect(computedState(computed, fast).thrust / computedState(computed, slow).thrust - 1).toBeGreaterThan(0.2);
  });
  it('stop pulling where the 9×4 did, within a tenth', () => {
    const { J_zero_thrust_interpolated: measured, rpm } = notes.zero_thrust_point;
    const computed = computedPropeller(measuredPropellers.find((each) => each.name === '9x4 thick free-flight')!);
    const thrust = (J: number): number => computedState(computed, { rpm, J, CT: 0, CP: 0 }).thrust;
    expect(thrust(0.9 * measured)).toBeGreaterThan(0);
    expect(thrust(1.1 * measured)).toBeLessThan(0);
  });
});

describe('momentum', () => {
  it('P. Murugaperumal, Gas Dynamics and Jet Propulsion, example 6.9: mass flow, thrust and power of a disc', () => {
    const { givens, answer } = notes.momentum_theory_examples[0];
    const [speed, jet] = [givens.speed_km_h / 3.6, givens.speed_km_h / 3.6 / givens.jet_speed_ratio_u_over_cj];
    const disc = (Math.PI / 4) * givens.diameter_m ** 2;
    const flow = givens.rho_ratio_or_density * disc * ((speed + jet) / 2);
    const thrust = flow * (jet - speed);
    expect(flow).toBeCloseTo(answer.mass_flow_kg_s, 0);
    expect(thrust / 1000).toBeCloseTo(answer.thrust_kN, 1);
    expect((thrust * speed) / 1000).toBeCloseTo(answer.thrust_power_kW, -1);
    // The same disc from the power that it takes, as the power of a timed lap is held.
    const power = thrust * ((speed + jet) / 2);
    expect(thrustAtPower(power, speed, givens.rho_ratio_or_density, givens.diameter_m) / thrust).toBeCloseTo(1, 12);
  });
  it('R. W. Fox and A. T. McDonald, Introduction to Fluid Mechanics, ch. 10: the coefficients mean what that book means', () => {
    const { givens, answer } = notes.momentum_theory_examples[1];
    const thrust = (givens.propulsive_power_MW * 1e6) / givens.speed_m_s;
    const tip = givens.speed_m_s / givens.J;
    const diameter = Math.sqrt(thrust / (givens.CF * givens.rho_kg_m3 * tip ** 2));
    expect(diameter).toBeCloseTo(answer.diameter_m, 1);
    expect((60 * tip) / diameter).toBeCloseTo(answer.rpm, 1);
    expect(idealEfficiency(givens.CF, givens.J)).toBeGreaterThan(givens.efficiency);
  });
});

import { describe, expect, it } from 'vitest';
import { room } from '../../../engine/blocks/room/index';
import { PAIRS } from '../../../engine/blocks/room/results';
import { drawNothing, type Numbers, runBlock } from './run-block';

const engine: Numbers = { station: -0.13, height: 0, engine_length: 0.06, engine_width: 0.034, bearer_rear: 0.01 };
const body: Numbers = { tank_x: -0.05, tank_z: 0, tank_length: 0.07, tank_height: 0.036 };
const wing: Numbers = { mean_chord: 0.2 };

function at(typed: Numbers = {}, more: Readonly<Record<string, Numbers>> = {}) {
  const { results, why, shapes } = runBlock(room, typed, { engine, body, wing, ...more });
  expect(why).toBeUndefined();
  return { ...results, shapes } as Readonly<Record<string, number>> & { shapes: typeof shapes };
}

describe('room along the body', () => {
  it('lies between backplate and tank, less what needle valve, tube and shutoff need', () => {
    expect(at().engine_tank).toBeCloseTo(0.015, 12);
    expect(at().spare).toBeCloseTo(0.003, 12);
    expect(at({ shutoff_length: 0.01 }).spare).toBeCloseTo(-0.007, 12);
  });

  it('lets the engine move as far as the room that it needs, or as its bearers reach', () => {
    expect(at().rearmost).toBeCloseTo(-0.127, 12);
    expect(at().aft).toBeCloseTo(0.003, 12);
    expect(at({}, { engine: { ...engine, bearer_rear: -0.11 } }).aft).toBeCloseTo(-0.01, 12);
    // Done as told there is just no spare room.
    expect(at({}, { engine: { ...engine, station: at().rearmost! } }).spare).toBeCloseTo(0, 12);
  });

  it('says what stands nearest, in the same place first', () => {
    const near = (typed: Numbers): string => PAIRS[at(typed).least_pair!]!;
    expect(near({})).toBe('engine and tank');
    expect(near({ tank_x: -0.03 })).toBe('tank and wing');
    expect(at({ tank_x: -0.03 }).least_gap).toBeCloseTo(-0.005, 12);
    expect(near({ strap_x: -0.11 })).toBe('engine and strap');
  });

  it('takes what was typed for the tank before what stands in the air', () => {
    expect(at({ tank_length: 0.05 }).engine_tank).toBeCloseTo(0.025, 12);
    // A tank above the engine leaves the bearers alone to say how far aft it goes.
    const above = at({ tank_z: 0.05 });
    expect(above.rearmost).toBeCloseTo(-0.02, 12);
    expect(above.spare).toBeNaN();
    expect(above.engine_tank).toBeGreaterThan(0);
  });

  it('does without tank and strap', () => {
    const bare = at({}, { body: { ...body, tank_length: 0 } });
    expect(bare.engine_tank).toBeNaN();
    expect(bare.tank_strap).toBeNaN();
    expect(bare.rearmost).toBeCloseTo(-0.02, 12);
    expect(PAIRS[bare.least_pair!]).toBe('engine and wing');
  });

  it('draws the engine at its rearmost, the shutoff before the tank, and a strap that is there', () => {
    const parts = (typed: Numbers): string[] => at(typed).shapes.map(({ part }) => part);
    expect(parts({})).toEqual(['engine_rearmost']);
    expect(parts({ shutoff_length: 0.01, strap_x: -0.1 })).toEqual(['engine_rearmost', 'shutoff', 'strap']);
    const [rearmost] = at().shapes;
    expect(Math.max(...rearmost!.points.filter((_, k) => k % 2 === 0))).toBeCloseTo(-0.097, 12);
    expect(drawNothing(room)).toEqual([]);
  });
});

import { describe, expect, it } from 'vitest';
import { newFlightRoom, newSolution, solveFlight } from '../../../../engine/physics/flight/index';
import { designs } from './designs';
import { leftOver } from './world';

const room = newFlightRoom();

describe('solveFlight against a second balance in the axes of the world', () => {
  it.each(Object.entries(designs))('%s', (_, design) => {
    const x = newSolution();
    solveFlight(design.setup, room, x);
    expect(x.status).toBe('settled');
    const left = leftOver(design, x);
    expect(left.force).toBeLessThan(1e-9);
    expect(left.moment).toBeLessThan(1e-9);
    expect(left.lines).toBeLessThan(1e-9);
    expect(left.wing).toBeLessThan(1e-9);
    expect(left.tail).toBeLessThan(1e-9);
  });

  it('holds with the drag of the lines by local Reynolds number, to the width of its table', () => {
    const quern = designs['the Quern 25']!;
    const x = newSolution();
    const setup = { ...quern.setup, lineDragCoefficient: Number.NaN };
    solveFlight(setup, room, x);
    expect(x.status).toBe('settled');
    const left = leftOver({ ...quern, setup }, x);
    expect(left.force).toBeLessThan(1e-9);
    expect(left.lines).toBeLessThan(1e-7);
  });
});

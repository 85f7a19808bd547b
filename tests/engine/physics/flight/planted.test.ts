import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import type * as Flight from '../../../../engine/physics/flight/index';
import { designs } from './designs';
import { leftOver } from './world';

/**
 * Faults planted in copies of the solver: the balance in world axes must see each of them. A check that no fault can
 * turn red would prove nothing.
 */

const source = fileURLToPath(new URL('../../../../engine/physics/flight/', import.meta.url));
const copies = fileURLToPath(new URL(`../../../../.cache/planted-${process.pid}/`, import.meta.url));
afterAll(() => rmSync(copies, { recursive: true, force: true }));

interface Fault {
  readonly file: string;
  readonly from: string;
  readonly to: string;
  /** How often `from` stands in the file. */
  readonly times: number;
}

const faults: Readonly<Record<string, Fault>> = {
  'R in place of R_g in the drag of the lines': { file: 'forces.ts', from: '* s.guideRadius', to: '* R', times: 2 },
  'γ dropped': { file: 'forces.ts', from: '* s.guideRadius - trail * T)', to: '* s.guideRadius)', times: 1 },
  'sign of N_fin': { file: 'constants.ts', from: '- finBehind * fin;', to: '+ finBehind * fin;', times: 1 },
  "the lines' centrifugal load dropped": {
    file: 'constants.ts',
    from: 'c.pressTurning = (linesMass * c.tanElevation) / (3 * radius);',
    to: 'c.pressTurning = 0;',
    times: 1,
  },
  'torque sign': {
    file: 'forces.ts',
    from: 'const Q = s.turning * read[TORQUE]!',
    to: 'const Q = -s.turning * read[TORQUE]!',
    times: 1,
  },
  'gyroscopic moment dropped': { file: 'forces.ts', from: '(spin * read[SHAFT_SPEED]! * V) / R', to: '0', times: 1 },
  'fin at the height of the CG': { file: 'constants.ts', from: 's.finZ - s.cgZ', to: '0', times: 1 },
  'inertia left out': { file: 'constants.ts', from: 's.inertiaUp - s.inertiaSpan', to: '0', times: 1 },
  'curved flow on the body left out': { file: 'constants.ts', from: 's.sideSlope * second', to: '0', times: 1 },
};

/** A copy of the solver with a fault; everything else is imported from where it stands. */
async function planted(name: string, fault?: Fault): Promise<typeof Flight> {
  const folder = `${copies}${name.replaceAll(/[^a-z]/gi, '-')}/`;
  mkdirSync(folder, { recursive: true });
  for (const file of readdirSync(source)) {
    let text = readFileSync(source + file, 'utf8');
    if (fault?.file === file) {
      expect(text.split(fault.from)).toHaveLength(fault.times + 1);
      text = text.replaceAll(fault.from, fault.to);
    }
    writeFileSync(
      folder + file,
      text.replaceAll(/from '(\.\.\/[^']+)'/g, (_, path) => `from '${source}${path}'`),
    );
  }
  return import(/* @vite-ignore */ `${folder}index.ts`);
}

/** Designs whose world balance is out, by the solver given. */
function red({ newSolution, newFlightRoom, solveFlight }: typeof Flight): string[] {
  const x = newSolution();
  const room = newFlightRoom();
  return Object.entries(designs)
    .filter(([, design]) => {
      solveFlight(design.setup, room, x);
      if (x.status !== 'settled') return true;
      const { force, moment, lines, wing, tail } = leftOver(design, x);
      return Math.max(force, moment, lines, wing, tail) > 1e-6;
    })
    .map(([name]) => name);
}

describe('planted faults', () => {
  it('the copy without a fault is green', async () => {
    expect(red(await planted('none'))).toEqual([]);
  });

  it.each(Object.entries(faults))('%s turns the check red', async (name, fault) => {
    const found = red(await planted(name, fault));
    expect(found).not.toEqual([]);
    expect(found.length).toBeGreaterThanOrEqual(2);
  });
});

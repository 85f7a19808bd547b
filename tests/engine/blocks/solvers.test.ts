import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import type { Result } from '../../../engine/blocks/block';
import { blocks } from '../../../engine/blocks/registry';

/** Names under which every block tells what its solver did. */
const SOLVER_RESULTS = ['status', 'iterations', 'residual'];

/** What blocks call that searches for its answer step by step, and so may not find it. */
const SOLVERS =
  /\b(?:solveFlight|flyWindLap|windAtFloor|runFrom|flyGlide|fuelSurface|tabulatePropeller|tunePropeller|shaftSpeedAt|lineShape|unevenPair|elevatorRoot)\(/;

const folder = fileURLToPath(new URL('../../../engine/blocks', import.meta.url));
const textOf = (file: string): string => readFileSync(`${folder}/${file}`, 'utf8');

/** Kinds whose own file, or the file that writes their drive, runs a solver. */
const running = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .flatMap((file) => {
    const text = textOf(file);
    const kind = /^ {2}kind: '(\w+)',$/m.exec(text)?.[1];
    return kind && (SOLVERS.test(text) || text.includes('writeDrive(')) ? [kind] : [];
  });

/** The race flies the standard lap only to correct a lap time; the flight block tells how that solver did. */
const ASIDE = ['race'];

const prefixesOf = (results: Readonly<Record<string, unknown>>): string[] =>
  Object.keys(results).flatMap((name) => /^(.*?)(?:status|iterations|residual)$/.exec(name)?.slice(1) ?? []);

describe('what solvers did', () => {
  it('is told by every block that runs one', () => {
    const missing = running.filter((kind) => {
      const block = blocks.find((each) => each.kind === kind)!;
      return !ASIDE.includes(kind) && !SOLVER_RESULTS.every((name) => name in block.results);
    });
    expect(running.length).toBeGreaterThan(8);
    expect(missing).toEqual([]);
  });

  it('has the same names everywhere: status, steps and what is left open, all three, as details', () => {
    for (const { kind, results } of blocks) {
      for (const prefix of new Set(prefixesOf(results))) {
        const told = SOLVER_RESULTS.map((name) => results[`${prefix}${name}`] as Result | undefined);
        expect(
          told.map((each) => each?.title),
          `${kind} ${prefix}`,
        ).toEqual([...['Solver ended', 'Solver steps', 'Left open']]);
        expect(
          told.every((each) => each?.detail),
          kind,
        ).toBe(true);
        expect(told[0]?.oneOf?.[0], kind).toBe('settled');
      }
    }
  });
});

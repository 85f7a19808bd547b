// Runs the tests that hold the physics in this process, with sources changed on their way to them and never on the disk.
import { join, relative } from 'node:path';
import { createVitest } from 'vitest/node';
import { root } from '../project.mjs';

/** What only a picture, a whole sheet, a stored table or flights at random would notice is held too loosely. */
const TESTS = ['tests/engine/physics/**/*.test.ts', 'tests/engine/blocks/**/*.test.ts', 'tests/published/**/*.test.ts'];
const LEFT_OUT = ['**/random-flights.test.ts', '**/propeller-agreement.test.ts'];

/**
 * @param {object} how
 * @param {(file: string, source: string) => string} how.change gives the text of a file of the engine, by its path from the root
 * @param {boolean} how.isolate whether every test file loads the engine anew
 * @param {number} how.bail after how many failures a run ends; 0: never
 */
export async function openRunner({ change, isolate, bail }) {
  /** @type {readonly string[]} */
  let wanted = [];
  class InThisOrder {
    /** @template T @param {T} files */
    shard = async (files) => files;
    /** @param {import('vitest/node').TestSpecification[]} files */
    sort = async (files) => files.sort((a, b) => wanted.indexOf(a.moduleId) - wanted.indexOf(b.moduleId));
  }
  const vitest = await createVitest(
    'test',
    {
      config: false,
      root,
      watch: true,
      include: TESTS,
      exclude: LEFT_OUT,
      setupFiles: ['.ci/mutants/reach.mjs'],
      pool: 'threads',
      maxWorkers: 1,
      fileParallelism: false,
      ...{ isolate, bail },
      reporters: [{}],
      testTimeout: 120_000,
      sequence: { sequencer: InThisOrder },
    },
    {
      cacheDir: '.cache/mutants',
      plugins: [
        {
          name: 'changed-physics',
          enforce: 'pre',
          transform: (source, id) => change(relative(root, id.split('?')[0] ?? id), source),
        },
      ],
    },
  );
  const specifications = await vitest.globTestSpecifications();
  return {
    tests: specifications.map(({ moduleId }) => moduleId),
    /**
     * Runs these tests in their order, with the files read anew that have changed.
     * @param {readonly string[]} tests
     * @param {readonly string[]} changed paths from the root
     */
    async run(tests, changed) {
      for (const file of changed) vitest.invalidateFile(join(root, file));
      wanted = tests;
      const { testModules, unhandledErrors } = await vitest.runTestSpecifications(
        specifications.filter(({ moduleId }) => tests.includes(moduleId)),
      );
      const failed = testModules.filter((module) => !module.ok()).map(({ moduleId }) => moduleId);
      if (unhandledErrors.length > 0) failed.push(String(unhandledErrors[0]));
      return { failed, took: new Map(testModules.map((module) => [module.moduleId, module.diagnostic().duration])) };
    },
    close: () => vitest.close(),
  };
}

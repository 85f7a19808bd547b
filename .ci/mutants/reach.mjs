// Set up before each test file: tells which functions the file has reached, where the marked sources count them.
import { appendFileSync } from 'node:fs';
import { afterAll, expect } from 'vitest';

/** @type {{ reachedFunctions?: Set<string> }} */
const world = /** @type {any} */ (globalThis);
const list = process.env.REACH_LIST;
if (list) {
  world.reachedFunctions = new Set();
  afterAll(() => {
    const { testPath } = expect.getState();
    appendFileSync(list, `${JSON.stringify({ test: testPath, reached: [...(world.reachedFunctions ?? [])] })}\n`);
  });
}

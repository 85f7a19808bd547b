// Which test reaches which function: from one run of marked sources, kept until engine or tests differ.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fingerprint } from '../build.mjs';
import { root } from '../project.mjs';
import { markedSource } from './places.mjs';
import { openRunner } from './runner.mjs';

const folder = join(root, '.cache/mutants');
const kept = join(folder, 'reached.json');

/**
 * @typedef {object} Reach
 * @property {string} from
 * @property {string[]} tests all of them, the quickest first
 * @property {Record<string, string[]>} reached tests by function, the quickest first
 */

/**
 * @param {readonly string[]} files to be marked
 * @returns {Promise<Reach>}
 */
export async function reachedBy(files) {
  const from = fingerprint(['engine', 'data', 'tests/engine', 'tests/published', '.ci/mutants']);
  if (existsSync(kept)) {
    const known = JSON.parse(readFileSync(kept, 'utf8'));
    if (known.from === from) return known;
  }
  mkdirSync(folder, { recursive: true });
  const list = join(folder, 'reach-list');
  rmSync(list, { force: true });
  process.env.REACH_LIST = list;
  const runner = await openRunner({
    change: (file, source) => (files.includes(file) ? markedSource(file, source) : source),
    isolate: true,
    bail: 0,
  });
  const { failed, took } = await runner.run(runner.tests, []);
  await runner.close();
  delete process.env.REACH_LIST;
  if (failed.length > 0) throw new Error(`These tests fail without any mutant:\n${failed.join('\n')}`);

  const quickest = (/** @type {string[]} */ tests) => tests.sort((a, b) => (took.get(a) ?? 0) - (took.get(b) ?? 0));
  /** @type {Record<string, string[]>} */
  const reached = {};
  for (const line of readFileSync(list, 'utf8').trim().split('\n')) {
    const told = JSON.parse(line);
    for (const name of told.reached) reached[name] = [...(reached[name] ?? []), told.test];
  }
  for (const tests of Object.values(reached)) quickest(tests);
  const reach = { from, tests: quickest([...runner.tests]), reached };
  writeFileSync(kept, JSON.stringify(reach));
  return reach;
}

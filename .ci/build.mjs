// Builds the page when its sources differ from those of the last build.
import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { root, runNode, runNodeBeside } from './project.mjs';

const stamp = join(root, '.cache/built');
const SOURCES = ['engine', 'workbook', 'data', 'vite.config.ts', 'package-lock.json'];

/** @type {[string, ...string[]]} */
const VITE = ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn'];

/** Makes the formula parser and builds the page into dist/. Gives the exit code. */
export function build() {
  const sources = fingerprint(SOURCES);
  const code = runNode('.ci/grammar.mjs') || runNode(...VITE);
  if (code === 0) keep(sources);
  return code;
}

/** The same beside whatever else runs, with the parser made already. */
export async function buildBeside() {
  const sources = fingerprint(SOURCES);
  const outcome = await runNodeBeside({}, ...VITE);
  if (outcome.code === 0) keep(sources);
  return outcome;
}

/** @param {string} sources */
function keep(sources) {
  mkdirSync(join(root, '.cache'), { recursive: true });
  writeFileSync(stamp, sources);
}

/** Gives 0 at once when dist/ was built from the sources as they are. */
export function buildIfStale() {
  const fresh = existsSync(join(root, 'dist/index.html')) && existsSync(stamp);
  if (fresh && readFileSync(stamp, 'utf8') === fingerprint(SOURCES)) return 0;
  console.log('Building the page …');
  return build();
}

/**
 * One text for all that a build reads; the generated parser follows from its grammar.
 * @param {string[]} sources files and folders, from the project's root
 */
export function fingerprint(sources) {
  const hash = createHash('sha256');
  for (const file of sources.flatMap((path) => filesOf(join(root, path))).sort()) {
    if (!/\.parser(\.terms)?\.ts$/.test(file)) hash.update(`${relative(root, file)}\0`).update(readFileSync(file));
  }
  return hash.digest('hex');
}

/** @param {string} path @returns {string[]} */
function filesOf(path) {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path).flatMap((name) => filesOf(join(path, name)));
}

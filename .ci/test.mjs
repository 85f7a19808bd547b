// npm test: everything that must hold before a change is taken. Ends with a line "N passed, N failed" that counts tests,
// and every other step that fails as one more failure.
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from './build.mjs';
import { checkNode, installIfNeeded, root, runNode } from './project.mjs';

checkNode();
installIfNeeded();

const total = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const failures = [];

/**
 * A step that holds or doesn't.
 * @param {string} title
 * @param {() => number | Promise<number>} step gives an exit code
 */
async function check(title, step) {
  console.log(`\n── ${title}`);
  const held = (await step()) === 0;
  if (!held) {
    total.failed += 1;
    failures.push(title);
  }
  return held;
}

/**
 * Tests, counted one by one.
 * @param {string} title
 * @param {string[]} projects
 */
function tests(title, projects) {
  console.log(`\n── ${title}`);
  const report = join(root, `.cache/tests-${projects.join('-')}.json`);
  rmSync(report, { force: true });
  const code = runNode(
    'node_modules/vitest/vitest.mjs',
    'run',
    ...projects.flatMap((project) => ['--project', project]),
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${report}`,
  );
  const counted = existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : undefined;
  total.passed += counted?.numPassedTests ?? 0;
  // A file that couldn't be read has no test to count.
  const unread = (counted?.testResults ?? []).filter(isUnread).length;
  total.failed += (counted?.numFailedTests ?? 0) + unread;
  total.skipped += (counted?.numPendingTests ?? 0) + (counted?.numTodoTests ?? 0);
  const ran = counted?.numTotalTests > 0;
  if (ran && code === 0) return;
  // A fault outside every test, or no test at all.
  if (!counted?.numFailedTests && unread === 0) total.failed += 1;
  failures.push(title);
}

/** @param {{ status: string, assertionResults: unknown[] }} file */
function isUnread({ status, assertionResults }) {
  return status === 'failed' && assertionResults.length === 0;
}

await check('types', () => runNode('.ci/grammar.mjs') || runNode('node_modules/typescript/bin/tsc', '-b'));
await check('lint and format', () => runNode('node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings'));
tests('engine, published checks, workbook', ['unit']);
tests('boundaries', ['boundaries']);
const built = await check('build', build);
const browser = await check('a Chromium for the browser tests', async () => {
  const { findChromium } = await import('./chromium.mjs');
  try {
    console.log((await findChromium()).path);
    return 0;
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    return 1;
  }
});
if (built && browser) tests('the built page in Chromium', ['browser']);

if (failures.length > 0) console.log(`\nFailed: ${failures.join(' · ')}`);
console.log(`\n${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ''}`);
process.exit(total.failed === 0 ? 0 : 1);

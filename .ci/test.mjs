// npm test: everything that must hold before a change is taken. Ends with a line "N passed, N failed" that counts tests,
// and every other step that fails as one more failure. npm run test:long tries every random case as well, and not a fifth of them.
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { constants } from 'node:os';
import { join } from 'node:path';
import { buildBeside } from './build.mjs';
import { checkNode, installIfNeeded, root, runNode, runNodeBeside } from './project.mjs';

checkNode();
installIfNeeded();
if (process.argv.includes('--long')) process.env.TESTS_LONG = '1';

const total = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const failures = [];

/**
 * A step that holds or doesn't.
 * @param {string} title
 * @param {{ code: number, said: string }} outcome
 */
function check(title, { code, said }) {
  console.log(`\n── ${title}\n${said.trimEnd()}`);
  if (code === 0) return true;
  total.failed += 1;
  failures.push(title);
  return false;
}

/** @param {string} project */
const reportOf = (project) => join(root, `.cache/tests-${project}.json`);

/**
 * What to run for the tests of a project, and of others with it.
 * @param {string} project
 * @param {string[]} more
 * @returns {[script: string, ...args: string[]]}
 */
function testsOf(project, ...more) {
  rmSync(reportOf(project), { force: true });
  return [
    'node_modules/vitest/vitest.mjs',
    'run',
    ...[project, ...more].map((each) => `--project=${each}`),
    '--reporter=default',
    '--reporter=json',
    `--outputFile.json=${reportOf(project)}`,
  ];
}

/**
 * Tests that have run, counted one by one.
 * @param {string} title
 * @param {string} project
 * @param {number} code that the run ended with
 */
function count(title, project, code) {
  const report = reportOf(project);
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

/** Imported late, since the driver is installed above. */
async function chromium() {
  const { findChromium } = await import('./chromium.mjs');
  try {
    return { code: 0, said: (await findChromium()).path };
  } catch (error) {
    return { code: 1, said: error instanceof Error ? error.message : String(error) };
  }
}

/** @param {{ status: string, assertionResults: unknown[] }} file */
function isUnread({ status, assertionResults }) {
  return status === 'failed' && assertionResults.length === 0;
}

const parser = runNode('.ci/grammar.mjs');
/** Exports and files that nothing uses, by one of the two configurations. @param {string} by */
const unusedBy = (by) =>
  runNodeBeside({}, 'node_modules/knip/bin/knip.js', '--no-gitignore', '--config', `.ci/${by}.json`);
const [types, lint, page] = await Promise.all([
  runNodeBeside({}, 'node_modules/typescript/bin/tsc', '-b'),
  runNodeBeside({}, 'node_modules/@biomejs/biome/bin/biome', 'check', '--error-on-warnings'),
  parser === 0 ? buildBeside() : { code: parser, said: 'The formula parser could not be made.' },
]);
const [unused, testedAlone] = await Promise.all([unusedBy('unused'), unusedBy('unused-by-product')]);
check('types', types);
check('lint and format', lint);
check('what nothing uses', unused);
check('what tests alone use', testedAlone);
const built = check('build', page);
const browser = check('a Chromium for the browser tests', await chromium());

// A browser leaves a processor idle for much of its time, and is disturbed by all that takes it away: the other tests stand back for it.
const behind = { niceness: constants.priority.PRIORITY_LOW };
const others = (async () => {
  const unit = await runNodeBeside(behind, ...testsOf('unit', 'alone'));
  return { unit, boundaries: await runNodeBeside(behind, ...testsOf('boundaries')) };
})();
if (built && browser) {
  const title = 'the built page in Chromium';
  console.log(`\n── ${title}, and behind it the tests without a browser`);
  const { code } = await runNodeBeside({ printing: true }, ...testsOf('browser'));
  count(title, 'browser', code);
}
const { unit, boundaries } = await others;
for (const [title, project, { code, said }] of /** @type {const} */ ([
  ['engine, published checks, workbook', 'unit', unit],
  ['boundaries', 'boundaries', boundaries],
])) {
  console.log(`\n── ${title}\n${said.trimEnd()}`);
  count(title, project, code);
}

if (failures.length > 0) console.log(`\nFailed: ${failures.join(' · ')}`);
console.log(`\n${total.passed} passed, ${total.failed} failed${total.skipped > 0 ? `, ${total.skipped} skipped` : ''}`);
process.exit(total.failed === 0 ? 0 : 1);

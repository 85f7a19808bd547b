// Where the project lies, which Node it needs, and its dependencies: what every command here starts with. No package is needed to read this file.
import { spawn, spawnSync } from 'node:child_process';
import { accessSync, constants, mkdirSync, readFileSync } from 'node:fs';
import { homedir, setPriority } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

export const root = fileURLToPath(new URL('..', import.meta.url));

const OLDEST = [20, 19];

/** Ends the command with a sentence when this Node is too old. */
export function checkNode() {
  const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
  const [needMajor = 0, needMinor = 0] = OLDEST;
  if (major > needMajor || (major === needMajor && minor >= needMinor)) return;
  console.error(`Tetherwright needs Node ${OLDEST.join('.')} or newer; this is Node ${process.versions.node}.`);
  process.exit(1);
}

/**
 * Runs a command with nothing to read, and gives its exit code.
 * @param {string} command
 * @param {string[]} args
 * @param {NodeJS.ProcessEnv} env
 * @param {'inherit' | 2} out where what it prints goes
 */
function run(command, args, env, out) {
  const { status, error } = spawnSync(command, args, { cwd: root, env, stdio: ['ignore', out, 'inherit'] });
  if (error) console.error(error.message);
  return status ?? 1;
}

/**
 * Runs a script of this project or of an installed package in a Node of its own. A test runner's marks in the environment don't
 * reach it, since they would turn a build for use into a build for tests.
 * @param {string} script path from the project's root
 * @param {string[]} args
 */
export function runNode(script, ...args) {
  return run(process.execPath, [join(root, script), ...args], plainEnvironment(), 'inherit');
}

/**
 * Runs a script as `runNode` does, beside whatever else runs: gives its exit code and what it printed, once it has ended.
 * @param {{ niceness?: number, printing?: boolean }} how niceness: up to 19, how far it stands back where something else wants the
 * processor; printing: at once, with nothing of it given
 * @param {string} script path from the project's root
 * @param {string[]} args
 * @returns {Promise<{ code: number, said: string }>}
 */
export function runNodeBeside({ niceness = 0, printing = false }, script, ...args) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [join(root, script), ...args], {
      cwd: root,
      env: plainEnvironment(),
      stdio: printing ? ['ignore', 'inherit', 'inherit'] : ['ignore', 'pipe', 'pipe'],
    });
    let said = '';
    for (const out of [child.stdout, child.stderr]) {
      out?.setEncoding('utf8').on('data', (text) => {
        said += text;
      });
    }
    child.on('error', (error) => {
      said += `${error.message}\n`;
    });
    child.on('close', (code) => resolve({ code: code ?? 1, said }));
    if (niceness > 0 && child.pid) standBack(child.pid, niceness);
  });
}

/** @param {number} pid @param {number} niceness */
function standBack(pid, niceness) {
  try {
    setPriority(pid, niceness);
  } catch {
    // It has ended already, or this system lets nobody stand back: then it runs as everything else does.
  }
}

function plainEnvironment() {
  const { NODE_ENV: _env, VITEST: _vitest, TEST: _test, ...env } = process.env;
  return env;
}

/**
 * Runs npm: the one that started this command where there is one. What it prints goes with the errors, since the command that
 * needed it may be asked for nothing but numbers.
 * @param {string[]} args
 */
export function npm(args) {
  /** @type {NodeJS.ProcessEnv} */
  const env = { ...process.env, npm_config_update_notifier: 'false' };
  // A home that is missing or can't be written to holds no cache.
  if (!canWrite(env.npm_config_cache ?? (homedir() && join(homedir(), '.npm')))) {
    env.npm_config_cache = join(root, '.cache/npm');
  }
  const script = env.npm_execpath;
  if (script?.endsWith('npm-cli.js')) return run(process.execPath, [script, ...args], env, 2);
  return process.platform === 'win32' ? run('cmd', ['/c', 'npm', ...args], env, 2) : run('npm', args, env, 2);
}

/** @param {string} folder */
function canWrite(folder) {
  if (!folder) return false;
  try {
    mkdirSync(folder, { recursive: true });
    accessSync(folder, constants.W_OK);
    return true;
  } catch {
    return false;
  }
}

/** Installs what the lock file names, unless it's all there. */
export function installIfNeeded() {
  if (installed()) return;
  console.error('Installing what package-lock.json names …');
  if (npm(['ci', '--no-audit', '--no-fund']) !== 0) {
    console.error('The packages could not be installed; npm says why above. Without a connection none can be fetched.');
    process.exit(1);
  }
}

/** Whether node_modules holds every package of the lock file in its version, by the list that npm keeps there. */
function installed() {
  const wanted = packagesOf(join(root, 'package-lock.json'));
  const there = packagesOf(join(root, 'node_modules/.package-lock.json'));
  return Object.entries(wanted).every(
    ([path, entry]) => path === '' || entry.optional || there[path]?.version === entry.version,
  );
}

/**
 * @param {string} file
 * @returns {Record<string, { version?: string, optional?: boolean }>}
 */
function packagesOf(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return {};
  }
}

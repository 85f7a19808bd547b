// Makes a file that Node runs from a TypeScript entry and all that it imports, since this Node runs no TypeScript itself.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { fingerprint } from './build.mjs';
import { root, runNode } from './project.mjs';

const folder = join(root, '.cache/node');

/**
 * Gives the address of the made file, to be imported; makes it anew only when the engine, the data or the entry differ.
 * @param {string} entry path from the project's root, ending in .ts
 * @param {readonly string[]} more other files and folders that it is made from
 */
export async function makeForNode(entry, more = []) {
  const name = basename(entry, '.ts');
  const made = join(folder, `${name}.mjs`);
  const stamp = `${made}.from`;
  const sources = fingerprint(['engine', 'data', 'package-lock.json', entry, ...more]);
  if (existsSync(made) && existsSync(stamp) && readFileSync(stamp, 'utf8') === sources) return pathToFileURL(made).href;
  if (runNode('.ci/grammar.mjs') !== 0) throw new Error('The formula parser could not be made.');
  const { build } = await import('vite');
  await build({
    configFile: false,
    root,
    logLevel: 'warn',
    ssr: { noExternal: true },
    build: {
      ssr: join(root, entry),
      outDir: folder,
      emptyOutDir: false,
      rollupOptions: { output: { entryFileNames: '[name].mjs' } },
    },
  });
  mkdirSync(folder, { recursive: true });
  writeFileSync(stamp, sources);
  return pathToFileURL(made).href;
}

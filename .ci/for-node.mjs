// Makes a file that Node runs from a TypeScript entry and all that it imports, since this Node runs no TypeScript itself.
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { fingerprint } from './build.mjs';
import { root, runNode } from './project.mjs';

const folder = join(root, '.cache/node');

/**
 * Gives the path of the made file; makes it anew only when a source differs.
 * @param {string} entry path from the project's root, ending in .ts
 * @param {string[]} [beside] more sources than those of the page
 */
export async function makeForNode(entry, beside = []) {
  const name = basename(entry, '.ts');
  const made = join(folder, `${name}.mjs`);
  const stamp = `${made}.from`;
  const sources = fingerprint([entry, ...beside]);
  if (existsSync(made) && existsSync(stamp) && readFileSync(stamp, 'utf8') === sources) return made;
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
  return made;
}

// npm run reference: writes the reference as text, made from the declarations in engine/, and the table of how near
// the propeller comes to measured ones.
import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeForNode } from './for-node.mjs';
import { checkNode, installIfNeeded, root } from './project.mjs';

checkNode();
installIfNeeded();

// How near the propeller comes to measured ones is computed, and shown as data.
const { agreementCsv } = await import(await makeForNode('tests/published/propeller-agreement.ts', ['tests/published']));
writeFileSync(join(root, 'data/propeller-agreement.csv'), agreementCsv());

const folder = join(root, '.cache/reference');
const { referenceFiles } = await import(await makeForNode('engine/reference/reference-files.ts'));
/** @type {ReadonlyMap<string, string>} */
const files = referenceFiles();
mkdirSync(folder, { recursive: true });
for (const name of readdirSync(folder)) if (!files.has(name)) rmSync(join(folder, name));
for (const [name, text] of files) writeFileSync(join(folder, name), text);
console.log(`${files.size} files in .cache/reference; begin with README.md`);

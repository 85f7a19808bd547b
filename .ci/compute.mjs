// npm run compute: makes engine/compute.ts for Node when a source differs, then runs it.
import { pathToFileURL } from 'node:url';
import { makeForNode } from './for-node.mjs';
import { checkNode, installIfNeeded } from './project.mjs';

checkNode();
installIfNeeded();
const { main } = await import(pathToFileURL(await makeForNode('engine/compute.ts')).href);
process.exitCode = main(process.argv.slice(2));

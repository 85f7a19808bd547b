// npm run compute: makes engine/compute.ts for Node when a source differs, then runs it.
import { makeForNode } from './for-node.mjs';
import { checkNode, installIfNeeded } from './project.mjs';

checkNode();
installIfNeeded();
const { main } = await import(await makeForNode('engine/compute.ts'));
process.exitCode = main(process.argv.slice(2));

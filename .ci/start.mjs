// npm start: installs when needed, builds when needed, serves the page on this machine alone and prints its address.
import { join } from 'node:path';
import { buildIfStale } from './build.mjs';
import { checkNode, installIfNeeded, root } from './project.mjs';

checkNode();
installIfNeeded();
if (buildIfStale() !== 0) process.exit(1);

const { preview } = await import('vite');
const server = await preview({ configFile: join(root, 'vite.config.ts') });
console.log(`Tetherwright is at ${server.resolvedUrls?.local[0]}`);
console.log('It opens with the demo, the Quern 25, or with the design you had open before. Stop it with Ctrl+C.');

// npm run demo: puts the studies on the demo anew, after one of them or the placing has changed. A test says when that has to be done.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeForNode } from './for-node.mjs';
import { checkNode, installIfNeeded, root } from './project.mjs';

checkNode();
installIfNeeded();
const { demoText } = await import(await makeForNode('engine/study/place/demo.ts'));
const file = join(root, 'data/designs/quern-25.tetherwright.json');
writeFileSync(file, demoText(readFileSync(file, 'utf8')));

// npm run demo: puts the studies on the demo anew, and makes the other designs of its club, after a study, the placing or a first design has
// changed. A test says when that has to be done.
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeForNode } from './for-node.mjs';
import { checkNode, installIfNeeded, root } from './project.mjs';

checkNode();
installIfNeeded();
const { demoText } = await import(await makeForNode('engine/study/place/demo.ts'));
const { clubDesigns } = await import(await makeForNode('engine/study/place/club-designs.ts'));
/** @param {string} file */
const at = (file) => join(root, 'data/designs', file);
const quern = at('quern-25.tetherwright.json');
writeFileSync(quern, demoText(readFileSync(quern, 'utf8')));
for (const { file, text } of clubDesigns()) writeFileSync(at(file), text);

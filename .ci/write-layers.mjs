// npm run layers: writes the rules that keep imports one way anew from the list of layers (layers.mjs). A test says when that has to be done.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { layerRules } from './layer-rules.mjs';
import { checkNode, installIfNeeded, root } from './project.mjs';

checkNode();
installIfNeeded();
writeFileSync(join(root, '.ci/layers.json'), `${JSON.stringify(layerRules(), undefined, 2)}\n`);

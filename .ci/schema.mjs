// npm run schema: writes data/tetherwright.schema.json from the declarations. A test says when that has to be done.
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { makeForNode } from './for-node.mjs';
import { jsonSchema } from './json-schema.mjs';
import { checkNode, installIfNeeded, root } from './project.mjs';

checkNode();
installIfNeeded();
const declared = await import(await makeForNode('engine/sheet/schema.ts'));
writeFileSync(join(root, 'data/tetherwright.schema.json'), jsonSchema(declared));

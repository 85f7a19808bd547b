import { blocks } from '../blocks/registry';
import { materials } from '../library/index';
import type { Library } from '../sheet/build';

/** What stands behind every document: all blocks and all materials. */
export const library: Library = { blocks, materials };

import { blocks } from '../blocks/registry';
import { finishes, materials } from '../library/index';
import type { Library } from '../sheet/build';

/** What stands behind every document: all blocks, materials and finishes. */
export const library: Library = { blocks, materials, finishes };

import { blocks } from '../blocks/registry';
import { tables } from '../library/index';
import type { Library } from '../sheet/specs';

/** What stands behind every document: all blocks and all tables. */
export const library: Library = { blocks, tables };

import type { RoleCaution } from '../terms/index';
import type { AnyBlock, Caution } from './block';
import { partsCautions } from './parts/cautions';

const inRole = (role: string, cautions: readonly Caution[]): RoleCaution[] =>
  cautions.map(({ beside = [], greatest = [], over, sentences }) => ({
    ...{ role, figures: beside.map((name) => `${role}.${name}`), greatest, ...(over && { over }), sentences },
  }));

/** Every caution once: of each role the list that its first block declares, then that of the parts. */
export function cautionsOf(blocks: readonly AnyBlock[]): readonly RoleCaution[] {
  const lists = new Map<string, readonly Caution[]>();
  for (const { role, kind, cautions = [] } of blocks) if (!lists.has(role ?? kind)) lists.set(role ?? kind, cautions);
  lists.set('parts', partsCautions);
  return [...lists].flatMap(([role, cautions]) => inRole(role, cautions));
}

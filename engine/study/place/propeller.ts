import type { AnyBlock } from '../../blocks/block';
import type { Document } from '../../sheet/document';
import type { Meant } from './names';
import { standIn } from './roles';

/** Where diameter and pitch of the propeller are typed: at the engine, or at a propeller of its own that the engine turns. */
export function propellerIn(
  document: Document,
  blocks: readonly AnyBlock[],
): { readonly diameter: Meant; readonly pitch: Meant } | undefined {
  const engine = standIn(document, 'engine', blocks);
  if (engine?.kind !== 'model') return undefined;
  const own = 'pitch' in (blocks.find((block) => block.kind === engine.of)?.fields ?? {});
  const at = own ? engine.name : engine.fields.propeller || standIn(document, 'propeller', blocks)?.name;
  if (at === undefined) return undefined;
  return {
    diameter: { path: own ? `${at}.propeller_diameter` : `${at}.diameter`, title: 'propeller diameter' },
    pitch: { path: `${at}.pitch`, title: 'propeller pitch' },
  };
}

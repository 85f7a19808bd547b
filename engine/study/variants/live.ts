import { carry, copyState, run } from '../../sheet/evaluate';
import type { Live } from '../../sheet/live';
import type { Slot } from '../../sheet/program';
import { changesOfVariant, variantsOf } from '../../sheet/variants';
import { documentOf, isHere } from './designs';

/** The design of a variant with numbers of its own, as if its texts had been typed; undefined where there is none of this name. */
export function openVariant(live: Live, name: string): Live | undefined {
  const { compiled, state } = live;
  const variant = variantsOf(compiled.document).find((each) => each.name === name);
  if (!variant) return undefined;
  const { texts } = changesOfVariant(compiled.document, variant, (path) => isHere(live, path));
  const document = documentOf(compiled.document, { texts: new Map(texts) });
  const { constants } = compiled.program;
  const values = texts.map(([path, text]) => [constants.get(path), compiled.constant(path, text)] as const);
  if (!values.every((each): each is readonly [Slot, number] => each[1] !== undefined)) {
    const own = compiled.anew(document);
    return { compiled: own, state: carry(state, own.program).state };
  }
  const own = copyState(state);
  for (const [slot, value] of values) own.m[slot] = value;
  run(
    own,
    values.map(([slot]) => slot),
  );
  return { compiled: compiled.at(document), state: own };
}

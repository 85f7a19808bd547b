import type { AnyBlock } from '../../blocks/block';
import type { Template } from '../../blocks/template';
import type { Live } from '../../sheet/live';
import { placedBlocks } from './placed-blocks';

/** A template with the piece that gives it. */
export interface PlacedTemplate extends Template {
  readonly cell: string;
}

/** What the blocks of a design give to lay on the work, in the order of its pieces. A block without an answer gives none. */
export const templatesOf = (
  { compiled, state }: Live,
  blocks: ReadonlyMap<string, AnyBlock>,
): readonly PlacedTemplate[] =>
  placedBlocks(compiled, blocks).flatMap(({ block, name, fields, results, outlines }) => {
    try {
      return (block.templates?.(state.m, fields, results, outlines) ?? []).map((each) => ({ ...each, cell: name }));
    } catch (error) {
      if (error instanceof RangeError) return [];
      throw error;
    }
  });

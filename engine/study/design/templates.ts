import type { AnyBlock } from '../../blocks/block';
import type { Template } from '../../blocks/template';
import type { Live } from '../../sheet/live';
import { type PlacedBlock, placedBlocks } from './placed-blocks';

/** A template with the piece that gives it. */
export interface PlacedTemplate extends Template {
  readonly cell: string;
}

/** What the blocks of a design give to lay on the work, in the order of its pieces. A block without an answer gives none. */
export function templatesOf(
  { compiled, state }: Live,
  blocks: ReadonlyMap<string, AnyBlock>,
): readonly PlacedTemplate[] {
  const placed = placedBlocks(compiled, blocks);
  return placed.flatMap((piece) => {
    const told = (path: string): number => {
      const [kind, result = ''] = path.split('.');
      const takers = placed.filter((other) => other.block.kind === kind && takes(other, piece));
      const slot = takers.length === 1 ? takers[0]!.results[result] : undefined;
      return typeof slot === 'number' ? state.m[slot]! : Number.NaN;
    };
    const { block, name, fields, results, outlines } = piece;
    try {
      return (block.templates?.(state.m, fields, results, outlines, told) ?? []).map((each) => ({
        ...each,
        cell: name,
      }));
    } catch (error) {
      if (error instanceof RangeError) return [];
      throw error;
    }
  });
}

/** Whether one of the links of a piece leads to another. */
const takes = ({ fields }: PlacedBlock, giver: PlacedBlock): boolean =>
  Object.values(fields).some(
    (link) =>
      typeof link === 'object' && Object.entries(link).every(([result, slot]) => giver.results[result] === slot),
  );

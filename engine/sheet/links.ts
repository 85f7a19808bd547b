import { mapFields } from './cells/rows';
import type { Cell, Document } from './document';
import { cellsOf } from './sheets';
import type { Change } from './transaction';

/** What has to be known of a block to say what it takes from others: a part of its declaration. */
export interface BlockLinks {
  readonly kind: string;
  readonly role: string;
  readonly fields: readonly { readonly name: string; readonly kind: string; readonly role?: string }[];
}

/**
 * Changes to make before a cell is put in, so that nothing else changes: where blocks take from the only one of its role,
 * that one's name is written into them, since with two of them the name has to be said.
 */
export function keptLinks(document: Document, cell: Cell, blocks: readonly BlockLinks[]): readonly Change[] {
  const role = roleOf(cell, blocks);
  const places = role === undefined ? [] : cellsOf(document).filter((each) => roleOf(each, blocks) === role);
  const only = places.length === 1 ? places[0] : undefined;
  if (!only) return [];
  const changes: Change[] = [];
  for (const each of cellsOf(document)) {
    if (each.kind !== 'model') continue;
    let { fields } = each;
    for (const link of blocks.find((block) => block.kind === each.of)?.fields ?? []) {
      if (link.kind === 'link' && link.role === role && !(link.name in fields)) {
        fields = { ...fields, [link.name]: only.name };
      }
    }
    const changed = mapFields(each, { fields });
    if (changed !== each) changes.push({ change: 'cell', cell: changed });
  }
  return changes;
}

/** What a cell can stand in for, where others take something from it. */
export function roleOf(cell: Cell, blocks: readonly BlockLinks[]): string | undefined {
  if (cell.kind === 'parts') return cell.kind;
  return cell.kind === 'model' ? blocks.find((block) => block.kind === cell.of)?.role : undefined;
}

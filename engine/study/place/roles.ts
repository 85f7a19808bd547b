import { type AnyBlock, isNeeded } from '../../blocks/block';
import { inSentence } from '../../sheet/called';
import type { BlockCell, Cell, Document } from '../../sheet/document';
import { freeName } from '../../sheet/free-names';
import { roleOf } from '../../sheet/links';
import { cellsOf } from '../../sheet/sheets';
import type { Meant } from './names';

/** What stands in for a role in a design: the first, as links take it where there is one. */
export function standIn(document: Document, role: string, blocks: readonly AnyBlock[]): Cell | undefined {
  const links = blocks.map((block) => ({ kind: block.kind, role: block.role ?? block.kind, fields: [] }));
  return cellsOf(document).find((cell) => roleOf(cell, links) === role);
}

/** Roles that a block of this role can't be without, itself not among them. */
export function linkedRoles(role: string, blocks: readonly AnyBlock[]): readonly string[] {
  const block = blocks.find((each) => (each.role ?? each.kind) === role);
  if (!block) return [];
  return Object.values(block.fields).flatMap((field) => (isNeeded(field) ? [field.link] : []));
}

/** A piece of the model with everything that `fields` doesn't say as its block estimates it. */
export function newModel(
  role: string,
  blocks: readonly AnyBlock[],
  rest: Pick<BlockCell, 'id' | 'fields'> & { readonly taken: ReadonlySet<string>; readonly isOpen: boolean },
): BlockCell {
  const { kind, title } = blockFor(role, blocks);
  const { id, taken, fields, isOpen } = rest;
  return {
    kind: 'model',
    id,
    name: freeName(kind, taken),
    title,
    ...(isOpen ? {} : { folded: true }),
    of: kind,
    fields,
  };
}

/** The kind of piece that is added for a role. */
function blockFor(role: string, blocks: readonly AnyBlock[]): AnyBlock {
  const block = blocks.find((each) => each.kind === role) ?? blocks.find((each) => each.role === role);
  if (!block) throw new RangeError(`No piece of the model is a ${role}`);
  return block;
}

export const titleOf = (role: string, blocks: readonly AnyBlock[]): string => blockFor(role, blocks).title;

export const meantBy = ({ name, title }: Pick<Cell, 'name' | 'title'>): Meant => ({
  path: name,
  title: inSentence(title),
});

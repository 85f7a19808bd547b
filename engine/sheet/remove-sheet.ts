import type { Document } from './document';
import { textsOf } from './paths';
import { cellsOf, sheetWith } from './sheets';
import type { Change } from './transaction';
import { movedVariants } from './variants';

/**
 * Takes a sheet away as it came: where other pieces read one of its variables and nothing else, what it says now is
 * put in its place, or nothing where the field was blank before and the variable has not been changed since.
 */
export function sheetRemoval(document: Document, id: string): readonly Change[] {
  const sheet = sheetWith(document, id);
  if (!sheet) return [];
  const values = new Map(
    sheet.pieces.flatMap((piece) =>
      piece.kind === 'variables' ? piece.rows.map((row) => [row.name, row.text] as const) : [],
    ),
  );
  const inside = new Set(sheet.pieces.map((piece) => piece.name));
  const names = new Set(cellsOf(document).map((cell) => cell.name));
  const texts = textsOf(document).filter(({ path }) => {
    const holder = path.split('.', 1)[0]!;
    return !(inside.has(holder) || (values.has(holder) && !names.has(holder)));
  });
  const back = texts.flatMap(({ path, text }): Change[] => {
    const value = values.get(text.trim());
    if (value === undefined) return [];
    return [{ change: 'text', path, text: sheet.took?.[path] === value ? '' : value }];
  });
  const readBy = new Map<string, string[]>();
  for (const { path, text } of texts) {
    const variable = text.trim();
    if (values.has(variable)) readBy.set(variable, [...(readBy.get(variable) ?? []), path]);
  }
  const variants = movedVariants(document, readBy);
  const moved: readonly Change[] = variants === document.variants ? [] : [{ change: 'head', head: { variants } }];
  return [...back, ...moved, { change: 'remove_sheet', id }];
}

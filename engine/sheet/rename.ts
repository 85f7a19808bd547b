import { renameInFormula } from '../formula/index';
import { kindOf, type Rewrite } from './cells/index';
import { mapFields, mapRows } from './cells/rows';
import type { BaselineDesign, Cell, Document, OwnRow, Variant } from './document';
import { ownedPaths } from './free-names';
import { movedPath, nameFault, renamedPath } from './names';
import { rewriteOwnRows } from './own-rows';
import { renameOption } from './rename-option';
import { cellsOf } from './sheets';
import type { Change, Head } from './transaction';

export type Renaming =
  | { readonly ok: true; readonly changes: readonly Change[] }
  | { readonly ok: false; readonly message: string };

/**
 * The edits that give the thing at `path` (a cell, a variable, a line, an option, a layer, a part, an own row of the
 * library) another name, and rewrite everything that names it. One transaction: all or none.
 */
export function rename(document: Document, path: string, to: string): Renaming {
  const moved = renamedPath(path, to);
  const refusal = refusalOf(document, path, to, moved);
  if (refusal !== undefined) return { ok: false, message: refusal };
  if (moved === path) return { ok: true, changes: [] };
  const rewrite = rewriteFor(document, path, to);
  const changes: Change[] = [];
  for (const cell of cellsOf(document)) {
    const kind = kindOf(cell);
    const changed: Cell = kind.rewrite(kind.rename(cell, path, to) ?? cell, rewrite);
    if (changed !== cell) changes.push({ change: 'cell', cell: changed });
  }
  const head = renameHead(document, path, to, rewrite);
  if (Object.keys(head).length > 0) changes.push({ change: 'head', head });
  return { ok: true, changes };
}

function refusalOf(document: Document, path: string, to: string, moved: string): string | undefined {
  const owned = ownedPaths(document);
  if (!owned.includes(path)) return `Nothing that can be renamed is called “${path}”.`;
  const wrong = nameFault(to);
  if (wrong !== undefined) return wrong;
  const taken = moved !== path && owned.includes(moved);
  return taken ? `Something is called “${moved}” already. Choose another name.` : undefined;
}

function rewriteFor(document: Document, path: string, to: string): Rewrite {
  const moves = movesOf(document, path, to);
  const choice = choiceWithOption(document, path);
  const from = path.slice(path.lastIndexOf('.') + 1);
  return {
    formula(text) {
      const renamed = moves.reduce((now, [was, is]) => renameInFormula(now, was, is), text);
      return choice === undefined ? renamed : renameOption(renamed, choice, from, to);
    },
    path: (each) => moves.reduce((now, [was, is]) => movedPath(now, was, is), each),
    option: (of, name) => (name === from && (of === choice || choosesAmong(document, of, path)) ? to : name),
  };
}

/** Where everything goes that is reached through the old name: a column of a choice is a number of each option too. */
function movesOf(document: Document, path: string, to: string): readonly (readonly [from: string, to: string])[] {
  const paths = [path];
  for (const cell of cellsOf(document)) {
    if (cell.kind !== 'choice') continue;
    const column = cell.columns.find(({ name }) => path === `${cell.name}.${name}`);
    if (column) paths.push(...cell.options.map((option) => `${cell.name}.${option.name}.${column.name}`));
  }
  return paths.map((each) => [each, renamedPath(each, to)]);
}

/** Path of the choice that has an option at `path`. */
function choiceWithOption(document: Document, path: string): string | undefined {
  for (const cell of cellsOf(document)) {
    if (cell.kind !== 'choice') continue;
    if (cell.options.some((option) => path === `${cell.name}.${option.name}`)) return cell.name;
  }
  return undefined;
}

/** Whether the choice at `of` has the own row at `path` among its options. */
const choosesAmong = (document: Document, of: string, path: string): boolean =>
  document.rows.some((row) => row.name === path) &&
  cellsOf(document).some((cell) => cell.kind === 'choice' && cell.name === of && cell.of === 'library');

function renameHead(document: Document, path: string, to: string, rewrite: Rewrite): Head {
  const head: { -readonly [K in keyof Head]: Head[K] } = {};
  const named = document.rows.map((each): OwnRow => (each.name === path ? { ...each, name: to } : each));
  const rows = rewriteOwnRows(named, rewrite);
  if (rows.some((each, k) => each !== document.rows[k])) head.rows = rows;
  const figures = document.figures.map(rewrite.path);
  if (figures.some((each, k) => each !== document.figures[k])) head.figures = figures;
  const then = document.baseline_design;
  if (then) head.baseline_design = renamedDesign(then, path, to, rewrite);
  const baseline = document.baseline && renameTexts(document.baseline, rewrite);
  if (baseline !== document.baseline) head.baseline = baseline;
  const variants = document.variants && mapRows(document.variants, (each) => renameVariant(each, rewrite));
  if (variants !== document.variants) head.variants = variants;
  return head;
}

function renamedDesign({ sheets, rows }: BaselineDesign, path: string, to: string, rewrite: Rewrite): BaselineDesign {
  const renamed = (cell: Cell): Cell => {
    const kind = kindOf(cell);
    return kind.rewrite(kind.rename(cell, path, to) ?? cell, rewrite);
  };
  return {
    sheets: sheets.map((sheet) => ({ ...sheet, pieces: sheet.pieces.map(renamed) })),
    rows: rewriteOwnRows(
      rows.map((each) => (each.name === path ? { ...each, name: to } : each)),
      rewrite,
    ),
  };
}

const renameVariant = (variant: Variant, rewrite: Rewrite): Variant =>
  mapFields(variant, { changes: renameTexts(variant.changes, rewrite) });

function renameTexts(texts: Readonly<Record<string, string>>, { formula, path, option }: Rewrite) {
  const entries = Object.entries(texts);
  const renamed = entries.map(([at, text]) => [path(at), option(at, formula(text))] as const);
  const same = renamed.every(([at, text], k) => at === entries[k]![0] && text === entries[k]![1]);
  return same ? texts : Object.fromEntries(renamed);
}

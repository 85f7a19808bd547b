import { baselineOf, isCompared, isOfDesign } from './baseline';
import type { Cell, Document } from './document';
import { textAt, textsOf } from './paths';
import { cellsOf } from './sheets';

/** A text that the baseline has otherwise. */
export interface Difference {
  readonly path: string;
  readonly before: string;
  readonly now: string;
}

/** Every text that differs from the baseline, in the order in which they moved away where that is known. */
export function differencesOf(document: Document): readonly Difference[] {
  const then = baselineOf(document);
  if (!then) return [];
  const paths = new Set([
    ...Object.keys(document.baseline ?? {}),
    ...(document.baseline_design ? textsOf(then).map((text) => text.path) : []),
  ]);
  return [...paths].flatMap((path) => {
    const [before, now] = [textAt(then, path), textAt(document, path)];
    if (before === undefined || now === undefined || before === now || !isCompared(document, path)) return [];
    return [{ path, before, now }];
  });
}

/** Titles of what was removed since the baseline, and of what was added: whole pieces, else the rows in them. */
export function movedSince(document: Document): {
  readonly removed: readonly string[];
  readonly added: readonly string[];
} {
  const then = document.baseline_design && baselineOf(document);
  if (!then) return { removed: [], added: [] };
  return onlyIn(then, document, 'id');
}

/** Titles of what only the first document has and of what only the second has; `by`: how a piece of one is known in the other. */
export function onlyIn(
  first: Document,
  second: Document,
  by: 'id' | 'name',
): { readonly removed: readonly string[]; readonly added: readonly string[] } {
  const [old, now] = [thingsOf(first, by), thingsOf(second, by)];
  return { removed: missing(old, now), added: missing(now, old) };
}

interface Thing {
  readonly key: string;
  readonly title: string;
  /** The piece in which it is a row. */
  readonly within?: string;
}

const missing = (these: readonly Thing[], those: readonly Thing[]): readonly string[] => {
  const there = new Set(those.map(({ key }) => key));
  return these
    .filter(({ key, within }) => !there.has(key) && (within === undefined || there.has(within)))
    .map(({ title }) => title);
};

function thingsOf(document: Document, by: 'id' | 'name'): readonly Thing[] {
  const things = cellsOf(document)
    .filter(isOfDesign)
    .flatMap((cell): Thing[] => [{ key: cell[by], title: cell.title || cell.name }, ...rowsOf(cell, cell[by])]);
  return [...things, ...document.rows.map(({ name, title }) => ({ key: name, title }))];
}

function rowsOf(cell: Cell, key: string): readonly Thing[] {
  const row = ({ name, title }: { readonly name: string; readonly title: string }): Thing => ({
    ...{ key: `${key}.${name}`, title: title || name, within: key },
  });
  if (cell.kind === 'variables' || cell.kind === 'parts') return cell.rows.map(row);
  if (cell.kind === 'choice') return cell.options.map(row);
  return cell.kind === 'formula' ? cell.lines.map(({ name }) => row({ name, title: name })) : [];
}

import { isCompared, isOfDesign } from '../../sheet/baseline';
import { kindOf } from '../../sheet/cells/index';
import { onlyIn } from '../../sheet/differences';
import type { Cell, Document } from '../../sheet/document';
import { openText } from '../../sheet/file';
import { type Live, openQuick } from '../../sheet/live';
import { textAt } from '../../sheet/paths';
import { cellsOf } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import type { DesignDifferences } from './told';

/** How a design differs from another: what is typed otherwise, and what only one of them has. */
export function apart(text: string, other: string, library: Library): DesignDifferences | undefined {
  const [here, there] = [openText(text), openText(other)];
  if (!here.ok || !there.ok) return undefined;
  const { removed, added } = onlyIn(here.document, there.document, 'name');
  return { texts: textsApart(here.document, there.document, library), here: removed, there: added };
}

function textsApart(here: Document, there: Document, library: Library): DesignDifferences['texts'] {
  const [mineLive, itsLive] = [openQuick(here, library), openQuick(there, library)];
  const titles = new Map(mineLive.compiled.names.map(({ path, title }) => [path, title]));
  const named = new Map([here, there].flatMap(cellsOf).map((cell) => [cell.name, cell]));
  const paths = new Set([here, there].flatMap(pathsOf));
  return [...paths].flatMap((path) => {
    const [mine, its] = [textAt(here, path), textAt(there, path)];
    if (mine === undefined || its === undefined || mine === its || !isCompared(here, path)) return [];
    if ([mine, its].every(isNumber) && isSame(numberTyped(path, mineLive), numberTyped(path, itsLive))) return [];
    return [{ title: titleAt(path, titles, named), here: mine, there: its }];
  });
}

/** The number that is typed there, SI; undefined for a formula, a choice and words. */
function numberTyped(path: string, { compiled, state }: Live): number | undefined {
  const slot = compiled.program.constants.get(path);
  return slot === undefined ? undefined : state.m[slot]!;
}

const isNumber = (text: string): boolean => /^\s*[+\-−]?[.\d]/.test(text);

/** What the rounding of a conversion from one unit to another may do. */
const ROUNDED = 1e-12;

/** 0 g is 0 oz, and 1 in is 25.4 mm. */
const isSame = (mine: number | undefined, its: number | undefined): boolean =>
  mine !== undefined && its !== undefined && Math.abs(mine - its) <= ROUNDED * Math.abs(its);

const pathsOf = (document: Document): readonly string[] =>
  cellsOf(document)
    .filter(isOfDesign)
    .flatMap((cell) =>
      kindOf(cell)
        .texts(cell)
        .map(({ path }) => path),
    );

/** The title of the piece, and of what in it, where that has one. */
function titleAt(path: string, titles: ReadonlyMap<string, string>, named: ReadonlyMap<string, Cell>): string {
  const title = titles.get(path);
  const piece = named.get(path.split('.', 1)[0]!)?.title;
  if (title === undefined) return piece ?? path;
  return piece === undefined || piece === title ? title : `${piece}: ${title}`;
}

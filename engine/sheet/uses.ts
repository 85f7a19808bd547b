import { kindOf, type Text } from './cells/index';
import type { Document } from './document';
import { ownRowTexts } from './own-rows';
import { rename } from './rename';
import { cellsOf } from './sheets';
import { applyChanges } from './transaction';

/** A place that names something: a text of a cell, or a cell as a whole where it names it outside of its texts. */
export interface Use {
  /** Id of the cell; '' for what belongs to none. */
  readonly cell: string;
  readonly path: string;
  /** Only the baseline names it there. */
  readonly baseline?: true;
  /** Only this variant names it there. */
  readonly variant?: string;
}

/**
 * Every place that names the thing at `path` (a cell, a part, an own row of the library …), in reading order. Found by what
 * renaming it would rewrite, so that both always agree. The thing's own texts do not count.
 */
export function usesOf(document: Document, path: string): readonly Use[] {
  const renaming = rename(document, path, nameOfNothing(document));
  if (!renaming.ok) return [];
  const after = applyChanges(document, renaming.changes).document;
  const uses: Use[] = [];
  for (const [k, cell] of cellsOf(document).entries()) {
    const changed = cellsOf(after)[k]!;
    if (changed === cell) continue;
    const texts = changedTexts(kindOf(cell).texts(cell), kindOf(changed).texts(changed));
    const within = texts.filter((text) => !isWithin(text.path, path));
    uses.push(...within.map((text) => ({ cell: cell.id, path: text.path })));
    const owns = kindOf(cell).owns(cell).includes(path);
    if (texts.length === 0 && !owns) uses.push({ cell: cell.id, path: cell.name });
  }
  for (const text of changedTexts(ownRowTexts(document), ownRowTexts(after))) {
    if (!isWithin(text.path, path)) uses.push({ cell: '', path: text.path });
  }
  for (const [k, figure] of document.figures.entries()) {
    if (after.figures[k] !== figure) uses.push({ cell: '', path: figure });
  }
  const named = usesIn(document, document.baseline, after.baseline, path);
  uses.push(...named.map((use): Use => ({ ...use, baseline: true })));
  for (const [k, { name, changes }] of (document.variants ?? []).entries()) {
    uses.push(
      ...usesIn(document, changes, after.variants![k]!.changes, path).map((use) => ({ ...use, variant: name })),
    );
  }
  return uses;
}

const isWithin = (path: string, thing: string): boolean => path === thing || path.startsWith(`${thing}.`);

/** Texts that differ; renaming keeps their order. */
const changedTexts = (before: readonly Text[], after: readonly Text[]): readonly Text[] =>
  before.filter((text, k) => after[k]!.text !== text.text);

type Texts = Readonly<Record<string, string>>;

/** Texts beside the design, by path, that name the thing; renaming it keeps their order. */
function usesIn(document: Document, texts: Texts = {}, after: Texts = {}, path: string): readonly Use[] {
  const renamed = Object.values(after);
  return Object.entries(texts).flatMap(([at, text], k): Use[] => {
    if (renamed[k] === text || isWithin(at, path)) return [];
    const cell = cellsOf(document).find((each) => at === each.name || at.startsWith(`${each.name}.`));
    return [{ cell: cell?.id ?? '', path: at }];
  });
}

function nameOfNothing(document: Document): string {
  const said = JSON.stringify(document);
  let name = 'nothing';
  while (said.includes(name)) name += '_';
  return name;
}

import type { AnyBlock } from '../../blocks/block';
import { renameInFormula } from '../../formula/index';
import { kindOf } from '../../sheet/cells/index';
import type { BlockCell } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import type { Change } from '../../sheet/transaction';
import type { NameInfo } from '../../terms/index';
import { textOf } from './seeds';

/** What others read of a piece and a new kind of it doesn't have: they go on with the number that it is now, or follow it to where it is (`moves`). */
export function settledNames(
  cell: BlockCell,
  was: AnyBlock,
  is: AnyBlock,
  live: Live,
  moves: readonly (readonly [from: string, to: string])[],
): { readonly changes: readonly Change[]; readonly titles: readonly string[] } {
  const { document, names } = live.compiled;
  const goes = names.filter(({ path, cell: holder, options, kind, slot }) => {
    const name = path.slice(cell.name.length + 1);
    const here = holder === cell.id && (name in was.fields || name in was.results);
    const stays = name in is.fields || name in is.results;
    return here && !stays && kind !== 'curve' && !options && Number.isFinite(live.state.m[slot]);
  });
  const read = new Set<NameInfo>();
  const moved = (text: string): string => moves.reduce((now, [from, to]) => renameInFormula(now, from, to), text);
  const path = (at: string): string => moves.find(([from]) => from === at)?.[1] ?? at;
  const formula = (text: string): string =>
    goes.reduce((now, info) => {
      if (!now.includes(info.path)) return now;
      const settled = renameInFormula(now, info.path, `(${textOf(live.state.m[info.slot]!, info.unit)})`);
      if (settled !== now) read.add(info);
      return settled;
    }, moved(text));
  const changes: Change[] = [];
  for (const each of cellsOf(document)) {
    if (each.id === cell.id) continue;
    const changed = kindOf(each).rewrite(each, { formula, path, option: (_, name) => name });
    if (changed !== each) changes.push({ change: 'cell', cell: changed });
  }
  return { changes, titles: [...read].map(({ title }) => title) };
}

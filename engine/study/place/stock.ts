import { inSentence, listed } from '../../sheet/called';
import type { ChoiceCell, ChoiceOption, Document, Part, PartsCell } from '../../sheet/document';
import { freeId, freeName, takenNames } from '../../sheet/free-names';
import { keepingBaseline } from '../../sheet/keep-baseline';
import { faultsOfLive, type Live, openLive } from '../../sheet/live';
import { cellsOf, sheetOfPiece } from '../../sheet/sheets';
import type { Library } from '../../sheet/specs';
import { applyChanges, type Change } from '../../sheet/transaction';
import { fromSI, shownUnit, toSI, writeQuantity } from '../../units/index';
import { balsaStock, facedStock, plyStock, USUAL } from '../first-design/tail-stock';

/** The design with a choice of tail stock in it, and what that does in a sentence. */
export interface StockMade {
  readonly live: Live;
  readonly says: string;
}

/** Sheets that lie at least so far aft as this share of the farthest are the tail. */
const AFT = 0.8;

/**
 * Makes a choice of what the tail is cut from: of its sheets those that are of one wood and one thickness, the heaviest lot of
 * them, are cut from the choice then, which has what they are now picked. Undefined where no tail of sheet is to be found.
 */
export function makeStock(live: Live, library: Library): StockMade | undefined {
  const { document } = live.compiled;
  const lot = tailLot(live);
  if (!lot) return undefined;
  const { table, rows } = lot;
  const choice = choiceOf(rows[0]!, lot.thickness, document);
  const cut = new Set(rows.map(({ name }) => name));
  const cell: PartsCell = {
    ...table,
    rows: table.rows.map((row) => (cut.has(row.name) ? cutFrom(row, choice.name) : row)),
  };
  const sheet = sheetOfPiece(document, table.id)!;
  const at = sheet.pieces.findIndex(({ id }) => id === table.id) + 1;
  const changes: Change[] = [
    { change: 'insert', sheet: sheet.id, at, cell: choice },
    { change: 'cell', cell },
  ];
  const made = openLive(applyChanges(document, keepingBaseline(document, changes)).document, library);
  const known = new Set(faultsOfLive(live).map(({ path }) => path));
  // A formula that reads the thickness of such a part would lose it.
  if (faultsOfLive(made).some(({ path, state }) => state === 'fault' && !known.has(path))) return undefined;
  const parts = listed(rows.map(({ title }) => inSentence(title)));
  const options = choice.options.map(({ title }) => title).join(', ');
  return {
    live: made,
    says: `Makes the choice “${choice.title}”, from which ${parts} ${rows.length === 1 ? 'is' : 'are'} cut: ${options}. What is there now is picked. It stands on the sheet “${sheet.title}”.`,
  };
}

function tailLot({ compiled, state }: Live) {
  const { slotOf } = compiled.program;
  const at = (path: string): number => state.m[slotOf.get(path) ?? -1] ?? Number.NaN;
  const all = cellsOf(compiled.document).flatMap((table) =>
    table.kind === 'parts'
      ? table.rows.map((row) => {
          const path = `${table.name}.${row.name}`;
          return { table, row, x: at(`${path}.x`), mass: at(`${path}.estimate`), thickness: at(`${path}.thickness`) };
        })
      : [],
  );
  const sheets = all.filter(({ row, x, mass }) => row.shape === 'sheet' && x > 0 && mass > 0);
  const farthest = Math.max(...sheets.map(({ x }) => x));
  const lots = new Map<string, typeof sheets>();
  for (const each of sheets) {
    if (each.x < AFT * farthest) continue;
    const key = JSON.stringify([each.table.id, each.row.fields.material, each.row.fields.thickness]);
    lots.set(key, [...(lots.get(key) ?? []), each]);
  }
  const mass = (lot: typeof sheets): number => lot.reduce((sum, each) => sum + each.mass, 0);
  const [lot] = [...lots.values()].sort((a, b) => mass(b) - mass(a));
  return lot && { table: lot[0]!.table, thickness: lot[0]!.thickness, rows: lot.map(({ row }) => row) };
}

function cutFrom({ fields: { thickness: _, material: __, ...fields }, ...row }: Part, stack: string): Part {
  return { ...row, shape: 'stack', fields: { ...fields, stack } };
}

/** What is there now first, and as stiff as is usual beside it what else tails are cut from. */
function choiceOf({ fields }: Part, thickness: number, document: Document): ChoiceCell {
  const { material = '', thickness: text = '' } = fields;
  const unit = shownUnit('mm', document.units);
  const beside = (share: number): string =>
    writeQuantity(toSI(Number(fromSI(thickness * share, unit).toPrecision(2)), unit), unit);
  const now: ChoiceOption = {
    ...{ name: 'as_now', title: 'as it is now', pattern: 'plain' },
    layers: [{ name: 'sheet', material, text }],
  };
  const isPly = material === 'light_ply';
  const { balsa, core, ply } = USUAL;
  const as = isPly ? ply : balsa;
  return {
    ...{ kind: 'choice', id: freeId(document), name: freeName('tail_stock', takenNames(document)) },
    ...{ title: 'Tail stock', of: 'stack', columns: [], text: now.name },
    options: [now, facedStock(beside(core / as)), isPly ? balsaStock(beside(balsa / as)) : plyStock(beside(ply / as))],
  };
}

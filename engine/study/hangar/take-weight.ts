import { listed } from '../../sheet/called';
import type { BlockCell, Document, Part, PartsCell } from '../../sheet/document';
import { keepingBaseline } from '../../sheet/keep-baseline';
import { cellsOf } from '../../sheet/sheets';
import { applyChanges } from '../../sheet/transaction';
import type { Settled } from './settled';

interface Row {
  readonly table: PartsCell;
  readonly part: Part;
}

/** What goes with an engine or motor, by its title. */
const BELONGS = /\b(?:propeller|spinner|silencer|muffler|tank|fuel|battery|pack|controller)\b/i;
const ENGINE = /^(?:engine|motor)\b/i;
/** What stays where the other stood. */
const PLACE = ['x', 'y', 'z'] as const;

/**
 * The design with the weight of an engine in the place of that of its own, where both have a row for it: it stands at the station that the
 * engine has, or is called engine or motor. It says which rows belong to the engine and did not come with it.
 */
export function takeWeight(
  { document, own }: { readonly document: Document; readonly own: BlockCell },
  { from, its }: { readonly from: Document; readonly its: BlockCell },
  settled: Settled,
): { readonly document: Document; readonly done: string } {
  const [mine, theirs] = [rowOf(document, own), rowOf(from, its)];
  const others = rowsOf(from).filter(({ part }) => part !== theirs?.part && BELONGS.test(part.title));
  const left = others.length === 0 ? '' : ` Not taken with it: ${listed(others.map(({ part }) => `“${part.title}”`))}.`;
  const mass = theirs ? settled.value(`${theirs.table.name}.${theirs.part.name}.mass`) : '';
  if (!mine || !theirs || mass === '') {
    return { document, done: ` Its weight is a row of the parts: take or type that too.${left}` };
  }
  const { weighed_as: _, ...row } = mine.part;
  const stays = PLACE.flatMap((field) =>
    mine.part.fields[field] === undefined ? [] : [[field, mine.part.fields[field]]],
  );
  const part: Part = {
    ...row,
    title: theirs.part.title,
    shape: 'point',
    fields: { ...Object.fromEntries(stays), mass },
  };
  const cell = { ...mine.table, rows: mine.table.rows.map((each) => (each === mine.part ? part : each)) };
  return {
    document: applyChanges(document, keepingBaseline(document, [{ change: 'cell', cell }])).document,
    done: ` Its weight came with it: “${theirs.part.title}”, ${mass}, in the place of “${mine.part.title}”.${left}`,
  };
}

const rowsOf = (document: Document): readonly Row[] =>
  cellsOf(document).flatMap((cell) => (cell.kind === 'parts' ? cell.rows.map((part) => ({ table: cell, part })) : []));

function rowOf(document: Document, { fields }: BlockCell): Row | undefined {
  const rows = rowsOf(document).filter(({ part }) => !part.fuel);
  const station = fields.station?.trim() ?? '';
  const there = station === '' ? [] : rows.filter(({ part }) => part.fields.x?.trim() === station);
  return (
    there.find(({ part }) => ENGINE.test(part.title)) ?? rows.find(({ part }) => ENGINE.test(part.title)) ?? there[0]
  );
}

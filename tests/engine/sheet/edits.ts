import type { Document, Part, PartsCell } from '../../../engine/sheet/document';
import { textAt } from '../../../engine/sheet/paths';
import { rename } from '../../../engine/sheet/rename';
import { cellsOf } from '../../../engine/sheet/sheets';
import type { Change } from '../../../engine/sheet/transaction';
import { weighingPart } from '../../../engine/sheet/weighed-as';
import type { Random } from './random';
import { part } from './small';

/** A random edit of the small design, in words and as changes. */
export interface RandomEdit {
  readonly says: string;
  readonly changes: readonly Change[];
}

const setText = (path: string, text: string): RandomEdit => ({
  says: `${path} := ${text}`,
  changes: [{ change: 'text', path, text }],
});

/** Names change in the course of a sequence, so they are looked up by the cell's id or by place. */
function namesIn(document: Document) {
  const variables = cellsOf(document).find((cell) => cell.id === 'id_set_these');
  const rows = variables?.kind === 'variables' ? variables.rows.map((row) => row.name) : [];
  const cell = (id: string): string => cellsOf(document).find((each) => each.id === id)!.name;
  return { station: rows[0]!, weight: rows[1]!, length: rows[2]!, cell };
}

const partsOf = (document: Document): PartsCell =>
  cellsOf(document).find((cell): cell is PartsCell => cell.kind === 'parts')!;

const KINDS: readonly ((document: Document, random: Random) => RandomEdit | undefined)[] = [
  // Values.
  (d, r) => setText(namesIn(d).station, `${-190 + r.below(60)}`),
  (d, r) => setText(namesIn(d).length, `${15 + r.below(7)} m`),
  (d, r) => setText(namesIn(d).weight, r.pick(['21 g', '0.5 oz', '30', '0'])),
  (d, r) => setText(`${partsOf(d).name}.fuel`, r.pick(['0', '0.5', '1', '2', ''])),
  (d, r) => setText(`${namesIn(d).cell('id_lap')}.height`, r.pick(['', '2 m', '12 m', '3 m'])),
  (d, r) => setText(`${namesIn(d).cell('id_motor')}.lost`, r.pick(['', '1 N', '7.9 N'])),
  (d, r) => setText(`${namesIn(d).cell('id_motor')}.pull`, r.pick(['', '8 N', '2 N', '1 N'])),
  (d, r) => setText(`${namesIn(d).cell('id_cord')}.make`, r.pick(['', 'solid', 'two-ply', 'stranded'])),
  (d, r) => {
    const rows = partsOf(d).rows;
    if (rows.length === 0) return undefined;
    const path = `${partsOf(d).name}.${r.pick(rows).name}.weighed`;
    const text = r.pick(['', '17 g', '12']);
    return { says: `${path} := ${text}`, changes: weighingPart(d, path, text)! };
  },
  // Formulas in place of constants and back.
  (d, r) => {
    const { weight, station, length } = namesIn(d);
    return setText(weight, r.pick([`20 g + 1 g × (${length} / 1 m)`, `10 g × (${station} / -100 mm)`, '21 g']));
  },
  // Choices.
  (d, r) => {
    const cell = cellsOf(d).find((each) => each.id === 'id_tail_stock')!;
    return cell.kind === 'choice' ? setText(cell.name, r.pick(cell.options).name) : undefined;
  },
  (d, r) => setText(namesIn(d).cell('id_cord_set'), r.pick(['thin', 'thick'])),
  // Part rows added, removed, put in another order.
  (d, r) => {
    const cell = partsOf(d);
    const stock = namesIn(d).cell('id_tail_stock');
    const name = `extra_${r.below(1000)}`;
    if (cell.rows.some((row) => row.name === name)) return undefined;
    const row = r.pick<Part>([
      part(name, 'point', { mass: '12 g', x: '100' }),
      part(name, 'stack', { area: '1 dm²', stack: stock, x: '400' }),
      part(name, 'rod', { length: '300', diameter: '3', material: 'hard_wood', x: '50', coats_area: '20', coat: '80' }),
      part(name, 'sheet', { area: '1 dm²', thickness: '2', x: '0' }),
    ]);
    const rows = cell.rows.toSpliced(r.below(cell.rows.length + 1), 0, row);
    return { says: `add ${name}`, changes: [{ change: 'cell', cell: { ...cell, rows } }] };
  },
  (d, r) => {
    const cell = partsOf(d);
    const k = r.below(cell.rows.length);
    return {
      says: `remove ${cell.rows[k]?.name}`,
      changes: [{ change: 'cell', cell: { ...cell, rows: cell.rows.toSpliced(k, 1) } }],
    };
  },
  // Break and mend.
  (d, r) => setText(namesIn(d).station, r.pick(['12 kg', '3 +', 'nothing_there', '-150', '-150'])),
  (d, r) => setText(`${namesIn(d).cell('id_cord')}.length`, r.pick(['', '12 furlong', namesIn(d).length, '50 m'])),
  (d) => setText(namesIn(d).weight, `0.1 × ${partsOf(d).name}.mass`),
  (d, r) => setText(namesIn(d).cell('id_cg_band'), r.pick([`${partsOf(d).name}.x`, 'gone.x', namesIn(d).weight])),
  (d, r) => {
    const cell = cellsOf(d).find((each) => each.id === 'id_tail_stock')!;
    if (cell.kind !== 'choice') return undefined;
    const option = r.pick(cell.options);
    const layer = r.pick(option.layers!);
    const path = `${cell.name}.${option.name}.${layer.name}`;
    return r.below(2)
      ? setText(`${path}.material`, r.pick(['soft_wood', 'odd_stuff', 'no_wood', '']))
      : setText(path, r.pick(['2 mm', '0.4 mm', '30 g/m²', '-1 mm']));
  },
  (_, r) => {
    const line = r.pick(['lap.pull + 1 N', 'parts.x', 'nothing', '12 mm', '12 g', 'reserve']);
    return setText('reserve', line);
  },
  // Names.
  (d, r) => {
    const { station, weight, cell } = namesIn(d);
    const path = r.pick([station, weight, cell('id_cord'), cell('id_tail_stock'), cell('id_parts'), 'soft_wood']);
    const renaming = rename(d, path, `named_${r.below(1000)}`);
    return renaming.ok ? { says: `rename ${path}`, changes: renaming.changes } : undefined;
  },
  (d, r) => {
    const cell = partsOf(d);
    if (cell.rows.length === 0) return undefined;
    const path = `${cell.name}.${r.pick(cell.rows).name}`;
    const renaming = rename(d, path, `part_${r.below(1000)}`);
    return renaming.ok ? { says: `rename ${path}`, changes: renaming.changes } : undefined;
  },
  // Cells.
  (d, r) => ({
    says: 'move a cell',
    changes: [{ change: 'move', id: r.pick(cellsOf(d)).id, sheet: 's1', to: r.below(cellsOf(d).length) }],
  }),
  (d, r) => {
    const at = cellsOf(d).findIndex((cell) => cell.id === 'id_spare');
    if (at >= 0) return { says: 'remove the spare cord', changes: [{ change: 'remove', id: 'id_spare' }] };
    const cell = { kind: 'model', id: 'id_spare', name: 'spare', title: '', of: 'cord', fields: {} } as const;
    return {
      says: 'add a spare cord',
      changes: [{ change: 'insert', sheet: 's1', at: r.below(cellsOf(d).length + 1), cell }],
    };
  },
  (_, r) => ({
    says: 'units',
    changes: [{ change: 'head', head: { units: r.pick(['metric', 'inch_pound'] as const) } }],
  }),
];

/** Draws until an edit comes up that can be made on this document. */
export function randomEdit(document: Document, random: Random): RandomEdit {
  for (;;) {
    const edit = random.pick(KINDS)(document, random);
    if (edit && canApply(document, edit)) return edit;
  }
}

const canApply = (document: Document, { changes }: RandomEdit): boolean =>
  changes.every((change) => change.change !== 'text' || textAt(document, change.path) !== undefined);

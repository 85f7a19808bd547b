import type { Part, PartField, PartsCell, TableDescription } from '../../../engine/index';
import { FaultFlag } from '../../controls/fault-flag';
import { Combobox } from '../../controls/pick/index';
import { OwnRows } from '../../library/own-rows';
import { NamedRowTold } from '../../library/row-told';
import { RowsPick } from '../../library/rows-pick';
import { titleTold } from '../../library/told';
import { useSheet } from '../../store/context';
import { massOfRow } from './edits';
import { takenNames } from './taken';
import { sizeTexts, tradeSizes } from './trade-sizes';

interface PickProps {
  readonly table: string;
  readonly part: Part;
}

const WEIGHTS = ['small_parts', 'engines', 'motors', 'packs'] as const;
const RUNS = ['wire', 'tubes', 'line_kinds'] as const;

const useTables = (names: readonly string[]): readonly TableDescription[] => {
  const sheet = useSheet();
  return names.flatMap((name) => sheet.tableNamed(name) ?? []);
};

const tableOf = (tables: readonly TableDescription[], name: string, own: readonly { name: string; table: string }[]) =>
  tables.find((each) => each.rows.some((row) => row.name === name)) ??
  tables.find((each) => own.some((row) => row.name === name && row.table === each.name));

interface MassProps {
  readonly cell: PartsCell;
  readonly part: Part;
  /** The part goes on under another name. */
  onOpen(name: string): void;
}

/** The mass of one, taken from a row of the library that has one: a screw, a wheel, a pack, an engine. */
export function MassFromLibrary({ cell, part, onOpen }: MassProps) {
  const sheet = useSheet();
  const tables = useTables(WEIGHTS);
  const name = /^\s*(\w+)\.mass\s*$/.exec(part.fields.mass ?? '')?.[1] ?? '';
  const found = tableOf(tables, name, sheet.part('rows'));
  const small = tables[0];
  const titleOf = (row: string): string => {
    const known = tables.flatMap(({ rows }) => rows).find((each) => each.name === row);
    const own = sheet.part('rows').find((each) => each.name === row);
    return own?.title ?? (known ? titleTold(known, sheet.units()) : row);
  };
  const pick = (row: string): void =>
    sheet.edit((document) => {
      const taken = takenNames(sheet, cell);
      const { changes, name: called } = massOfRow(document, cell.name, part, { name: row, title: titleOf(row) }, taken);
      if (called !== part.name) onOpen(called);
      return changes;
    }, part.title);
  return (
    <div class="part-field">
      <span class="part-field-title">From the library</span>
      <RowsPick
        tables={tables}
        column="mass"
        label={`${part.title}, mass from the library`}
        value={found ? name : ''}
        placeholder="screw, wheel, pack …"
        onPick={pick}
      />
      {found ? <NamedRowTold table={found} name={name} /> : <p class="aside">Gives the mass of one.</p>}
      {small && <OwnRows table={small} onAdd={(row) => pick(row.name)} />}
    </div>
  );
}

/** The wire, line or tube that a part is a length of. */
export function WirePick({ table, part, field }: PickProps & { field: PartField }) {
  const sheet = useSheet();
  const tables = useTables(RUNS);
  const path = `${table}.${part.name}.${field.name}`;
  const text = part.fields[field.name] ?? '';
  const ending = '.linear_mass';
  const choices = [...sheet.names.value.values()]
    .filter((info) => info.kind === 'choice' && info.path.endsWith(ending))
    .map((info) => info.path.slice(0, -ending.length))
    .map((name) => ({ value: name, title: name.replaceAll('_', ' '), group: 'choices of this design' }));
  const found = tableOf(tables, text, sheet.part('rows')) ?? tables[0];
  const fault = sheet.faultAt(path);
  return (
    <div class="part-field">
      <span class="part-field-title">{field.title}</span>
      <RowsPick
        tables={tables}
        column="linear_mass"
        label={`${part.title}, wire, line or tube`}
        path={path}
        value={text}
        before={choices}
        onPick={(name) => sheet.setText(path, name)}
      />
      {found && <NamedRowTold table={found} name={text} />}
      {found && <OwnRows table={found} onAdd={(row) => sheet.setText(path, row.name)} />}
      {fault && <FaultFlag fault={fault} />}
    </div>
  );
}

/** Thickness over chord from a section of the library, or from the wing. */
export function SectionPick({ table, part }: PickProps) {
  const sheet = useSheet();
  const tables = useTables(['sections']);
  const path = `${table}.${part.name}.section_thickness`;
  const text = (part.fields.section_thickness ?? '').trim();
  const wings = [...sheet.names.value.values()]
    .filter(({ path: each }) => each.endsWith('.thickness_ratio'))
    .map(({ path: each }) => ({
      value: each,
      title: `as ${each.slice(0, each.indexOf('.')).replaceAll('_', ' ')} has it`,
    }));
  const value = wings.some((wing) => wing.value === text) ? text : (/^(\w+)\.thickness$/.exec(text)?.[1] ?? '');
  return (
    <div class="part-field">
      <span class="part-field-title">Section</span>
      <RowsPick
        tables={tables}
        column="thickness"
        label={`${part.title}, section`}
        value={value}
        placeholder="thickness of a section …"
        before={wings}
        onPick={(name) => sheet.setText(path, name.includes('.') ? name : `${name}.thickness`)}
      />
      <p class="aside">Gives the thickness over chord below.</p>
    </div>
  );
}

/** Sizes in which wood is sold, written into the texts of the shape. */
export function SizeOfTrade({ table, part }: PickProps) {
  const sheet = useSheet();
  const stock = sheet.tableNamed('stock');
  const sizes = tradeSizes(part.shape, stock?.rows ?? [], sheet.units());
  if (sizes.length === 0) return null;
  const said = sizes.find((row) => sizeTexts(part, row).every(([field, text]) => part.fields[field]?.trim() === text));
  return (
    <div class="part-field">
      <span class="part-field-title">Size of the trade</span>
      <Combobox
        id={`${table}-${part.name}-size`}
        label={`${part.title}, size of the trade`}
        value={said?.name ?? ''}
        options={sizes.map((row) => ({ value: row.name, title: row.title, group: row.group }))}
        placeholder="1/16, 2 × 5 …"
        onPick={(name) => {
          const row = sizes.find((each) => each.name === name)!;
          const texts = sizeTexts(part, row).map(([field, text]) => [`${table}.${part.name}.${field}`, text] as const);
          sheet.setTexts(texts, `the size of ${part.title}`);
        }}
      />
      <p class="aside">Writes what it is sold as into the lines below.</p>
    </div>
  );
}

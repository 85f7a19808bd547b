import {
  applyChanges,
  type Cell,
  type Change,
  cellsOf,
  type Document,
  freeName,
  isOwnName,
  keptWhenWeighed,
  nameFromTitle,
  type Part,
  type PartShape,
  type PartsCell,
  partFields,
  rename,
  shownUnit,
  type UnitSet,
  weighingPart,
  withUnit,
} from '../../../engine/index';

/** A part put in after another; the last place without one. */
export function withPart(cell: PartsCell, part: Part, after?: string): PartsCell {
  const at = after === undefined ? -1 : cell.rows.findIndex((row) => row.name === after);
  return { ...cell, rows: cell.rows.toSpliced(at < 0 ? cell.rows.length : at + 1, 0, part) };
}

/**
 * The edits that add a part which weighs something. It is put in as weighing nothing and given its weight afterwards, so that a
 * baseline, which has no parts of its own, takes it as weighing nothing and the change shows.
 */
export function addingPart(cell: PartsCell, part: Part, after?: string): readonly Change[] {
  const { weighed = '' } = part.fields;
  return [
    { change: 'cell', cell: withPart(cell, weightless(part), after) },
    { change: 'text', path: `${cell.name}.${part.name}.weighed`, text: weighed },
  ];
}

const weightless = (part: Part): Part => ({ ...part, fields: { ...part.fields, weighed: '0 g' } });

/** The same of many parts, below those that are there. What is weighed keeps what it is made of. */
export function addingParts(document: Document, cell: PartsCell, parts: readonly Part[]): readonly Change[] {
  const changes: Change[] = [{ change: 'cell', cell: { ...cell, rows: [...cell.rows, ...parts.map(weightless)] } }];
  let now = applyChanges(document, changes).document;
  for (const part of parts) {
    const { name, fields } = part;
    const path = `${cell.name}.${name}.weighed`;
    const text = fields.weighed ?? '';
    const weighing = weighingPart(now, path, text) ?? [{ change: 'text', path, text }];
    now = applyChanges(now, weighing).document;
    changes.push(...weighing);
    if (part.weighed_as === undefined && keptWhenWeighed(part).length === 0) continue;
    // It says itself what it was when it was on the scale.
    const table = cellsOf(now).find((each): each is PartsCell => each.id === cell.id)!;
    const own: Change = {
      change: 'cell',
      cell: { ...table, rows: table.rows.map((row) => (row.name === name ? part : row)) },
    };
    now = applyChanges(now, [own]).document;
    changes.push(own);
  }
  return changes;
}

/** What a part is called until somebody says otherwise. */
const NEW_TITLE = 'New part';

/** Weighs nothing and stands at the datum until somebody says otherwise, so that the sheet stays settled. */
export const newPart = (taken: ReadonlySet<string>, set: UnitSet = 'metric'): Part => ({
  name: freeName('new_part', taken),
  title: NEW_TITLE,
  shape: 'point',
  fields: { mass: `0 ${shownUnit('g', set)}`, x: `0 ${shownUnit('mm', set)}` },
});

export function copyOf(part: Part, taken: ReadonlySet<string>): Part {
  return { ...part, name: freeName(part.name, taken), title: `${part.title}, copy` };
}

export const withoutPart = (cell: PartsCell, name: string): PartsCell => ({
  ...cell,
  rows: cell.rows.filter((row) => row.name !== name),
});

/** Moves a part by places, as far as the ends of the table. */
export function movePart(cell: PartsCell, name: string, by: number): PartsCell {
  const at = cell.rows.findIndex((row) => row.name === name);
  const to = Math.max(0, Math.min(cell.rows.length - 1, at + by));
  return at < 0 || to === at ? cell : { ...cell, rows: cell.rows.toSpliced(at, 1).toSpliced(to, 0, cell.rows[at]!) };
}

export function changePart(cell: PartsCell, name: string, change: (part: Part) => Part): PartsCell {
  return { ...cell, rows: cell.rows.map((row) => (row.name === name ? change(row) : row)) };
}

/** What a needed text says until somebody says otherwise. */
export interface FirstTexts {
  readonly material: string;
  readonly stack: string;
  readonly wire: string;
}

/** The part in another shape. What the old shape had is kept for the day it changes back; what the new one needs and lacks begins at nothing. */
export function reshaped(part: Part, shape: PartShape, first: FirstTexts, set: UnitSet = 'metric'): Part {
  const fields: Record<string, string> = { ...part.fields };
  for (const field of partFields(shape)) {
    if (field.blank !== undefined || (fields[field.name] ?? '') !== '') continue;
    const text = field.dimension ? withUnit('0', shownUnit(field.unit, set)) : first[field.name as keyof FirstTexts];
    if (text !== '') fields[field.name] = text;
  }
  return { ...part, shape, fields };
}

export function withFuel(part: Part, fuel: boolean): Part {
  const { fuel: _, ...rest } = part;
  return fuel ? { ...rest, fuel } : rest;
}

/** Gives a part another title. A name that came from the old title by itself follows, with every formula that says it. */
export function retitle(
  document: Document,
  table: string,
  part: Part,
  title: string,
  taken: ReadonlySet<string>,
): { readonly changes: readonly Change[]; readonly name: string } {
  const others = new Set([...taken].filter((name) => name !== part.name));
  const wanted = nameFromTitle(title);
  const name = isOwnName(part.name, part.title) && wanted !== '' ? freeName(wanted, others) : part.name;
  const renamed = rename(document, `${table}.${part.name}`, name);
  const changes = renamed.ok ? renamed.changes : [];
  const kept = renamed.ok ? name : part.name;
  const now = cellsOf(applyChanges(document, changes).document).find((cell: Cell) => cell.name === table);
  if (now?.kind !== 'parts') return { changes, name: kept };
  const cell = changePart(now, kept, (row) => ({ ...row, title }));
  return { changes: [...changes, { change: 'cell', cell }], name: kept };
}

/** The mass of one from a row that has one; a part that nobody has called anything yet is called as the row is. */
export function massOfRow(
  document: Document,
  table: string,
  part: Part,
  row: { readonly name: string; readonly title: string },
  taken: ReadonlySet<string>,
): { readonly changes: readonly Change[]; readonly name: string } {
  const mass: Change = { change: 'text', path: `${table}.${part.name}.mass`, text: `${row.name}.mass` };
  if (part.title !== NEW_TITLE) return { changes: [mass], name: part.name };
  const called = retitle(applyChanges(document, [mass]).document, table, part, row.title, taken);
  return { ...called, changes: [mass, ...called.changes] };
}

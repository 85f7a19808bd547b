/** Brings a file of one version to the next. A pure function of plain data: it must not lean on today's types. */
export interface Migration {
  /** The version it takes; it gives the next. */
  readonly from: number;
  migrate(file: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>>;
}

/** In order, without gaps, from version 1. Each has a test on a stored file of its version. */
export const migrations: readonly Migration[] = [
  { from: 1, migrate: materialsToRows },
  { from: 2, migrate: modelSizeToRoughness },
];

/** Brings a file to `version`, step by step. Throws RangeError for a gap in the list: a mistake of the program. */
export function bringUp(
  file: Readonly<Record<string, unknown>>,
  from: number,
  version: number,
  list: readonly Migration[],
): Readonly<Record<string, unknown>> {
  let now = file;
  for (let at = from; at < version; at++) {
    const step = list.find((migration) => migration.from === at);
    if (!step)
      throw new RangeError(`No migration takes a file of version ${at}; each version up to ${version} needs one`);
    now = { ...step.migrate(now), version: at + 1 };
  }
  return now;
}

/** Version 1 had own materials only; a source could be left blank. */
function materialsToRows({ materials, ...file }: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  if (!Array.isArray(materials)) return { ...file, rows: materials };
  return { ...file, rows: materials.map((each: unknown) => (isGroup(each) ? materialToRow(each) : each)) };
}

function materialToRow({ density, modulus, source, ...row }: Readonly<Record<string, unknown>>) {
  const values = modulus === '' ? { density } : { density, modulus };
  return { ...row, table: 'materials', source: source === '' ? 'not said' : source, values };
}

/**
 * Up to version 2 a wing had factors for model size on full-size drag and greatest lift; from 3 on factors for roughness on what is measured
 * at the Reynolds number of the model. At the usual one, 360 000, a section of 12 % measures 1.36 times the full-size drag and
 * 0.62 times the full-size lift, so that a typed factor goes on meaning nearly the same.
 */
const ROUGHNESS = [
  { old: 'low_re_factor', name: 'roughness_factor', over: '1.36' },
  { old: 'low_re_lift_factor', name: 'roughness_lift_factor', over: '0.62' },
] as const;

function modelSizeToRoughness(file: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>> {
  return renamedWithin(Array.isArray(file.cells) ? { ...file, cells: file.cells.map(wingToRoughness) } : file);
}

function wingToRoughness(cell: unknown): unknown {
  if (!isGroup(cell) || cell.block !== 'wing' || !isGroup(cell.fields)) return cell;
  const fields: Record<string, unknown> = { ...cell.fields };
  for (const { old, name, over } of ROUGHNESS) {
    if (!(old in fields)) continue;
    const text = fields[old];
    delete fields[old];
    fields[name] = typeof text === 'string' ? `(${text}) / ${over}` : text;
  }
  return { ...cell, fields };
}

/** The file with the new names wherever a text or a path names the old ones after a dot. */
function renamedWithin<T>(value: T): T {
  if (typeof value === 'string') return renamed(value) as T;
  if (Array.isArray(value)) return value.map(renamedWithin) as T;
  if (!isGroup(value)) return value;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [renamed(key), renamedWithin(each)])) as T;
}

const renamed = (text: string): string =>
  ROUGHNESS.reduce((now, { old, name }) => now.replaceAll(new RegExp(`\\.${old}\\b`, 'g'), `.${name}`), text);

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

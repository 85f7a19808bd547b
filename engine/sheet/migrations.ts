/** Brings a file of one version to the next. A pure function of plain data: it must not lean on today's types. */
export interface Migration {
  /** The version it takes; it gives the next. */
  readonly from: number;
  migrate(file: Readonly<Record<string, unknown>>): Readonly<Record<string, unknown>>;
}

/** In order, without gaps, from version 1. Each has a test on a stored file of its version. */
export const migrations: readonly Migration[] = [{ from: 1, migrate: materialsToRows }];

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

const isGroup = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

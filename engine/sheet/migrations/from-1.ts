import { isGroup, type Plain } from './plain';

/** Version 1 had own materials only; a source could be left blank. */
export function materialsToRows({ materials, ...file }: Plain): Plain {
  if (!Array.isArray(materials)) return { ...file, rows: materials };
  return { ...file, rows: materials.map((each: unknown) => (isGroup(each) ? materialToRow(each) : each)) };
}

function materialToRow({ density, modulus, source, ...row }: Plain) {
  const values = modulus === '' ? { density } : { density, modulus };
  return { ...row, table: 'materials', source: source === '' ? 'not said' : source, values };
}

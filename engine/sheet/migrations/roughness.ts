import { isGroup, type Plain } from './plain';

/**
 * Up to version 2 a wing had factors for model size on full-size drag and greatest lift; from 3 on factors for roughness on what is measured
 * at the Reynolds number of the model. At the usual one, 360 000, a section of 12 % measures 1.36 times the full-size drag and
 * 0.62 times the full-size lift, so that a typed factor goes on meaning nearly the same.
 */
const ROUGHNESS = [
  { old: 'low_re_factor', name: 'roughness_factor', over: '1.36' },
  { old: 'low_re_lift_factor', name: 'roughness_lift_factor', over: '0.62' },
] as const;

export function modelSizeToRoughness(file: Plain): Plain {
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

import { type UnitSet, unitNamed, withUnit } from '../units/index';
import { checkFormula } from './check';
import { compileFormula } from './compile';
import { type Expression, isFixed, type Literal } from './expression';
import type { FormulaFault } from './fault';
import { readText } from './parse';
import { constantOf } from './value';

/** A number typed into an entry that takes no names: a form, a log, a paste. */
interface EntryRead {
  readonly ok: true;
  readonly si: number;
  /** The unit in which it was typed; that of the entry for a bare number. */
  readonly unit: string;
}

export type EntryResult = EntryRead | { readonly ok: false; readonly fault: FormulaFault };

/** Reads a number as fliers write it. A bare one is in the unit that the entry shows; sums without names are worked out. */
export function readEntry(text: string, unit: string, set: UnitSet = setOf(unit)): EntryResult {
  const { dimension } = unitNamed(unit)!;
  const read = readText(text, unit, set);
  if (!read.ok) return read;
  const checked = checkFormula(read.expression, noNames, () => [], { kind: 'quantity', dimension }, { set, unit });
  if (!checked.ok) return checked;
  const { expression } = checked;
  const si =
    constantOf(expression) ?? (isFixed(expression) ? compileFormula(expression, () => 0)(NOTHING, 0) : Number.NaN);
  return { ok: true, si, unit: literalIn(expression)?.unit ?? unit };
}

const noNames = (): undefined => undefined;
const NOTHING = new Float64Array(0);

const setOf = (unit: string): UnitSet => (unitNamed(unit)?.system === 'inch_pound' ? 'inch_pound' : 'metric');

/** The one number that a text consists of, with or without a sign. */
export function literalIn(e: Expression): Literal | undefined {
  if (e.kind === 'literal') return e;
  return e.kind === 'negative' && e.of.kind === 'literal' ? e.of : undefined;
}

/** The unit in which a text was typed that is one number with its unit; undefined for a bare number and everything else. */
export function typedUnit(text: string): string | undefined {
  const read = readText(text, '');
  return (read.ok && literalIn(read.expression)?.unit) || undefined;
}

/** The text to keep of what was typed where `unit` is shown and a bare number is read in `bare`: one in the unit shown says so. */
export function keptText(text: string, unit: string, bare: string): string {
  if (unit === bare || unit === '') return text;
  const read = readText(text, '');
  const literal = read.ok ? literalIn(read.expression) : undefined;
  return literal?.unit === '' ? withUnit(text.trim(), unit) : text;
}

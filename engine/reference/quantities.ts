import {
  type AnySpecs,
  type Curve,
  type Field,
  isCurve,
  isLink,
  isOption,
  isOptional,
  type Option,
  type Result,
} from '../blocks/block';
import { formatNumber, formatQuantity, fromSI, toSI, writeQuantity } from '../units/index';
import type { EntryPiece } from './chapter';

/** Digits to which limits and bands are written. */
const DIGITS = 4;
const PRACTICE = 'common practice, no source';

/** A field or a result as an entry; `id` is where links to it lead, `path` what formulas call it. */
export function quantityEntry(id: string, path: string, spec: AnySpecs[string]): EntryPiece {
  const head = { kind: 'entry', id, name: path } as const;
  if (isLink(spec)) {
    const facts = [`${isOptional(spec) ? 'where it is there, ' : ''}another piece of the sheet: ${spec.link}`];
    return { ...head, symbol: '', title: `Takes from: ${spec.link}`, doc: spec.doc, facts, notes: [] };
  }
  const { symbol, title, doc } = spec;
  if (isOption(spec)) return { ...head, symbol, title, doc, facts: optionFacts(spec), notes: [] };
  if (isCurve(spec)) return { ...head, symbol, title, doc, facts: curveFacts(spec), notes: [] };
  return { ...head, symbol, title, doc, facts: facts(spec), notes: notes(spec) };
}

/** "mm or in", "g", "plain number". */
export function unitWords(spec: Pick<Field, 'unit' | 'tradeUnit' | 'suffix'>): string {
  const metric = spec.unit || spec.suffix;
  const trade = spec.tradeUnit ?? spec.unit;
  if (!metric) return 'plain number';
  return trade !== '' && trade !== spec.unit ? `${metric} or ${trade}` : metric;
}

const optionFacts = (spec: Option): readonly string[] => [
  `one of ${spec.option.join(', ')}`,
  `default ${spec.default}`,
];

const curveFacts = (spec: Curve): readonly string[] => [
  spec.unit === '' ? 'plain number' : spec.unit,
  spec.curve === 'airspeed'
    ? 'a curve against airspeed, not a single number'
    : 'a table over advance ratio and tip speed that other pieces read, not a single number',
];

const isField = (spec: Field | Result): spec is Field => 'range' in spec;

function facts(spec: Field | Result): string[] {
  const told = [unitWords(spec)];
  if (isField(spec)) {
    const shown = Number(fromSI(spec.default, spec.unit).toPrecision(6));
    const stands = writeQuantity(toSI(shown, spec.unit), spec.unit).replace('-', '−');
    told.push(Number.isNaN(spec.default) ? 'estimated where nothing is typed' : `default ${stands}`);
    told.push(band(spec.range, spec));
    if (spec.advanced) told.push('closed at first in the form');
  } else if (spec.usual) {
    told.push(`usually ${band(spec.usual, spec)} (${PRACTICE})`);
  }
  return told;
}

/** "20 to 2000 mm". */
export function band([low, high]: readonly [number, number], spec: Pick<Field, 'unit' | 'suffix'>): string {
  const options = { significant: DIGITS, ...(spec.suffix ? { suffix: spec.suffix } : {}) };
  return `${formatNumber(fromSI(low, spec.unit), DIGITS)} to ${formatQuantity(high, spec.unit, options)}`;
}

function notes(spec: Field | Result): string[] {
  const told: string[] = [];
  if ('taken' in spec && spec.taken)
    told.push(`While nothing is typed: ${spec.taken}, where the design has that piece.`);
  if ('basis' in spec && spec.basis) told.push(`Default: ${spec.basis}`);
  if (spec.source) told.push(`Source: ${spec.source}.`);
  return told;
}

import {
  checkFormula,
  constantOf,
  type Expression,
  type FormulaFault,
  namesOf,
  type ParseResult,
  type Repair,
  readText,
  type ValueType,
} from '../formula/index';
import {
  type Dimension,
  describeDimension,
  everydayUnit,
  formatQuantity,
  ONE,
  sameDimension,
  shownUnit,
  toSI,
  type UnitSet,
  unitNamed,
  unparted,
} from '../units/index';
import { named } from './named';
import type { Reach, TextSpec } from './specs';

/** What a text turned out to be. */
export type Reading =
  | { readonly is: 'constant'; readonly value: number; readonly type: ValueType | undefined }
  | {
      readonly is: 'formula';
      readonly type: ValueType;
      readonly expression: Expression;
      readonly reads: ReadonlyMap<string, Reach>;
      readonly indices?: readonly number[];
    }
  | {
      readonly is: 'fault';
      readonly from?: number;
      readonly to?: number;
      readonly message: string;
      readonly repair?: Repair;
    }
  /** Nothing wrong with it, but the type of these isn't known, because they are at fault themselves. */
  | { readonly is: 'waits'; readonly on: readonly Reach[] };

export interface Reader {
  find(path: string): Reach | undefined;
  /** Every path that a formula may read. */
  readable(): readonly string[];
  /** The units of the design, in which examples are given. */
  readonly set: UnitSet;
}

/** What is wanted of a text: the type and the unit of a bare number. Type missing: anything. */
interface Asked {
  readonly unit: string;
  /** The unit that its entry shows. */
  readonly shown: string;
  readonly type: ValueType | undefined;
}

/** What is read where a text is blank: the name of what stands in for it, where something does. */
export const saidBy = (spec: TextSpec, text: string): string => (text.trim() === '' ? (spec.stands?.() ?? '') : text);

/** Reads one text: a blank, the name of an option, a constant or a formula. What is said of it parts no number from its unit. */
export function readOne(spec: TextSpec, typed: string, reader: Reader): Reading {
  const reading = readAny(spec, typed, reader);
  return reading.is === 'fault' ? { ...reading, message: unparted(reading.message) } : reading;
}

function readAny(spec: TextSpec, typed: string, reader: Reader): Reading {
  const asked = askedOf(spec, reader);
  const text = saidBy(spec, typed);
  if (text.trim() === '') return readBlank(spec, asked);
  if (asked.type?.kind === 'option') {
    const index = asked.type.options.indexOf(text.trim());
    if (index >= 0) return { is: 'constant', value: index, type: asked.type };
  }
  const parsed = parseOnce(text, asked.unit, reader.set);
  if (!parsed.ok) return faultOf(parsed.fault);
  const untyped: Reach[] = [];
  const curves: Reach[] = [];
  const meant = new Set(namesOf(parsed.expression).map(({ name }) => name));
  const scope = (name: string): ValueType | undefined => {
    const reach = reader.find(name);
    // A name that is only thought of, to be proposed in place of another, is none to wait for.
    if (reach && !reach.type && meant.has(name)) (reach.kind === 'curve' ? curves : untyped).push(reach);
    return reach?.type;
  };
  const names = (): readonly string[] => reader.readable();
  const checked = checkFormula(parsed.expression, scope, names, asked.type, { set: reader.set, unit: asked.shown });
  if (untyped.length > 0) return { is: 'waits', on: untyped };
  if (!checked.ok && curves.length > 0) return curveFault(curves[0]!, checked.fault);
  if (checked.ok) return settled(checked.expression, checked.type, checked.reads, reader);
  if (asked.type?.kind === 'option') {
    const other = checkFormula(parsed.expression, scope, names);
    const indices = other.ok ? translation(other.type, asked.type.options) : undefined;
    if (other.ok && indices) {
      const reading = settled(other.expression, other.type, other.reads, reader);
      return reading.is === 'formula' ? { ...reading, type: asked.type, indices } : reading;
    }
  }
  return faultOf(checked.fault);
}

function askedOf(spec: TextSpec, reader: Reader): Asked {
  if (spec.like !== undefined) {
    const reach = reader.find(spec.like);
    const unit = reach?.unit ?? '';
    const shown = reach?.shown ?? '';
    const unitOf = spec.apart ? apartUnit : (name: string): string => name;
    return { unit: unitOf(unit), shown: unitOf(shown), type: reach?.type };
  }
  const shown = shownUnit(spec.unit, reader.set, spec.tradeUnit);
  if (spec.wants === 'anything') return { unit: spec.unit, shown, type: undefined };
  const type: ValueType =
    'options' in spec.wants
      ? { kind: 'option', options: spec.wants.options }
      : { kind: 'quantity', dimension: spec.wants.dimension };
  return { unit: spec.unit, shown, type };
}

/** Unit of how far two values in this unit are apart: a scale with a zero of its own has none, and is counted in K. */
export const apartUnit = (unit: string): string => ((unitNamed(unit)?.offset ?? 0) === 0 ? unit : 'K');

/** A sheet is compiled anew after every edit of its structure, with nearly all its texts the same: what they say is kept. */
const parses = new Map<string, ParseResult>();
const MOST_PARSES = 5000;

function parseOnce(text: string, unit: string, set: UnitSet): ParseResult {
  const key = `${set}|${unit}|${text}`;
  let parsed = parses.get(key);
  if (!parsed) {
    if (parses.size >= MOST_PARSES) parses.clear();
    parsed = readText(text, unit, set);
    parses.set(key, parsed);
  }
  return parsed;
}

function readBlank(spec: TextSpec, asked: Asked): Reading {
  if (spec.blank !== undefined) return { is: 'constant', value: spec.blank, type: asked.type };
  return { is: 'fault', message: spec.needed ?? blankSentence(spec.path, asked) };
}

function blankSentence(path: string, { shown, type }: Asked): string {
  if (type?.kind !== 'quantity') return `${named(path)} is blank. Write a formula or a value.`;
  const example = formatQuantity(toSI(EXAMPLE, shown), shown);
  return `${named(path)} is blank. Type ${describeDimension(type.dimension)}, such as “${example}”.`;
}

const EXAMPLE = 10;

function settled(expression: Expression, type: ValueType, names: readonly string[], reader: Reader): Reading {
  const value = constantOf(expression);
  if (value !== undefined) return { is: 'constant', value, type };
  const reads = new Map(names.map((name) => [name, reader.find(name)!]));
  return { is: 'formula', type, expression, reads };
}

function curveFault({ path }: Reach, { from, to }: FormulaFault): Reading {
  const message = `${named(path)} is a curve over airspeed, which a formula cannot read. Name a single number.`;
  return { is: 'fault', from, to, message };
}

/** Where each of the formula's own options stands in the wanted list; undefined if one of them isn't there. */
function translation(type: ValueType, wanted: readonly string[]): number[] | undefined {
  if (type.kind !== 'option') return undefined;
  const indices = type.options.map((option) => wanted.indexOf(option));
  return indices.includes(-1) ? undefined : indices;
}

const faultOf = ({ from, to, message, repair }: FormulaFault): Reading => ({
  is: 'fault',
  from,
  to,
  message,
  ...(repair ? { repair } : {}),
});

/** Unit in which the value of a text that may give anything is shown: that of the one name it consists of, else the usual one. */
export function unitOfReading(reading: Reading, reader: Reader): Pick<Reach, 'unit' | 'shown' | 'suffix' | 'ways'> {
  if (reading.is === 'formula' && reading.expression.kind === 'name') {
    const { unit, shown, suffix, ways } = reader.find(reading.expression.name)!;
    return { unit, shown, suffix, ways };
  }
  const type = reading.is === 'formula' || reading.is === 'constant' ? reading.type : undefined;
  const dimension = type?.kind === 'quantity' ? type.dimension : ONE;
  return { unit: usualUnit(dimension, 'metric'), shown: usualUnit(dimension, reader.set) };
}

/** Blank where the usual name of the dimension is no unit of the table. */
function usualUnit(dimension: Dimension, set: UnitSet): string {
  const unit = unitNamed(everydayUnit(dimension, set));
  return unit && sameDimension(unit.dimension, dimension) ? unit.name : '';
}

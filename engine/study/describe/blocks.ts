import type {
  AnyBlock,
  AnyTrace,
  Curve,
  Field,
  FieldSpecs,
  Link,
  Option,
  OptionalLink,
  Result,
  ResultSpecs,
} from '../../blocks/block';
import { isCurve, isLink, isOption, isOptional } from '../../blocks/block';
import { roleWords } from '../../blocks/role-words';
import type { BlockDescription, FieldDescription, ResultDescription, TraceColumn } from '../../terms/index';
import { ONE, shownUnit, type UnitSet, writeQuantity } from '../../units/index';

/** A block's declaration as plain data: all that a form, a completion or a reference page needs. */
export function describeBlock(block: AnyBlock): BlockDescription {
  return {
    kind: block.kind,
    role: block.role ?? block.kind,
    title: block.title,
    doc: block.doc,
    fields: Object.entries<FieldSpecs[string]>(block.fields).map(([name, spec]) => describeField(name, spec)),
    outlines: Object.entries(block.outlines ?? {}).map(([name, { spanFirst: _, ...spec }]) => ({ name, ...spec })),
    results: Object.entries<ResultSpecs[string]>(block.results).map(([name, spec]) => describeResult(name, spec)),
    reasons: Object.entries(block.reasons).map(([name, text]) => ({ name, text })),
    traces: Object.entries(block.traces ?? {}).map(([name, trace]) => ({
      name,
      title: trace.title,
      doc: trace.doc,
      columns: traceColumns(trace, 'metric'),
      ...(trace.outlines ? { outlines: true as const } : {}),
    })),
    line: block.line ?? [],
    ...(block.lineTitled ? { lineTitled: block.lineTitled } : {}),
    ...(block.keeps ? { keeps: block.keeps } : {}),
  };
}

function describeField(name: string, spec: Field | Option | Link | OptionalLink): FieldDescription {
  if (isLink(spec)) return describeLink(name, spec);
  if (isOption(spec)) return describeOption(name, spec);
  return {
    name,
    title: spec.title,
    symbol: spec.symbol,
    doc: spec.doc,
    kind: 'quantity',
    dimension: spec.dimension,
    unit: spec.unit,
    tradeUnit: shownUnit(spec.unit, 'inch_pound', spec.tradeUnit),
    suffix: spec.suffix ?? '',
    default: writeQuantity(spec.default, spec.unit),
    basis: spec.basis ?? '',
    range: spec.range,
    source: spec.source ?? '',
    advanced: spec.advanced === true,
    ...(spec.taken ? { taken: spec.taken } : {}),
  };
}

const plain = { dimension: ONE, unit: '', tradeUnit: '', suffix: '', basis: '', source: '', advanced: false } as const;

const describeOption = (name: string, spec: Option): FieldDescription => ({
  ...plain,
  name,
  title: spec.title,
  symbol: spec.symbol,
  doc: spec.doc,
  kind: 'option',
  default: spec.default,
  options: spec.option,
});

const describeLink = (name: string, spec: Link | OptionalLink): FieldDescription => ({
  ...plain,
  name,
  title: spec.link,
  symbol: '',
  doc: spec.doc,
  kind: 'link',
  default: '',
  role: spec.link,
  roleWords: roleWords(spec.link),
  ...(isOptional(spec) ? { optional: true as const } : {}),
});

function describeResult(name: string, spec: Result | Curve): ResultDescription {
  const common = {
    name,
    title: spec.title,
    symbol: spec.symbol,
    doc: spec.doc,
    dimension: spec.dimension,
    unit: spec.unit,
  };
  if (isCurve(spec))
    return {
      ...common,
      tradeUnit: shownUnit(spec.unit, 'inch_pound'),
      suffix: '',
      source: '',
      curve: true,
      detail: true,
    };
  const told = {
    ...common,
    tradeUnit: shownUnit(spec.unit, 'inch_pound', spec.tradeUnit),
    suffix: spec.suffix ?? '',
    source: spec.source ?? '',
    curve: false,
    detail: spec.detail === true,
  };
  return spec.usual ? { ...told, usual: spec.usual } : told;
}

/** What a trace tells, in the units of a document's set. */
export function traceColumns({ columns }: AnyTrace, units: UnitSet): TraceColumn[] {
  return Object.entries(columns).map(([name, { title, symbol, doc, dimension, unit, tradeUnit, suffix, ways }]) => ({
    name,
    title,
    symbol,
    doc,
    dimension,
    unit: shownUnit(unit, units, tradeUnit),
    suffix: suffix ?? '',
    ...(ways ? { ways } : {}),
  }));
}

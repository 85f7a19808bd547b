import * as v from 'valibot';
import type { AnyBlock, Field, FieldSpecs, Option, Result, ResultSpecs } from '../../blocks/block';
import { isCurve, isLink, isOption, isOptional } from '../../blocks/block';
import { slotCount } from '../../blocks/curve';
import { inSentence } from '../called';
import { readCorners } from '../corners';
import type { BlockCell } from '../document';
import { named } from '../named';
import type { Slot } from '../program';
import type { BlockPlace, Builder } from '../specs';
import { blockStep } from '../steps/block';
import { stagesOf } from '../steps/block-stages';
import { follow, followOptional, takenFrom } from './block-links';
import { baseEntries, textsEntry } from './entries';
import type { CellKindOf } from './kind';
import { mapFields, mapTexts, withText } from './rows';

/** A piece of the model. */
export const blockCell: CellKindOf<BlockCell> = {
  kind: 'model',
  schema: v.strictObject({ ...baseEntries('model'), of: v.string(), fields: textsEntry }),
  owns: (cell) => [cell.name],
  texts: (cell) => Object.entries(cell.fields).map(([name, text]) => ({ path: `${cell.name}.${name}`, text })),
  put(cell, path, text) {
    const name = fieldName(cell, path);
    return name === undefined ? undefined : { ...cell, fields: withText(cell.fields, name, text) };
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, { formula }) => mapFields(cell, { fields: mapTexts(cell.fields, formula) }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const block = builder.blocks.get(cell.of);
    if (block) layBlock(cell, block, builder);
    else {
      const known = [...builder.blocks.keys()];
      const message = `Nothing in the model is called “${cell.of}”. There is ${known.join(', ')}.${builder.meant(cell.of, known)}`;
      builder.fault({ cell: cell.id, path: cell.name, message });
    }
  },
};

/** Any field of the block: which ones it has is in its declaration, which the document doesn't carry. */
function fieldName(cell: BlockCell, path: string): string | undefined {
  if (!path.startsWith(`${cell.name}.`)) return undefined;
  const name = path.slice(cell.name.length + 1);
  return name === '' || name.includes('.') ? undefined : name;
}

function layBlock(cell: BlockCell, block: AnyBlock, builder: Builder): void {
  for (const name of Object.keys(cell.fields)) {
    if (name in block.fields || (block.outlines && name in block.outlines)) continue;
    const message = `${named(cell.name)} has nothing called “${name}”. It has ${Object.keys(block.fields).join(', ')}.${builder.meant(name, Object.keys(block.fields))}`;
    builder.fault({ cell: cell.id, path: `${cell.name}.${name}`, message });
  }
  const replaced = replacedFields(cell, block);
  const fields = layFields(cell, block, replaced, builder);
  const results = layResults(cell, block, replaced, builder);
  const outlines = layOutlines(cell, block, builder);
  const place: BlockPlace = {
    cell: cell.id,
    name: cell.name,
    kind: block.kind,
    role: block.role ?? block.kind,
    results: block.results,
    slots: results,
  };
  builder.offer(place);
  builder.later(() => {
    const links = new Map<string, BlockPlace>();
    const at = { cell: cell.id, path: cell.name, kind: 'block' as const, writes: slotsOf(block.results, results) };
    if (outlines.fault) {
      builder.broken(at, outlines.fault);
      return;
    }
    for (const [name, spec] of Object.entries(block.fields)) {
      if (!isLink(spec)) continue;
      const found = isOptional(spec) ? followOptional(cell, name, spec, builder) : follow(cell, name, spec, builder);
      if (typeof found === 'string') {
        builder.broken(at, { message: found });
        return;
      }
      if (found && !isOptional(spec)) links.set(name, found);
    }
    const whole = { cell: cell.id, path: cell.name, block, fields, outlines: outlines.slots, results, links };
    for (const stage of stagesOf(whole)) builder.step(blockStep(stage, builder.document.units));
  });
}

/** Fields in whose place an outline with corners stands. */
const replacedFields = (cell: BlockCell, { outlines = {} }: AnyBlock): ReadonlySet<string> =>
  new Set(Object.entries(outlines).flatMap(([name, { replaces }]) => (cell.fields[name] ? replaces : [])));

interface LaidOutlines {
  readonly slots: ReadonlyMap<string, readonly Slot[]>;
  /** What is wrong with the first that can't be read, and where. */
  readonly fault: { readonly path: string; readonly message: string } | undefined;
}

/** Lays the corners of the outlines: both lengths of each, and behind the last the end of them. */
function layOutlines(cell: BlockCell, { outlines = {} }: AnyBlock, builder: Builder): LaidOutlines {
  const laid = new Map<string, readonly Slot[]>();
  let fault: LaidOutlines['fault'];
  for (const [name, spec] of Object.entries(outlines)) {
    const path = `${cell.name}.${name}`;
    const text = cell.fields[name] ?? '';
    const read = text === '' ? undefined : readCorners(text, spec, builder.document.units);
    const corners = read?.ok ? read.corners : [];
    const start = builder.numbers(path, [...corners, Number.NaN]);
    laid.set(
      name,
      Array.from({ length: corners.length + 1 }, (_, k) => start + k),
    );
    if (read?.ok === false)
      fault ??= { path, message: `${spec.title} of ${named(cell.name)}: ${inSentence(read.message)}` };
  }
  return { slots: laid, fault };
}

/**
 * Lays the fields and gives their slots. Where a result has a field's name, one path stands for both: what is read is the
 * field where something always stands in it, and the result where a blank field makes the block estimate it, or where the field
 * isn't read because an outline stands in its place.
 */
function layFields(
  cell: BlockCell,
  { fields, results }: AnyBlock,
  replaced: ReadonlySet<string>,
  builder: Builder,
): Map<string, Slot> {
  const slots = new Map<string, Slot>();
  for (const [name, spec] of Object.entries(fields)) {
    if (isLink(spec)) continue;
    const at = { cell: cell.id, path: `${cell.name}.${name}`, text: cell.fields[name] ?? '' };
    const told = { kind: 'field' as const, title: spec.title, symbol: spec.symbol, doc: spec.doc };
    const stands = (): string | undefined => takenFrom(cell, spec as Field, fields, builder);
    const more = isOption(spec)
      ? asOption(spec)
      : { ...asField(spec), unnamed: readsResult(name, fields, results, replaced), ...(spec.taken ? { stands } : {}) };
    slots.set(name, builder.text({ ...at, ...told, ...more }));
  }
  return slots;
}

function readsResult(name: string, fields: FieldSpecs, results: ResultSpecs, replaced: ReadonlySet<string>): boolean {
  const result = results[name];
  // A curve is no number to read: the field stands for itself.
  return (
    result !== undefined && !isCurve(result) && (replaced.has(name) || Number.isNaN((fields[name] as Field).default))
  );
}

const asOption = (spec: Option) => ({
  unit: '',
  wants: { options: spec.option },
  blank: spec.option.indexOf(spec.default),
});

const asField = (spec: Field) => ({
  unit: spec.unit,
  tradeUnit: spec.tradeUnit,
  wants: { dimension: spec.dimension },
  blank: spec.default,
  range: spec.range,
  suffix: spec.suffix,
  detail: spec.advanced,
});

function layResults(
  cell: BlockCell,
  { fields, results }: AnyBlock,
  replaced: ReadonlySet<string>,
  builder: Builder,
): Map<string, Slot> {
  const slots = new Map<string, Slot>();
  for (const [name, spec] of Object.entries(results)) {
    const path = `${cell.name}.${name}`;
    const field = name in fields ? (fields[name] as Field) : undefined;
    const readsField = field !== undefined && !readsResult(name, fields, results, replaced);
    const slot = builder.slots(readsField ? `${path}#result` : path, slotCount(spec));
    slots.set(name, slot);
    if (readsField) continue;
    const told = { cell: cell.id, path, slot, title: spec.title, symbol: spec.symbol, doc: spec.doc };
    const shown = { dimension: spec.dimension, unit: spec.unit };
    // A table of a propeller has no name: only blocks that link to it read it.
    if (isCurve(spec) && spec.curve === 'propeller') continue;
    if (isCurve(spec)) builder.curve({ ...told, ...shown, kind: 'curve' });
    else
      builder.value({
        ...told,
        ...shown,
        ...asResult(spec),
        ...(replaced.has(name) ? {} : asTyped(field)),
        kind: 'result',
      });
  }
  return slots;
}

const asResult = (spec: Result) => ({
  tradeUnit: spec.tradeUnit,
  suffix: spec.suffix,
  ways: spec.ways,
  usual: spec.usual,
  least: spec.least,
  detail: spec.detail,
  oneOf: spec.oneOf,
});

/** A result that a typed value replaces. */
const asTyped = (field: Field | undefined) =>
  field ? { settable: true, range: field.range, detail: field.advanced } : {};

const slotsOf = (specs: ResultSpecs, slots: ReadonlyMap<string, Slot>): Slot[] =>
  Object.entries(specs).flatMap(([name, spec]) =>
    Array.from({ length: slotCount(spec) }, (_, k) => slots.get(name)! + k),
  );

import type { AnyBlock, AnySpecs, Field, Option, Result } from '../../blocks/block';
import { isLink, isNeeded, isOption } from '../../blocks/block';
import { slotCount } from '../../blocks/curve';
import { type OutlineColumns, OutlineRefusal } from '../../blocks/outline';
import { formatQuantity, shownUnit, type UnitSet } from '../../units/index';
import { named } from '../named';
import type { Slot, Step } from '../program';
import type { BlockPlace, StepSpec, Told } from '../specs';
import { firstBreach, placeRanges, type Ranged, tellBreach } from './range';

export interface BlockStepSpec {
  readonly cell: string;
  readonly path: string;
  readonly block: AnyBlock;
  /** Without links. */
  readonly fields: ReadonlyMap<string, Slot>;
  /** Slots in a row of the corners of each outline, and of the end of them. */
  readonly outlines: ReadonlyMap<string, readonly Slot[]>;
  readonly results: ReadonlyMap<string, Slot>;
  /** Of the links that the block needs. */
  readonly links: ReadonlyMap<string, BlockPlace>;
  /** What it is called where it waits; missing: `path`. */
  readonly at?: string;
  /** Results of the block's own that it reads. */
  readonly earlier?: ReadonlyMap<string, Slot>;
}

/** Where the fields and results lie, as the block wants them: a number each, a record for a link. */
type Placed = Readonly<Record<string, number | Readonly<Record<string, number>>>>;

const spread = (slot: Slot, count: number): Slot[] => Array.from({ length: count }, (_, k) => slot + k);

function placeFields(
  spec: BlockStepSpec,
  column: (s: Slot) => number,
): { fields: Placed; results: Placed; outlines: OutlineColumns } {
  const fields: Record<string, number | Readonly<Record<string, number>>> = {};
  for (const [name, slot] of spec.fields) fields[name] = column(slot);
  for (const [name, place] of spec.links) {
    fields[name] = Object.fromEntries([...place.slots].map(([result, slot]) => [result, column(slot)]));
  }
  const results: Record<string, number> = {};
  for (const [name, slot] of [...(spec.earlier ?? []), ...spec.results]) results[name] = column(slot);
  const outlines = Object.fromEntries([...spec.outlines].map(([name, [first]]) => [name, column(first!)]));
  return { fields, results, outlines };
}

/** Runs a block. Its reasons: the block's own, then one for each field with a range, then a refusal of its equations. */
export function blockStep(spec: BlockStepSpec, units: UnitSet): StepSpec {
  const { cell, path, block, at = path } = spec;
  const own = Object.keys(block.reasons);
  const ranged = rangedFields(spec, units);
  const refused = own.length + ranged.length;
  const codes = new Map(own.map((name, k) => [name, k + 1]));
  const step: Step = {
    key: keyOf(spec),
    kind: 'block',
    cell,
    path: at,
    reads: readsOf(spec),
    writes: Object.entries(block.results).flatMap(([name, result]) =>
      spread(spec.results.get(name)!, slotCount(result)),
    ),
    ...(block.slow ? { slow: true } : {}),
    reasons: [...own, ...ranged.map((input) => `range of ${input.path}`), 'refused'],
    bind(column, stride) {
      const { fields, results, outlines } = placeFields(spec, column);
      const { columns, lows, highs } = placeRanges(ranged, column);
      return (m, why, n) => {
        for (let i = 0; i < n; i++) {
          if (why[i] !== 0) continue;
          const breach = firstBreach(m, columns, lows, highs, i);
          if (breach >= 0) {
            why[i] = 1 + own.length + breach;
            continue;
          }
          try {
            const reason = block.run(m, fields, results, i, stride, outlines);
            if (reason !== undefined) why[i] = codes.get(reason)!;
          } catch (error) {
            if (!(error instanceof RangeError)) throw error;
            why[i] = 1 + refused;
          }
        }
      };
    },
  };
  return {
    step,
    tell(reason, read) {
      if (reason < own.length) return { path, message: tellReason(spec, own[reason]!, read, units) };
      const input = ranged[reason - own.length];
      if (input) return { path: input.path, message: tellBreach(input, read(input.slot)) };
      return tellRefusal(spec, read, units);
    },
  };
}

function rangedFields(spec: BlockStepSpec, set: UnitSet): Ranged[] {
  const ranged: Ranged[] = [];
  for (const [name, field] of Object.entries(spec.block.fields)) {
    if (isLink(field) || isOption(field)) continue;
    const { range, suffix, ...of } = field as Field;
    const unit = shownUnit(of.unit, set, of.tradeUnit);
    ranged.push({ path: `${spec.path}.${name}`, slot: spec.fields.get(name)!, unit, range, suffix });
  }
  return ranged;
}

function keyOf({ path, block, links, earlier }: BlockStepSpec): string {
  const linked = [...links].map(([name, place]) => `${name}=${place.name}:${place.kind}`);
  return `block ${path}${earlier ? ' after' : ''}: ${block.kind}(${linked.join(' ')})`;
}

function readsOf({ block, fields, outlines, links, earlier = new Map() }: BlockStepSpec): Slot[] {
  const reads = [...fields.values()];
  for (const [name, place] of links) {
    const link = block.fields[name]!;
    if (!isNeeded(link)) continue;
    for (const [result, declared] of Object.entries(link.results)) {
      const slot = place.slots.get(result);
      if (slot === undefined) {
        throw new RangeError(`${block.kind} reads ${result} of ${place.kind}, which declares no such result`);
      }
      reads.push(...spread(slot, slotCount(declared)));
    }
  }
  for (const slots of outlines.values()) reads.push(...slots);
  reads.push(...earlier.values());
  return reads;
}

/** Values of one sample on columns of their own, after the block has run on them once more: what a sentence is filled from. */
function rerun(spec: BlockStepSpec, read: (slot: Slot) => number) {
  const slots = new Map<Slot, number>();
  const place = (slot: Slot): number => {
    const at = slots.get(slot) ?? slots.size;
    slots.set(slot, at);
    return at;
  };
  for (const slot of readsOf(spec)) place(slot);
  for (const [name, slot] of spec.results) for (const s of spread(slot, slotCount(spec.block.results[name]!))) place(s);
  const m = new Float64Array(slots.size);
  for (const [slot, at] of slots) m[at] = read(slot);
  const { fields, results, outlines } = placeFields(spec, (slot) => slots.get(slot)!);
  let refusal: RangeError | undefined;
  try {
    spec.block.run(m, fields, results, 0, 1, outlines);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    refusal = error;
  }
  return { value: (slot: Slot) => m[slots.get(slot)!]!, refusal };
}

function tellReason(spec: BlockStepSpec, reason: string, read: (slot: Slot) => number, units: UnitSet): string {
  const { value } = rerun(spec, read);
  return spec.block.reasons[reason]!.replace(/\{([\w.]+)\}/g, (hole, name: string) => {
    const found = lookUp(spec, name);
    return found ? tellValue(found.spec, value(found.slot), units) : hole;
  });
}

function lookUp({ block, fields, results, links }: BlockStepSpec, name: string) {
  const [first, second] = name.split('.') as [string, string | undefined];
  if (second !== undefined) {
    const place = links.get(first);
    const slot = place?.slots.get(second);
    return place && slot !== undefined ? { spec: place.results[second]!, slot } : undefined;
  }
  const slot = fields.get(first) ?? results.get(first);
  const spec = block.fields[first] ?? block.results[first];
  return slot === undefined || spec === undefined ? undefined : { spec, slot };
}

function tellValue(spec: AnySpecs[string], value: number, units: UnitSet): string {
  if (isOption(spec)) return (spec as Option).option[value] ?? '–';
  const { unit, tradeUnit, suffix, ways } = spec as Result;
  return formatQuantity(value, shownUnit(unit, units, tradeUnit), { suffix, ways });
}

function tellRefusal(spec: BlockStepSpec, read: (slot: Slot) => number, units: UnitSet): Told {
  const { refusal } = rerun(spec, read);
  if (refusal instanceof OutlineRefusal) return tellOutline(spec, refusal, units);
  const message = `${named(spec.path)} has no answer: ${refusal?.message}. Its equations do not reach that far; take back the last change or type other values.`;
  return { path: spec.path, message };
}

/** What is wrong with an outline, at the outline. */
function tellOutline(
  { path, block }: BlockStepSpec,
  { outline, crossing, message }: OutlineRefusal,
  units: UnitSet,
): Told {
  const { title, unit, tradeUnit, spanFirst } = block.outlines![outline]!;
  const what = `${title} of ${named(path)}`;
  const at = { path: `${path}.${outline}` };
  if (!crossing) {
    return { ...at, message: `${what} has no area to measure: ${message}. Move its corners, or remove it.` };
  }
  const shown = shownUnit(unit, units, tradeUnit);
  const corner = (a: number, b: number): string =>
    (spanFirst ? [b, a] : [a, b]).map((length) => formatQuantity(length, shown)).join('; ');
  const side = ([a, b, c, d]: readonly number[]): string => `from ${corner(a!, b!)} to ${corner(c!, d!)}`;
  return {
    ...at,
    message: `${what} crosses itself: the side ${side(crossing.first)} meets the one ${side(crossing.second)}. Move a corner so that its line goes round once.`,
  };
}

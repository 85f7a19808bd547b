import { type AnyBlock, isCurve, isLink, type Shape } from '../blocks/block';
import { AIRSPEED_KNOTS } from '../blocks/curve';
import type { Compiled } from '../sheet/compile';
import type { Program, Slot, Step } from '../sheet/program';

type Columns = Record<string, Slot | Readonly<Record<string, Slot>>>;

/** A block that draws, and where its numbers lie. */
interface Draws {
  readonly block: AnyBlock;
  readonly name: string;
  readonly fields: Columns;
  readonly results: Columns;
}

const known = new WeakMap<Program, readonly Draws[]>();

/** The scale drawing of one design: what every block of the document adds to it. Values are one a slot. */
export function drawingOf(
  compiled: Compiled,
  blocks: ReadonlyMap<string, AnyBlock>,
  values: Float64Array,
): readonly Shape[] {
  let drawing = known.get(compiled.program);
  if (!drawing) {
    drawing = drawsOf(compiled, blocks);
    known.set(compiled.program, drawing);
  }
  return drawing
    .flatMap((draws) => drawBlock(draws, values))
    .filter((shape) => shape.points.every(Number.isFinite) && Number.isFinite(shape.radius ?? 0));
}

function drawsOf({ document, program }: Compiled, blocks: ReadonlyMap<string, AnyBlock>): Draws[] {
  const steps = new Map(program.steps.filter((step) => step.kind === 'block').map((step) => [step.cell, step]));
  const draws: Draws[] = [];
  for (const cell of document.cells) {
    if (cell.kind !== 'block') continue;
    const block = blocks.get(cell.block);
    const step = steps.get(cell.id);
    // A block whose links lead nowhere has a step that reads nothing: it has no place to draw from.
    if (!block?.draw || !step || step.reads.length === 0) continue;
    const results = resultsOf(block.results, step.writes);
    draws.push({ block, name: cell.name, fields: fieldsOf(block, step), results });
  }
  return draws;
}

/** A design that a block's equations refuse has no drawing of that block. */
function drawBlock({ block, name, fields, results }: Draws, values: Float64Array): Shape[] {
  try {
    return (block.draw?.(values, fields, results) ?? []).map((shape) => labelled(shape, block, name));
  } catch (error) {
    if (error instanceof RangeError) return [];
    throw error;
  }
}

/** A declaration names its own results by the block's kind or role; in this document the block may have another name. */
function labelled(shape: Shape, block: AnyBlock, name: string): Shape {
  const [first, ...rest] = shape.label?.split('.') ?? [];
  if (first === undefined || first === name || (first !== block.kind && first !== block.role)) return shape;
  return { ...shape, label: [name, ...rest].join('.') };
}

/** A block's step reads its own fields first, then what each link gives, all in the order of the declaration. */
function fieldsOf(block: AnyBlock, step: Step): Columns {
  const fields: Columns = {};
  let k = 0;
  for (const [name, spec] of Object.entries(block.fields)) if (!isLink(spec)) fields[name] = step.reads[k++]!;
  for (const [name, spec] of Object.entries(block.fields)) {
    if (!isLink(spec)) continue;
    const count = slotCount(spec.results);
    fields[name] = resultsOf(spec.results, step.reads.slice(k, k + count));
    k += count;
  }
  return fields;
}

function resultsOf(specs: AnyBlock['results'], slots: readonly Slot[]): Record<string, Slot> {
  const results: Record<string, Slot> = {};
  let k = 0;
  for (const [name, spec] of Object.entries(specs)) {
    results[name] = slots[k]!;
    k += isCurve(spec) ? AIRSPEED_KNOTS.length : 1;
  }
  return results;
}

const slotCount = (specs: AnyBlock['results']): number =>
  Object.values(specs).reduce((count, spec) => count + (isCurve(spec) ? AIRSPEED_KNOTS.length : 1), 0);

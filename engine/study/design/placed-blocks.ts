import { type AnyBlock, isLink, isNeeded } from '../../blocks/block';
import { slotCount } from '../../blocks/curve';
import type { Compiled } from '../../sheet/compile';
import type { Program, Slot, Step } from '../../sheet/program';
import { cellsOf } from '../../sheet/sheets';
import { firstOf } from '../../sheet/steps/block-stages';

type Places = Record<string, Slot | Readonly<Record<string, Slot>>>;

/** A block of the document and where its numbers lie, one a slot. */
export interface PlacedBlock {
  readonly block: AnyBlock;
  /** Of its cell. */
  readonly name: string;
  readonly title: string;
  readonly fields: Places;
  readonly results: Places;
  readonly outlines: Readonly<Record<string, Slot>>;
}

const known = new WeakMap<Program, readonly PlacedBlock[]>();

/** The blocks of a document that have a place to read from: what draws and what gives traces. */
export function placedBlocks(compiled: Compiled, blocks: ReadonlyMap<string, AnyBlock>): readonly PlacedBlock[] {
  let placed = known.get(compiled.program);
  if (!placed) {
    placed = place(compiled, blocks);
    known.set(compiled.program, placed);
  }
  return placed;
}

function place({ document, program, slotRuns }: Compiled, blocks: ReadonlyMap<string, AnyBlock>): PlacedBlock[] {
  const steps = new Map<string, Step>();
  // Of a block with two steps the first.
  for (const step of program.steps) if (step.kind === 'block' && !steps.has(step.cell)) steps.set(step.cell, step);
  const placed: PlacedBlock[] = [];
  for (const cell of cellsOf(document)) {
    if (cell.kind !== 'model') continue;
    const block = blocks.get(cell.of);
    const step = steps.get(cell.id);
    // A block whose links lead nowhere has a step that reads nothing.
    if (!block || !step || step.reads.length === 0) continue;
    const first = firstOf(block);
    const results = resultsOf(first.results, step.writes);
    const outlines = Object.fromEntries(
      Object.keys(block.outlines ?? {}).map((name) => [name, slotRuns.get(`${cell.name}.${name}`)!.start]),
    );
    placed.push({ block, name: cell.name, title: cell.title, fields: fieldsOf(first, step), results, outlines });
  }
  return placed;
}

/** A block's step reads its own fields first, then what each link gives, all in the order of the declaration. */
function fieldsOf(block: AnyBlock, step: Step): Places {
  const fields: Places = {};
  let k = 0;
  for (const [name, spec] of Object.entries(block.fields)) if (!isLink(spec)) fields[name] = step.reads[k++]!;
  for (const [name, spec] of Object.entries(block.fields)) {
    if (!isNeeded(spec)) continue;
    const count = slotCountOf(spec.results);
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
    k += slotCount(spec);
  }
  return results;
}

const slotCountOf = (specs: AnyBlock['results']): number =>
  Object.values(specs).reduce((count, spec) => count + slotCount(spec), 0);

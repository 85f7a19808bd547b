import type { ValueType } from '../formula/index';
import type { Fault, NameInfo } from '../terms/index';
import { spellDimension } from '../units/index';
import { breakRings, needsOf } from './break-rings';
import { type Allocation, type Building, type LaidText, startBuilding } from './builder';
import { calledIn } from './called';
import { kindOf } from './cells/index';
import type { Document } from './document';
import { namesOf } from './name-infos';
import { withTitles } from './named';
import { once } from './once';
import { layOwnRows } from './own-rows';
import type { Program, Slot } from './program';
import { computingOrder } from './rings';
import { shapeOf } from './shape';
import { cellsOf } from './sheets';
import type { Library, StepSpec } from './specs';
import { faultStep } from './steps/fault';
import { formulaStep } from './steps/formula';
import { tradeSteps } from './steps/trade';
import { waitingStep } from './steps/waiting';
import { type Reading, readOne, saidBy } from './texts';

/** A document made into a program, with all that is needed to speak of it. */
export interface Compiled {
  readonly document: Document;
  readonly program: Program;
  readonly names: readonly NameInfo[];
  /** Faults that are not a step's: names that clash, a sweep that asks for what isn't there. */
  readonly faults: readonly Fault[];
  /** Per step of the program: how to say why it has no answer. */
  readonly tell: readonly StepSpec['tell'][];
  /** Every run of slots by a key that the same place has in another program of the same cells. */
  readonly slotRuns: ReadonlyMap<string, Allocation>;
  /** Reads a text as if it stood at this path; undefined where no text can stand. */
  read(path: string, text: string): Reading | undefined;
  /** SI value of a text that may stand at this path without any change but of value; undefined for any other. */
  constant(path: string, text: string): number | undefined;
  /** What a kind of model stands in for: every engine is an `engine`. */
  role(kind: string): string | undefined;
  /** Another document with the same library. */
  anew(document: Document): Compiled;
  /** The same program for a document that differs in nothing but values. */
  at(document: Document): Compiled;
}

export function compile(document: Document, library: Library): Compiled {
  const building = startBuilding(document, library, tradeSteps);
  layOwnRows(document, building.builder);
  for (const cell of cellsOf(document)) kindOf(cell).lay(cell, building.builder);
  building.finishLater();

  const constants = new Map<string, Slot>();
  const typed: [slot: Slot, value: number][] = [];
  for (const text of building.texts.values()) {
    const reading = building.reading(text);
    if (reading.is === 'constant') {
      constants.set(text.spec.path, text.slot);
      typed.push([text.slot, reading.value]);
    } else building.steps.push(textStep(text, reading));
  }

  const start = new Float64Array(building.size()).fill(Number.NaN);
  for (const [slot, value] of [...typed, ...building.given]) start[slot] = value;
  const keyed = withKeys(building.steps, building);
  const unbroken = breakRings(keyed, needsOf(keyed, building.size()));
  const ordered = computingOrder(needsOf(unbroken, building.size())).map((k) => unbroken[k]!);
  const steps = ordered.map((spec) => spec.step);
  // A later reading may lay numbers of the library, which are none of this program's.
  const named = [...building.named];
  // Many a design is compiled for its numbers alone: what only people read waits until somebody does.
  const names = once(() => namesOf(named, building));
  const titled = <T extends { readonly message: string }>(told: T): T => ({
    ...told,
    message: withTitles(told.message, calledIn({ document, names: names() })),
  });
  const slotOf = new Map(
    named.map((each) => ('text' in each ? [each.text.spec.path, each.text.slot] : [each.value.path, each.value.slot])),
  );
  const inputs = new Map([...building.texts].map(([path, text]) => [path, text.slot]));
  const size = building.size();
  const shape = once(() => shapeOf(size, names(), constants, steps));
  const reader = { find: building.builder.find, readable: building.readable, set: document.units };
  const read = (path: string, text: string): Reading | undefined => {
    const laid = building.texts.get(path);
    if (!laid) return undefined;
    const reading = readOne(laid.spec, text, reader);
    return reading.is === 'fault' ? titled(reading) : reading;
  };
  const program: Program = {
    get shape() {
      return shape();
    },
    ...{ size, slotOf, inputs, steps, start, constants },
  };
  const faults = once(() => building.faults.map((fault): Fault => ({ ...titled(fault), state: 'fault' })));
  const slotRuns = new Map(building.allocations.map((run) => [run.key, run]));
  const tell = ordered.map(
    ({ tell }): StepSpec['tell'] =>
      (reason, read) =>
        titled(tell(reason, read)),
  );
  const at = (own: Document): Compiled => ({
    document: own,
    program,
    get names() {
      return names();
    },
    get faults() {
      return faults();
    },
    tell,
    slotRuns,
    read,
    constant(path, text) {
      const laid = building.texts.get(path);
      if (!laid || !constants.has(path)) return undefined;
      const before = building.reading(laid);
      const after = read(path, text);
      if (before.is !== 'constant' || after?.is !== 'constant') return undefined;
      // A line that may give anything may not turn from a length into a mass: others have been checked against it.
      const same = dimensionOf(before.type) === dimensionOf(after.type);
      return same ? after.value : undefined;
    },
    role(kind) {
      const block = library.blocks.find((each) => each.kind === kind);
      return block && (block.role ?? block.kind);
    },
    anew: (other) => compile(other, library),
    at,
  });
  return at(document);
}

const dimensionOf = (type: ValueType | undefined): string =>
  type?.kind === 'quantity' ? spellDimension(type.dimension) : '';

function textStep({ spec, slot }: LaidText, reading: Exclude<Reading, { is: 'constant' }>): StepSpec {
  const { cell, path, unit } = spec;
  const text = saidBy(spec, spec.text);
  if (reading.is === 'fault') {
    const { is: _, ...told } = reading;
    return faultStep({ cell, path, kind: 'formula', writes: [slot] }, told);
  }
  if (reading.is === 'waits') return waitingStep(cell, path, reading.on, slot);
  const { expression, reads, indices } = reading;
  const named = expression.kind === 'name' ? reads.get(expression.name) : undefined;
  const blank = named?.mayBeBlank ? spec.blank : undefined;
  return formulaStep({ cell, path, text, unit, expression, reads, indices, blank, write: slot });
}

/** Adds to each key where its values come from and go to: then the same key means the same computation on the same places. */
function withKeys(specs: readonly StepSpec[], { allocations, size }: Building): StepSpec[] {
  const runOf = new Int32Array(size());
  for (const [k, { start, count }] of allocations.entries()) runOf.fill(k, start, start + count);
  const list = (slots: readonly Slot[]): string => {
    let text = '';
    for (const [k, slot] of slots.entries()) {
      const run = runOf[slot]!;
      const { key, start } = allocations[run]!;
      // Slots in a row of one run are said once, by where they begin.
      const goesOn = k > 0 && slots[k - 1] === slot - 1 && runOf[slot - 1] === run;
      if (!goesOn) text += slot === start ? ` ${key}` : ` ${key}+${slot - start}`;
    }
    return text;
  };
  return specs.map((spec) => {
    const { key, reads, writes } = spec.step;
    return { ...spec, step: { ...spec.step, key: `${key} |${list(reads)} →${list(writes)}` } };
  });
}

import { nearestName, type ValueType } from '../formula/index';
import type { Fault } from '../terms/index';
import { type Dimension, inUnitsOf, shownUnit, unitNamed } from '../units/index';
import type { Document } from './document';
import { type Given, libraryNumbers, valueColumns } from './library-numbers';
import { named as namedAt } from './named';
import { nameFault } from './names';
import type { Slot } from './program';
import type { BlockPlace, Builder, Library, Reach, StepSpec, TextSpec, TradeSteps, ValueSpec } from './specs';
import { faultStep } from './steps/fault';
import { apartUnit, type Reading, readOne, unitOfReading } from './texts';

/** A text with its slot, read when first asked for. */
export interface LaidText {
  readonly spec: TextSpec;
  readonly slot: Slot;
}

/** Digits of a number that a fault tells in another unit than its own. */
const TOLD_DIGITS = 4;

/** Something that has a name, in the order of the page. */
export type Named = { readonly text: LaidText } | { readonly value: ValueSpec };

/** Slots in a row under one key. */
export interface Allocation {
  readonly key: string;
  readonly start: Slot;
  readonly count: number;
}

/** What the cells have said, for `compile` to make a program of. */
export interface Building {
  readonly builder: Builder;
  readonly texts: ReadonlyMap<string, LaidText>;
  readonly named: readonly Named[];
  readonly steps: StepSpec[];
  readonly faults: Omit<Fault, 'state'>[];
  readonly allocations: readonly Allocation[];
  /** Numbers of slots that no text of the document holds. */
  readonly given: ReadonlyMap<Slot, number>;
  size(): number;
  /** Runs what was put off. */
  finishLater(): void;
  reading(text: LaidText): Reading;
  readable(): readonly string[];
}

export function startBuilding(document: Document, library: Library, trade: TradeSteps): Building {
  const blocks = new Map(library.blocks.map((block) => [block.kind, block]));
  const tables = new Map(library.tables.map((table) => [table.name, table]));
  const rowNames = new Map(library.tables.map(({ name, rows }) => [name, rows.map((row) => row.name)]));
  for (const { table, name } of document.rows) rowNames.get(table)?.unshift(name);
  const stock: ReadonlyMap<string, Given> = libraryNumbers(library.tables);
  const claimed = new Set<string>();
  const texts = new Map<string, LaidText>();
  const values = new Map<string, ValueSpec>();
  const curves = new Map<string, ValueSpec>();
  const named: Named[] = [];
  const steps: StepSpec[] = [];
  const faults: Omit<Fault, 'state'>[] = [];
  const allocations: Allocation[] = [];
  const given = new Map<Slot, number>();
  const putOff: (() => void)[] = [];
  const places: BlockPlace[] = [];
  const readings = new Map<LaidText, Reading>();
  const reading = new Set<LaidText>();
  const reaches = new Map<string, Reach>();
  const set = document.units;
  let size = 0;

  const allocate = (key: string, count = 1): Slot => {
    const start = size;
    allocations.push({ key, start, count });
    size += count;
    return start;
  };

  function readText(text: LaidText): Reading {
    const known = readings.get(text);
    if (known) return known;
    reading.add(text);
    const found = readOne(text.spec, text.spec.text, { find, readable, set });
    reading.delete(text);
    readings.set(text, found);
    return found;
  }

  function reachOfText(text: LaidText): Reach {
    const { path, cell, kind, unit, tradeUnit, suffix, wants, like, mayBeBlank } = text.spec;
    const reach = { path, slot: text.slot, cell, kind, settable: true, mayBeBlank };
    if (like === undefined && wants !== 'anything') {
      const type: ValueType =
        'options' in wants
          ? { kind: 'option', options: wants.options }
          : { kind: 'quantity', dimension: wants.dimension };
      return { ...reach, unit, shown: shownUnit(unit, set, tradeUnit), suffix, type };
    }
    // Its type follows from its text. A text that needs itself has none; the ring is found later.
    if (reading.has(text)) return { ...reach, unit: '', shown: '' };
    const read = readText(text);
    const type = read.is === 'constant' || read.is === 'formula' ? read.type : undefined;
    const {
      unit: bare,
      shown,
      suffix: behind,
      ways,
    } = (like === undefined ? undefined : find(like)) ?? unitOfReading(read, { find, readable, set });
    const unitOf = text.spec.apart ? apartUnit : (name: string): string => name;
    // A limit says its zero as a number: what is under 0° is not “under straight”.
    const said = like === undefined || !ways ? ways : ([ways[0], ways[1]] as const);
    return { ...reach, unit: unitOf(bare), shown: unitOf(shown), suffix: behind, ways: said, type };
  }

  function reachOfValue(spec: ValueSpec): Reach {
    const { path, slot, cell, kind, unit, tradeUnit, suffix, ways, dimension, options, mayBeBlank } = spec;
    const shown = shownUnit(unit, set, tradeUnit);
    const type: ValueType = options ? { kind: 'option', options } : { kind: 'quantity', dimension };
    return { path, slot, cell, kind, unit, shown, suffix, ways, type, settable: spec.settable ?? false, mayBeBlank };
  }

  /** What is known once is known: only a text that is being read, and so needs itself, may answer otherwise later. */
  function find(path: string): Reach | undefined {
    const known = reaches.get(path);
    if (known) return known;
    const found = lookUp(path);
    if (found && reading.size === 0) reaches.set(path, found);
    return found;
  }

  function lookUp(path: string): Reach | undefined {
    const value = values.get(path);
    if (value) return reachOfValue(value);
    const text = texts.get(path);
    if (text && !text.spec.unnamed) return reachOfText(text);
    const curve = curves.get(path);
    if (curve) return { ...reachOfValue(curve), type: undefined };
    return layFromLibrary(path) ? lookUp(path) : undefined;
  }

  /** Numbers of the library take slots only when something names them. */
  function layFromLibrary(path: string): boolean {
    const number = stock.get(path);
    if (!number) return false;
    const slot = allocate(path);
    given.set(slot, number.value);
    builder.value({ ...number.told, cell: '', path, slot, kind: 'library' });
    return true;
  }

  // The same lists as long as nothing is laid, so that what was looked for in them once is known.
  const readable = untilLaid(() => {
    const own = [...texts.values()].filter((text) => !text.spec.unnamed).map((text) => text.spec.path);
    return [...values.keys(), ...own];
  });
  const paths = untilLaid(() => [...readable(), ...stock.keys()]);

  function untilLaid(list: () => string[]): () => readonly string[] {
    let last: readonly string[] = [];
    let laid = -1;
    return () => {
      if (laid !== named.length) last = list();
      laid = named.length;
      return last;
    };
  }

  const inSet = <T extends { readonly message: string }>(told: T): T => ({
    ...told,
    message: inUnitsOf(told.message, set, TOLD_DIGITS),
  });

  const builder: Builder = {
    document,
    blocks,
    tables,
    columns: (table) => valueColumns(tables.get(table)!),
    rows: (table) => rowNames.get(table) ?? [],
    trade,
    claim(path, cell, as = 'name') {
      const name = path.slice(path.lastIndexOf('.') + 1);
      const wrong = nameFault(name, as) ?? (claimed.has(path) ? twice(path) : undefined);
      if (wrong === undefined) claimed.add(path);
      else faults.push({ cell, path, message: wrong });
      return wrong === undefined;
    },
    slots: allocate,
    fixed(key, value, count = 1) {
      const start = allocate(key, count);
      for (let k = 0; k < count; k++) given.set(start + k, value);
      return start;
    },
    numbers(key, values) {
      const start = allocate(key, values.length);
      for (const [k, value] of values.entries()) given.set(start + k, value);
      return start;
    },
    text(spec) {
      const slot = allocate(spec.unnamed ? `${spec.path}#typed` : spec.path);
      const text = { spec, slot };
      texts.set(spec.path, text);
      if (!spec.unnamed) named.push({ text });
      return slot;
    },
    value(spec) {
      values.set(spec.path, spec);
      named.push({ value: spec });
    },
    curve(spec) {
      curves.set(spec.path, spec);
      named.push({ value: spec });
    },
    unit(unit, path, cell) {
      const found: Dimension | undefined = unitNamed(unit)?.dimension;
      if (!found) {
        const message = `${namedAt(path)} has the unit “${unit}”, which is not a unit. Give it one such as mm, g or m/s.`;
        faults.push({ cell, path, message });
      }
      return found;
    },
    later: (work) => {
      putOff.push(work);
    },
    step: (spec) => {
      steps.push({ ...spec, tell: (reason, read) => inSet(spec.tell(reason, read)) });
    },
    broken: (at, told) => {
      steps.push(faultStep(at, inSet(told)));
    },
    fault: (fault) => {
      faults.push(inSet(fault));
    },
    find,
    meant(name, among, say = (near) => (among ? near : namedAt(near))) {
      const near = nearestName(name, among ?? paths());
      return near === undefined ? '' : ` Did you mean ${say(near)}?`;
    },
    paths,
    offer: (place) => {
      places.push(place);
    },
    placesOf: (role) => places.filter((place) => place.role === role),
  };

  return {
    builder,
    texts,
    named,
    steps,
    faults,
    allocations,
    given,
    size: () => size,
    finishLater() {
      for (let work = putOff.shift(); work; work = putOff.shift()) work();
    },
    reading: readText,
    readable,
  };
}

const twice = (path: string): string => `Two things are called “${path}”. Give one of them another name.`;

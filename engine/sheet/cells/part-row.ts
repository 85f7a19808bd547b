import { LENGTH, MASS, ONE, timesDimension } from '../../units/index';
import type { Part, PartsCell } from '../document';
import { named } from '../named';
import type { Slot } from '../program';
import type { Builder, PartStepSpec } from '../specs';
import { cutFrom, isMadeOf } from './cut-from';
import { arealMassOf, densityOf, type Found, linearMassOf } from './material';
import { isPartField, massIsTyped, type PartField, partFields } from './part-fields';

export interface LaidPart {
  /** Where its row of numbers begins. */
  readonly numbers: Slot;
  readonly moment: Slot;
  readonly share: Slot;
}

interface Laid extends LaidPart {
  readonly off: Slot;
  readonly estimate: Slot;
  readonly difference: Slot;
}

/** In which ways a part may be off, in the order of its slots. */
export const OFF_WAYS = ['mass', 'x', 'y', 'z'] as const;
/** Keys of the slots in a row that say how far a part is off, and of those that hold its numbers. */
export const offKey = (path: string): string => `${path}#off`;
export const numbersKey = (path: string): string => `${path}#row`;

/** Lays one part: its texts, what is read of it, and the step that gives its row of numbers. */
export function layPart(cell: PartsCell, row: Part, builder: Builder): LaidPart {
  const path = `${cell.name}.${row.name}`;
  for (const name of Object.keys(row.fields)) {
    if (isPartField(name)) continue;
    const known = partFields(row.shape).flatMap(({ name: each, asWeighed }) => (asWeighed === undefined ? each : []));
    const message = `${named(path)} has nothing called “${name}”. It has ${known.join(', ')}.${builder.meant(name, known)}`;
    builder.fault({ cell: cell.id, path: `${path}.${name}`, message });
  }
  const inputs = layTexts(cell, row, path, builder);
  const laid = layNumbers(cell, row, path, builder);
  builder.later(() => layStep(cell, row, path, inputs, laid, builder));
  return laid;
}

function layTexts(cell: PartsCell, row: Part, path: string, builder: Builder): Map<string, Slot> {
  const inputs = new Map<string, Slot>();
  for (const field of partFields(row.shape)) {
    const { dimension } = field;
    if (!dimension || (field.asWeighed !== undefined && (row.fields[field.name] ?? '').trim() === '')) continue;
    const slot = builder.text({
      cell: cell.id,
      path: `${path}.${field.name}`,
      text: row.fields[field.name] ?? '',
      kind: 'part',
      title: `${row.title}: ${field.words ?? field.title.toLowerCase()}`,
      symbol: field.symbol,
      doc: field.doc,
      unit: field.unit,
      wants: { dimension },
      blank: field.blank,
      needed: missing(path, field),
      range: field.range,
      detail: field.detail,
      // What is read under this path is the mass that counts, weighed or not.
      unnamed: field.name === 'mass' || field.asWeighed !== undefined,
    });
    inputs.set(field.name, slot);
  }
  return inputs;
}

const EXAMPLES: Readonly<Record<string, string>> = {
  g: '12 g',
  'cm²': '120 cm²',
  mm: '45 mm',
  'cm³': '30 cm³',
  '%': '15 %',
};

const missing = (path: string, field: PartField): string =>
  `${named(path)} needs its ${field.title.toLowerCase()}. Type it, such as “${EXAMPLES[field.unit] ?? ''}”.`;

function layNumbers(cell: PartsCell, row: Part, path: string, builder: Builder): Laid {
  const numbers = builder.slots(numbersKey(path), builder.trade.partStride);
  const off = builder.fixed(offKey(path), 0, OFF_WAYS.length);
  const estimate = builder.slots(`${path}.estimate`);
  const difference = builder.slots(`${path}.difference`);
  const moment = builder.slots(`${path}.moment`);
  const share = builder.slots(`${path}.moment_share`);
  const told = { cell: cell.id, kind: 'part' as const };
  builder.value({
    ...told,
    path: `${path}.mass`,
    slot: numbers,
    title: row.title,
    symbol: 'm',
    doc: 'Mass that counts: what the scale says, else the estimate; the estimate again where it is made of something else than when it was weighed.',
    dimension: MASS,
    unit: 'g',
    tradeUnit: 'oz',
    settable: massIsTyped(row),
  });
  builder.value({
    ...told,
    path: `${path}.estimate`,
    slot: estimate,
    title: `${row.title}: estimate`,
    symbol: 'm_e',
    doc: 'Mass from its shape and material, with its finish.',
    dimension: MASS,
    unit: 'g',
    tradeUnit: 'oz',
    detail: true,
  });
  builder.value({
    ...told,
    path: `${path}.difference`,
    slot: difference,
    title: `${row.title}: weighed less estimated`,
    symbol: 'Δm',
    doc: 'What the scale says less the estimate; positive: heavier than thought. No value until weighed.',
    dimension: MASS,
    unit: 'g',
    tradeUnit: 'oz',
    detail: true,
  });
  builder.value({
    ...told,
    path: `${path}.moment`,
    slot: moment,
    title: `${row.title}: moment about the CG`,
    symbol: 'm x',
    doc: 'Mass times distance behind the CG; tail-heavy positive. All parts together give 0.',
    dimension: timesDimension(MASS, LENGTH),
    unit: 'g·mm',
    detail: true,
  });
  builder.value({
    ...told,
    path: `${path}.moment_share`,
    slot: share,
    title: `${row.title}: share of the moment`,
    symbol: '',
    doc: 'Its moment about the CG as a share of all tail-heavy moments.',
    dimension: ONE,
    unit: '%',
    detail: true,
  });
  return { numbers, off, estimate, difference, moment, share };
}

function layStep(
  cell: PartsCell,
  row: Part,
  path: string,
  inputs: Map<string, Slot>,
  laid: Laid,
  builder: Builder,
): void {
  const { trade } = builder;
  const writes = [
    ...Array.from({ length: trade.partStride }, (_, k) => laid.numbers + k),
    laid.estimate,
    laid.difference,
  ];
  for (const field of partFields(row.shape)) {
    if (field.dimension) continue;
    const at = `${path}.${field.name}`;
    const text = row.fields[field.name]?.trim() ?? '';
    const found = text === '' ? { fault: unnamed(path, field) } : STUFF[field.name]!.find(path, text, builder);
    if (found.fault !== undefined) {
      const to = text === '' ? {} : { from: 0, to: row.fields[field.name]!.length };
      builder.broken({ cell: cell.id, path: at, kind: 'part', writes }, { ...to, message: found.fault });
      return;
    }
    inputs.set(STUFF[field.name]!.number, found.slot);
  }
  const { numbers, off, estimate, difference } = laid;
  const weighedAs = weighedAsOf(row, builder);
  builder.step(
    trade.part({ cell: cell.id, path, shape: row.shape, inputs, row: numbers, off, estimate, difference, weighedAs }),
  );
}

/** Under which pick of its choice what is weighed counts; a part without a choice was made of what it says now, or of something else. */
function weighedAsOf(row: Part, builder: Builder): PartStepSpec['weighedAs'] {
  const stuff = cutFrom(row);
  if (row.weighed_as === undefined || stuff === undefined) return undefined;
  const reach = builder.find(stuff);
  if (reach?.type?.kind !== 'option') return isMadeOf(stuff, row.weighed_as) ? undefined : 'something else';
  const option = reach.type.options.indexOf(row.weighed_as);
  return option < 0 ? 'something else' : { picked: reach.slot, option };
}

/** What the texts that are names give, and how it is found. */
const STUFF: Readonly<
  Record<string, { readonly number: string; find(of: string, name: string, builder: Builder): Found }>
> = {
  material: { number: 'density', find: densityOf },
  stack: { number: 'areal_mass', find: arealMassOf },
  wire: { number: 'linear_mass', find: linearMassOf },
};

const unnamed = (path: string, field: PartField): string =>
  `${named(path)} needs its ${field.title.toLowerCase()}. Pick one.`;

import { computed, type ReadonlySignal } from '@preact/signals';
import {
  type CheckCell,
  cellsOf,
  type Document,
  type Fault,
  formatQuantity,
  type NameInfo,
  type Snapshot,
  textAt,
} from '../../engine/index';
import { byPath, steadyList } from './by-path';
import { typedNumber } from './entries';
import { type ShowOptions, showChange, showValue } from './show';

/** Everything that the page reads of the engine's answer, by path. */
export interface Reader {
  readonly names: ReadonlySignal<ReadonlyMap<string, NameInfo>>;
  readonly checks: ReadonlySignal<readonly CheckCell[]>;
  name(path: string): NameInfo | undefined;
  /** SI; NaN where there is no answer. */
  value(path: string): number;
  baseline(path: string): number;
  /** The value waits for the hand to rest: there is only that of a design before, see `beside` of the sheet. */
  behind(path: string): boolean;
  shown(path: string, options?: ShowOptions): string;
  /** What its entry shows: one number as it was typed, else the value. */
  entry(path: string): string;
  /** The value in a unit other than its own; undefined where there is no answer. */
  shownIn(path: string, unit: string): string | undefined;
  /** How far it has moved from the baseline; '' without one. */
  change(path: string): string;
  /** Flag for the text at a path. */
  faultAt(path: string): Fault | undefined;
  /** The first flag at a path or at anything within it. */
  faultWithin(path: string): Fault | undefined;
  faultsOfCell(id: string): readonly Fault[];
  /** Why a result has no answer: the fault of the step that should give it. */
  faultBehind(path: string): Fault | undefined;
  /** What a choice calls one of its options. */
  optionTitle(path: string, option: string): string | undefined;
  /** What a result has come under that it may not: what is red about it. */
  under(path: string): NameInfo['least'];
  /** "3.0 g to 4.0 g" where the trade has a usual band. */
  usualBand(path: string): string | undefined;
}

export function createReader(
  document: ReadonlySignal<Document>,
  snapshot: ReadonlySignal<Snapshot | undefined>,
  names: ReadonlySignal<ReadonlyMap<string, NameInfo>>,
): Reader {
  const faults = computed(() => new Map(snapshot.value?.faults.map((fault) => [fault.path, fault])));
  const byCell = computed(() => faultsByCell(snapshot.value?.faults ?? []));
  const checks = steadyList(() => cellsOf(document.value).filter((cell) => cell.kind === 'check'));
  const choices = steadyList(() => cellsOf(document.value).filter((cell) => cell.kind === 'choice'));

  const behind = computed(() => new Set(snapshot.value?.behind));

  const name = byPath((path) => names.value.get(path));
  const read = (path: string, column: Float64Array | undefined): number => {
    const info = name(path);
    return info ? (column?.[info.slot] ?? Number.NaN) : Number.NaN;
  };
  const value = byPath((path) => read(path, snapshot.value?.values));
  const baseline = byPath((path) => read(path, snapshot.value?.baseline));
  const optionTitle = (path: string, option: string): string | undefined =>
    choices.value.find((cell) => cell.name === path)?.options.find((each) => each.name === option)?.title;
  const show = (path: string, options?: ShowOptions): string => {
    const info = name(path);
    if (!info) return '–';
    const picked = info.options?.[value(path)];
    const title = picked === undefined ? undefined : optionTitle(path, picked);
    return title ?? showValue(info, value(path), options);
  };
  const entry = byPath((path) => {
    const info = name(path);
    const text = info && textAt(document.value, path);
    return (text !== undefined && typedNumber(info!, text)) || show(path);
  });
  const shown = byPath((path) => show(path));
  const shownBare = byPath((path) => show(path, { bare: true }));

  return {
    names,
    checks,
    name,
    value,
    baseline,
    behind: byPath((path) => behind.value.has(name(path)?.slot ?? -1)),
    entry,
    shown: (path, options) => (options?.bare ? shownBare(path) : shown(path)),
    shownIn: (path, unit) => (Number.isNaN(value(path)) ? undefined : formatQuantity(value(path), unit)),
    change: byPath((path) => {
      const info = name(path);
      return info ? showChange(info, value(path), baseline(path)) : '';
    }),
    faultAt: byPath((path) => faults.value.get(path)),
    faultWithin: byPath((path) =>
      snapshot.value?.faults.find((fault) => fault.path === path || fault.path.startsWith(`${path}.`)),
    ),
    faultsOfCell: byPath((id) => byCell.value.get(id) ?? NO_FAULTS),
    faultBehind: byPath((path) => {
      if (!Number.isNaN(value(path))) return undefined;
      const step = path.slice(0, Math.max(0, path.lastIndexOf('.')));
      // What a block computes after others waits under the first of its names.
      const later = snapshot.value?.faults.find((each) => each.state === 'waits' && each.path.startsWith(`${step}.`));
      return faults.value.get(path) ?? faults.value.get(step) ?? (step === '' ? undefined : later);
    }),
    optionTitle,
    under: byPath((path) => underLeast(name(path), value(path))),
    usualBand(path) {
      const info = name(path);
      if (!info?.usual) return undefined;
      return `${showValue(info, info.usual[0], { bare: true })} to ${showValue(info, info.usual[1])}`;
    },
  };
}

/** The least of a result that this value is under; undefined where it has none or keeps it. */
export const underLeast = (info: NameInfo | undefined, si: number): NameInfo['least'] =>
  info?.least && si < info.least.at ? info.least : undefined;

const NO_FAULTS: readonly Fault[] = [];

function faultsByCell(faults: readonly Fault[]): ReadonlyMap<string, readonly Fault[]> {
  const cells = new Map<string, Fault[]>();
  for (const fault of faults) {
    const list = cells.get(fault.cell);
    if (list) list.push(fault);
    else cells.set(fault.cell, [fault]);
  }
  return cells;
}

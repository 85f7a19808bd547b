import { massIsTyped } from '../../sheet/cells/part-fields';
import type { ChoiceCell, Document, PartsCell, Variable } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { textAt } from '../../sheet/paths';
import { cellsOf } from '../../sheet/sheets';
import { usesOf } from '../../sheet/uses';
import type { NameInfo } from '../../terms/index';
import { LENGTH, MASS, sameDimension } from '../../units/index';
import { followsFrom } from '../make/reach';
import { typedSlot } from '../run/axis';
import type { MendCost } from './told';

/** A number that can be changed to mend a result, SI. */
export interface NumberLever {
  readonly is: 'number';
  readonly path: string;
  /** Unit in which it is typed. */
  readonly unit: string;
  /** NaN where nothing is typed. */
  readonly typed: number;
  readonly from: number;
  /** How far it can be changed; an end that nobody has said is infinite. */
  readonly travel: readonly [low: number, high: number];
  /** Beyond this there is nothing to look for. */
  readonly most: readonly [low: number, high: number];
  /** Missing: by what it does to the weight. */
  readonly cost?: MendCost;
  /** The piece that tells where its travel ends for want of room; missing where it ends as it was typed. */
  readonly room?: string;
}
/** A choice that can be taken otherwise. */
export interface ChoiceLever {
  readonly is: 'choice';
  readonly path: string;
  readonly from: number;
  readonly options: readonly string[];
  readonly cost?: MendCost;
}
export type Lever = NumberLever | ChoiceLever;

/** Pieces whose numbers are the day or the rules, not the model. */
const NOT_THE_MODEL: ReadonlySet<string> = new Set(['air', 'flight', 'lap', 'launch', 'glide', 'race']);
/** Roles of what a number makes larger or smaller. */
const SHAPES: ReadonlySet<string> = new Set(['wing', 'tail', 'body', 'lines', 'propeller']);
/** A part is not made lighter than this share of what it weighs. */
const LIGHTEST = 0.5;
/** How far a thing without a travel of its own is moved at most, m. */
const WAY = 0.1;
const MOVABLE = /\b(?:tank|fuel|battery|batteries|pack|accumulator)\b/i;
const WEIGHT = /\b(?:weight|ballast|lead)\b/i;

/** Everything in the design that can be changed and moves the result in a slot. */
export function leversOf(live: Live, target: number): readonly Lever[] {
  const { document, program } = live.compiled;
  const reaches = (path: string): boolean => followsFrom(program, typedSlot(path, program)).has(target);
  const all: readonly Lever[] = [
    ...variablesIn(document).flatMap((row) => variableLever(row, live)),
    ...cellsOf(document).flatMap((cell): readonly Lever[] => {
      if (cell.kind === 'choice') return choiceLever(cell, live);
      if (cell.kind === 'parts') return partLevers(cell, live);
      if (cell.kind !== 'model') return [];
      return fieldsOfRole(live.compiled.role(cell.of)).flatMap((field) => stationLever(`${cell.name}.${field}`, live));
    }),
  ];
  return all.filter(({ path }) => program.constants.has(path) && reaches(path));
}

const fieldsOfRole = (role: string | undefined): readonly string[] =>
  role === 'engine' ? ['station'] : role === 'leadouts' ? ['x'] : [];

const variablesIn = (document: Document): readonly Variable[] =>
  cellsOf(document).flatMap((cell) => (cell.kind === 'variables' ? cell.rows : []));

function infoOf({ compiled }: Live, path: string): NameInfo | undefined {
  return compiled.names.find((info) => info.path === path && info.settable);
}

const valueAt = ({ compiled, state }: Live, path: string): number => {
  const slot = compiled.program.slotOf.get(path);
  return slot === undefined ? Number.NaN : state.m[slot]!;
};
const or = (value: number, otherwise: number): number => (Number.isNaN(value) ? otherwise : value);

/** What kind of thing a variable is goes by where it is read: stations cost nothing, weights weigh, the rest is another size. */
function variableLever({ name }: Variable, live: Live): NumberLever[] {
  const { document } = live.compiled;
  const info = infoOf(live, name);
  const from = valueAt(live, name);
  if (!info || info.options || !Number.isFinite(from)) return [];
  const reads = readers(document, name);
  const models = reads.flatMap(({ model }) => model ?? []);
  if (reads.length > 0 && models.length === reads.length && models.every((of) => NOT_THE_MODEL.has(of))) return [];
  const isMass = sameDimension(info.dimension, MASS);
  const isStation =
    sameDimension(info.dimension, LENGTH) &&
    reads.some(({ path, model }) =>
      model === undefined ? /\.[xyz]$/.test(path) : isStationOf(live.compiled.role(model), path),
    ) &&
    !reads.some(({ model }) => model !== undefined && SHAPES.has(live.compiled.role(model) ?? ''));
  const [low, high] = [or(valueAt(live, `${name}.low`), -Infinity), or(valueAt(live, `${name}.high`), Infinity)];
  const travel = [isMass ? Math.max(0, low) : low, high] as const;
  return [
    {
      ...{ is: 'number', path: name, unit: info.unit, typed: from, from, travel, most: around(from, travel, isMass) },
      ...(isMass ? {} : { cost: isStation ? 'nothing' : 'size' }),
    },
  ];
}

const isStationOf = (role: string | undefined, path: string): boolean =>
  fieldsOfRole(role).some((field) => path.endsWith(`.${field}`)) || role === 'tank';

/** Texts of the design that name a variable; `model`: which kind of model it stands in. */
function readers(document: Document, name: string): readonly { readonly path: string; readonly model?: string }[] {
  const cells = new Map(cellsOf(document).map((cell) => [cell.id, cell]));
  return usesOf(document, name).flatMap(({ cell: id, path, baseline, variant }) => {
    const cell = cells.get(id);
    if (!cell || baseline || variant !== undefined) return [];
    if (cell.kind === 'model') return [{ path, model: cell.of }];
    return cell.kind === 'parts' || cell.kind === 'choice' || cell.kind === 'variables' || cell.kind === 'formula'
      ? [{ path }]
      : [];
  });
}

/** As far again as its travel to both sides; no weight is less than none. */
function around(from: number, [low, high]: readonly [number, number], isMass: boolean): readonly [number, number] {
  const way = Number.isFinite(high - low) ? high - low : Math.max(Math.abs(from), isMass ? 0.1 : WAY);
  const least = (Number.isFinite(low) ? Math.min(low, from) : from) - way;
  const most = (Number.isFinite(high) ? Math.max(high, from) : from) + way;
  return [isMass ? Math.max(0, least) : least, most];
}

function choiceLever(cell: ChoiceCell, live: Live): ChoiceLever[] {
  const options = infoOf(live, cell.name)?.options;
  const from = valueAt(live, cell.name);
  if (!options || !Number.isFinite(from)) return [];
  const { name: path } = cell;
  return [{ is: 'choice', path, from, options, ...(cell.of === 'stack' ? { cost: 'strength' as const } : {}) }];
}

/** A station that is typed as a number in the model. */
function stationLever(path: string, live: Live): NumberLever[] {
  const info = infoOf(live, path);
  const from = info ? live.state.m[typedSlot(path, live.compiled.program)]! : Number.NaN;
  if (!info || !Number.isFinite(from)) return [];
  const [low, high] = info.range ?? [-Infinity, Infinity];
  const travel = [-Infinity, Infinity] as const;
  const most = [Math.max(low, from - WAY), Math.min(high, from + WAY)] as const;
  return [{ is: 'number', path, unit: info.unit, typed: from, from, travel, most, cost: 'nothing' }];
}

/** Tank and battery are moved, weights made heavier or lighter, every other part lighter. */
function partLevers(cell: PartsCell, live: Live): NumberLever[] {
  return cell.rows.flatMap((row): NumberLever[] => {
    const at = `${cell.name}.${row.name}`;
    const levers: NumberLever[] = [];
    if (row.fuel || MOVABLE.test(row.title)) levers.push(...stationLever(`${at}.x`, live));
    const mass = valueAt(live, `${at}.mass`);
    if (!(mass > 0) || row.fuel) return levers;
    const unit = live.compiled.names.find(({ path }) => path === `${at}.mass`)?.unit ?? 'g';
    const path = massIsTyped(row) && isNumber(live, `${at}.mass`) && WEIGHT.test(row.title) ? `${at}.mass` : '';
    const number = { is: 'number', unit, from: mass } as const;
    if (path !== '') {
      const travel = [0, Infinity] as const;
      levers.push({ ...number, path, typed: mass, travel, most: [0, mass + Math.max(mass, 0.1)] });
    } else if (!namesVariable(live.compiled.document, `${at}.mass`)) {
      const span = [LIGHTEST * mass, mass] as const;
      const typed = live.state.m[typedSlot(`${at}.weighed`, live.compiled.program)]!;
      levers.push({ ...number, path: `${at}.weighed`, typed, travel: span, most: span, cost: 'lighter' });
    }
    return levers;
  });
}

const isNumber = ({ compiled }: Live, path: string): boolean => compiled.program.constants.has(path);

/** A weight that is a variable is changed there. */
const namesVariable = (document: Document, path: string): boolean => {
  const text = textAt(document, path)?.trim() ?? '';
  return variablesIn(document).some(({ name }) => name === text);
};

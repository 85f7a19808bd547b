import { lowerTriangle, type Spread } from '../../numerics/index';
import { AT_MASS_SPREAD, AT_STATION_SPREAD } from '../../physics/index';
import { isPartNumber, numbersKey, OFF_WAYS, offKey, offWith, pairPath, spreadPath } from '../../sheet/cells/index';
import type { PartsCell, SpreadCell, SpreadKind, SpreadRow } from '../../sheet/document';
import { type Live, numberAt } from '../../sheet/live';
import { named } from '../../sheet/named';
import type { Slot } from '../../sheet/program';
import { cellsOf } from '../../sheet/sheets';
import { isRemade } from '../../sheet/weighed-as';
import { wiringOf } from '../../sheet/wiring';
import type { SpreadFactor } from '../../terms/index';
import { typedSlot } from '../run/axis';
import { titled } from '../run/titled';
import type { Correlation, SpreadInput } from './input';

/** Numbers that a spread may hold at a time. */
const MOST_NUMBERS = 20_000_000;

/**
 * What differs in a spread cell and how, for the design as it stands, or the sentence that says why it can't be told. What a
 * compiled document has found wrong with the cell is not looked for again.
 */
export const inputsOf = (cell: SpreadCell, live: Live): readonly SpreadInput[] | string =>
  titled(inputs(cell, live), live);

function inputs(cell: SpreadCell, live: Live): readonly SpreadInput[] | string {
  const found: SpreadInput[] = [];
  for (const [k, row] of cell.rows.entries()) {
    const input = inputOfRow(cell, row, k, live);
    if (typeof input === 'string') return input;
    found.push(input);
  }
  const hidden = hiddenInput(found, live);
  if (hidden !== undefined) return hidden;
  if (cell.parts) found.push(...inputsOfParts(found, live));
  const sets = new Set(found.map(({ factor, path }) => factor ?? path)).size + 2;
  const designs = cell.samples * sets;
  if (found.length === 0) return `${named(cell.name)} has nothing that differs: the parts have no uncertainty.`;
  if (designs * cell.wanted.length > MOST_NUMBERS) {
    const most = Math.floor(MOST_NUMBERS / (sets * cell.wanted.length));
    return `${named(cell.name)} asks for ${designs} designs with ${cell.wanted.length} results each: ${cell.samples}, and as many again for each thing that differs. Take ${most} or fewer, or fewer things.`;
  }
  return found;
}

function inputOfRow(cell: SpreadCell, row: SpreadRow, k: number, live: Live): SpreadInput | string {
  const { of } = row;
  const { program } = live.compiled;
  const { m } = live.state;
  const part = partOf(of, live);
  const typed = (size: 'size' | 'above'): number => m[program.slotOf.get(`${spreadPath(cell, k)}.${size}`)!]!;
  const own = part && row.size.trim() === '' ? ownSpread(part, live) : Number.NaN;
  const below = Number.isNaN(own) ? typed('size') : own;
  const isLopsided = row.distribution !== 'normal' && row.above.trim() !== '';
  const above = isLopsided ? typed('above') : below;
  for (const [size, amount] of [
    ['size', below],
    ['above', above],
  ] as const) {
    if (Number.isNaN(amount))
      return `${named(cell.name)} does not know how far ${named(of)} may be off: look at “${row[size]}” there.`;
    if (amount < 0)
      return `${named(cell.name)} lets ${named(of)} be off by “${row[size]}”, which is less than nothing. Type 0 or more.`;
  }
  if (below === 0 && above === 0)
    return `${named(cell.name)} lets ${named(of)} be off by nothing. Type an amount, or remove it.`;
  return inputFor(of, row.distribution, below, above, live);
}

/** A number that differs about what it is now, or the sentence that says why it can't. */
export function inputFor(of: string, kind: SpreadKind, below: number, above: number, live: Live): SpreadInput | string {
  const { program } = live.compiled;
  const part = partOf(of, live);
  const slot = typedSlot(of, program);
  const middle = live.state.m[part ? program.slotOf.get(of)! : slot]!;
  if (Number.isNaN(middle)) return titled(`${named(of)} has no value to differ from. Type one.`, live);
  if (!part) return { path: of, slot, spread: spreadOf(kind, middle, below, above) };
  const factor: SpreadFactor = { path: of, what: part.way === 'mass' ? 'mass' : 'station' };
  return { path: of, slot: part.slot, about: middle, spread: spreadOf(kind, 0, below, above), factor };
}

/** Normal: `below` is the standard deviation. Else as much as that below the middle, and `above` over it. */
function spreadOf(kind: SpreadKind, middle: number, below: number, above: number): Spread {
  if (kind === 'normal') return { kind, middle, deviation: below };
  const [low, high] = [middle - below, middle + above];
  return kind === 'uniform' ? { kind, low, high } : { kind, low, mode: middle, high };
}

interface PartNumber {
  readonly path: string;
  readonly way: (typeof OFF_WAYS)[number];
  /** How far it is off. */
  readonly slot: Slot;
}

const tablesOf = ({ compiled }: Live): readonly PartsCell[] =>
  cellsOf(compiled.document).filter((each) => each.kind === 'parts');

function partOf(of: string, live: Live): PartNumber | undefined {
  if (!isPartNumber(of, tablesOf(live))) return undefined;
  const dot = of.lastIndexOf('.');
  return partNumber(of.slice(0, dot), of.slice(dot + 1) as PartNumber['way'], live);
}

const partNumber = (path: string, way: PartNumber['way'], { compiled }: Live): PartNumber | undefined => {
  const off = compiled.slotRuns.get(offKey(path));
  return off && { path, way, slot: off.start + OFF_WAYS.indexOf(way) };
};

/** The standard deviation that the parts table gives, or has for a part that says nothing. */
function ownSpread({ path, way }: PartNumber, { compiled, state }: Live): number {
  const numbers = compiled.slotRuns.get(numbersKey(path))!.start;
  return state.m[numbers + (way === 'mass' ? AT_MASS_SPREAD : AT_STATION_SPREAD)]!;
}

/**
 * Mass and place of every part that has no row of its own: normal, by its own standard deviations. What is cut from one material or stack is off in
 * mass together, by one draw, a cut-out the other way; not at all where the density of the material has a row.
 */
function inputsOfParts(rowed: readonly SpreadInput[], live: Live): SpreadInput[] {
  const taken = new Set(rowed.map(({ slot }) => slot));
  const typed = new Set(rowed.map(({ path }) => path));
  const stuffs = new Map<string, SpreadFactor>();
  const factorOf = (stuff: string): SpreadFactor => {
    const known = stuffs.get(stuff);
    if (known) return known;
    const factor: SpreadFactor = { path: stuff, what: 'stuff' };
    stuffs.set(stuff, factor);
    return factor;
  };
  return tablesOf(live).flatMap(({ name, rows }) => {
    const cuts = rows.map((row) =>
      offWith(
        row,
        isRemade(`${name}.${row.name}`, row, (path) => numberAt(live, path)),
      ),
    );
    return rows.flatMap((row, k) => {
      const path = `${name}.${row.name}`;
      const place: SpreadFactor = { path: `${path}.x`, what: 'place' };
      const stuff = cuts.filter((each) => each === cuts[k]).length > 1 ? cuts[k] : undefined;
      const mass: SpreadFactor = stuff === undefined ? { path: `${path}.mass`, what: 'mass' } : factorOf(stuff);
      return OFF_WAYS.flatMap((way): SpreadInput[] => {
        const part = partNumber(path, way, live);
        if (!part || taken.has(part.slot)) return [];
        if (way === 'mass' && cuts[k] !== undefined && typed.has(`${cuts[k]}.density`)) return [];
        const own = ownSpread(part, live);
        if (!(own > 0)) return [];
        const isCutOut = way === 'mass' && live.state.m[live.compiled.program.slotOf.get(`${path}.mass`)!]! < 0;
        const spread = { kind: 'normal', middle: 0, deviation: isCutOut ? -own : own } as const;
        const factor = way === 'mass' ? mass : place;
        const draw = way === 'mass' && stuff !== undefined ? { draw: stuff } : {};
        return [{ path: `${path}.${way}`, slot: part.slot, spread, factor, unshown: true, ...draw }];
      });
    });
  });
}

/** What is typed of how rows go together, or the sentence that says why it can't be. Inputs of rows stand in the order of the rows. */
export function correlationsOf(cell: SpreadCell, live: Live): readonly Correlation[] | string {
  const { m } = live.state;
  const found: Correlation[] = [];
  for (const [k, { of, and, text }] of (cell.pairs ?? []).entries()) {
    const r = m[live.compiled.program.slotOf.get(pairPath(cell, k))!]!;
    const place = (path: string): number => cell.rows.findIndex((row) => row.of === path);
    if (Number.isNaN(r))
      return titled(
        `${named(cell.name)} does not know the correlation of ${named(of)} and ${named(and)}: look at “${text}” there.`,
        live,
      );
    found.push({ one: place(of), other: place(and), r });
  }
  if (found.length > 0 && !lowerTriangle(matrixOf(cell.rows.length, found))) {
    return titled(
      `${named(cell.name)} has correlations that cannot all hold at once. Look at those of things that are correlated with each other: if two go with a third, they go with each other too.`,
      live,
    );
  }
  return found;
}

/** The correlation of each with each. */
export function matrixOf(count: number, correlations: readonly Correlation[]): number[][] {
  const matrix = Array.from({ length: count }, (_, k) =>
    Array.from({ length: count }, (_, l): number => (k === l ? 1 : 0)),
  );
  for (const { one, other, r } of correlations) {
    matrix[one]![other] = r;
    matrix[other]![one] = r;
  }
  return matrix;
}

/** A formula that differs by itself no longer follows what it names: that may not differ too, unseen. */
function hiddenInput(found: readonly SpreadInput[], { compiled }: Live): string | undefined {
  const { writer, downstream } = wiringOf(compiled.program);
  for (const { path, slot } of found) {
    const step = writer[slot]!;
    if (step < 0) continue;
    const other = found.find((each) => each.slot !== slot && downstream([each.slot]).includes(step));
    if (other) {
      return `${named(path)} is computed from ${named(other.path)}, and both are to differ: what it gets of its own would hide the other. Remove one of them.`;
    }
  }
  return undefined;
}

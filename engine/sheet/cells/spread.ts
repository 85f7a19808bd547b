import * as v from 'valibot';
import { ONE, unitNamed } from '../../units/index';
import { type PartsCell, SPREAD_KINDS, type SpreadCell, type SpreadPair, type SpreadRow } from '../document';
import { named } from '../named';
import { cellsOf } from '../sheets';
import type { Builder, Reach } from '../specs';
import { baseEntries } from './entries';
import type { CellKindOf, Rewrite } from './kind';
import { OFF_WAYS } from './part-row';
import { mapFields, mapRows, withRow } from './rows';

const SIZES = ['size', 'above'] as const;
const LEAST_SAMPLES = 10;
/** More designs than this take longer than anybody waits. */
export const MOST_SPREAD_SAMPLES = 1_000_000;
const MOST_SEED = 1_000_000;
const DIFFERS: ReadonlySet<Reach['kind']> = new Set(['variable', 'field', 'part', 'library']);

/** Path of what is typed for one row: `tip_spread.row1.size`. */
export const spreadPath = (cell: Pick<SpreadCell, 'name'>, row: number): string => `${cell.name}.row${row + 1}`;

/** Path of the correlation that is typed for one pair: `tip_spread.pair1`. */
export const pairPath = (cell: Pick<SpreadCell, 'name'>, pair: number): string => `${cell.name}.pair${pair + 1}`;

/** Tolerances: many designs whose numbers differ at random from what is typed, and what that makes of the results. */
export const spreadCell: CellKindOf<SpreadCell> = {
  kind: 'tolerances',
  schema: v.strictObject({
    ...baseEntries('tolerances'),
    rows: v.array(
      v.strictObject({
        of: v.string(),
        distribution: v.picklist(SPREAD_KINDS),
        size: v.string(),
        above: v.string(),
      }),
    ),
    pairs: v.optional(v.array(v.strictObject({ of: v.string(), and: v.string(), text: v.string() }))),
    parts: v.boolean(),
    wanted: v.array(v.string()),
    samples: v.pipe(v.number(), v.integer()),
    seed: v.pipe(v.number(), v.integer()),
  }),
  owns: (cell) => [cell.name],
  texts: (cell) => [
    ...cell.rows.flatMap((row, k) =>
      SIZES.map((size) => ({ path: `${spreadPath(cell, k)}.${size}`, text: row[size] })),
    ),
    ...(cell.pairs ?? []).map(({ text }, k) => ({ path: pairPath(cell, k), text })),
  ],
  put(cell, path, text) {
    const pair = cell.pairs?.findIndex((_, k) => path === pairPath(cell, k)) ?? -1;
    if (pair >= 0) return { ...cell, pairs: withRow(cell.pairs!, pair, { ...cell.pairs![pair]!, text }) };
    for (const [k, row] of cell.rows.entries()) {
      const size = SIZES.find((each) => path === `${spreadPath(cell, k)}.${each}`);
      if (size) return { ...cell, rows: withRow(cell.rows, k, { ...row, [size]: text }) };
    }
    return undefined;
  },
  rename: (cell, path, to) => (path === cell.name ? { ...cell, name: to } : undefined),
  rewrite: (cell, change) =>
    mapFields(cell, {
      rows: mapRows(cell.rows, (row) => rewriteRow(row, change)),
      ...(cell.pairs && { pairs: mapRows(cell.pairs, (pair) => rewritePair(pair, change)) }),
      wanted: mapRows(cell.wanted, change.path),
    }),
  lay(cell, builder) {
    if (!builder.claim(cell.name, cell.id)) return;
    const say = (message: string) => builder.fault({ cell: cell.id, path: cell.name, message });
    if (cell.rows.length === 0 && !cell.parts) {
      say(`${named(cell.name)} has nothing that differs. Add something to it, or take the uncertainty of the parts.`);
    }
    if (cell.wanted.length === 0) say(`${named(cell.name)} has no results to show. Add one under “Results asked for”.`);
    whole('designs', cell.samples, LEAST_SAMPLES, MOST_SPREAD_SAMPLES, cell, say);
    whole('as its seed', cell.seed, 0, MOST_SEED, cell, say);
    for (const [k, row] of cell.rows.entries()) {
      for (const size of SIZES) laySize(cell, k, row, size, builder);
      builder.later(() => checkRow(cell, k, builder, say));
    }
    for (const k of (cell.pairs ?? []).keys()) layPair(cell, k, builder, say);
    builder.later(() => checkWanted(cell, builder, say));
  },
};

const rewriteRow = (row: SpreadRow, { formula, path }: Rewrite): SpreadRow =>
  mapFields(row, { of: path(row.of), size: formula(row.size), above: formula(row.above) });

const rewritePair = (pair: SpreadPair, { formula, path }: Rewrite): SpreadPair =>
  mapFields(pair, { of: path(pair.of), and: path(pair.and), text: formula(pair.text) });

/** A correlation of two of the rows, typed as a number. */
function layPair(cell: SpreadCell, k: number, builder: Builder, say: (message: string) => void): void {
  const { of, and, text } = cell.pairs![k]!;
  builder.text({
    cell: cell.id,
    path: pairPath(cell, k),
    text,
    kind: 'limit',
    title: `correlation of ${named(of)} and ${named(and)}`,
    doc: 'From −1 to 1: 0 is off by themselves, near 1 both too large or both too small.',
    unit: '',
    wants: { dimension: ONE },
    range: [-0.999, 0.999],
    detail: true,
  });
  const rows = new Set(cell.rows.map((row) => row.of));
  for (const path of [of, and]) {
    if (!rows.has(path)) {
      say(
        `${named(cell.name)} has a correlation of ${named(of)} and ${named(and)}, but ${named(path)} does not differ there. Let it differ, or remove the correlation.`,
      );
      return;
    }
  }
  const alike = (each: SpreadPair): boolean =>
    (each.of === of && each.and === and) || (each.of === and && each.and === of);
  if (of === and)
    say(`${named(cell.name)} has a correlation of ${named(of)} with itself. Remove it, or take another thing.`);
  else if (cell.pairs!.findIndex(alike) < k) {
    say(`${named(cell.name)} has two correlations of ${named(of)} and ${named(and)}. Remove one of them.`);
  }
}

function whole(
  what: string,
  found: number,
  least: number,
  most: number,
  { name }: SpreadCell,
  say: (message: string) => void,
): void {
  if (found >= least && found <= most) return;
  say(`${named(name)} asks for ${found} ${what}. ${least} to ${most} are allowed.`);
}

const TITLES = {
  normal: { size: 'standard deviation', above: 'not used' },
  uniform: { size: 'as much below', above: 'as much above' },
  triangular: { size: 'as much below', above: 'as much above' },
} as const;

function laySize(cell: SpreadCell, k: number, row: SpreadRow, size: (typeof SIZES)[number], builder: Builder): void {
  builder.text({
    cell: cell.id,
    path: `${spreadPath(cell, k)}.${size}`,
    text: row[size],
    kind: 'limit',
    title: `${named(row.of)}, ${TITLES[row.distribution][size]}`,
    doc: size === 'size' ? 'Blank: the uncertainty that the parts table gives.' : 'Blank: as much as below.',
    like: row.of,
    apart: true,
    unit: '',
    wants: 'anything',
    blank: Number.NaN,
    detail: true,
  });
}

function checkRow(cell: SpreadCell, k: number, builder: Builder, say: (message: string) => void): void {
  const row = cell.rows[k]!;
  const { of } = row;
  const reach = builder.find(of);
  const at = spreadPath(cell, k);
  const text = (path: string, message: string) => builder.fault({ cell: cell.id, path, message });
  if (!reach) {
    say(`${named(cell.name)} lets “${of}” differ: nothing has that name.${builder.meant(of)}`);
    return;
  }
  const part = partNumber(of, builder);
  if (!part && (!reach.settable || !DIFFERS.has(reach.kind))) {
    say(
      `${named(cell.name)} lets ${named(of)} differ. Only what is typed can: a variable, something typed in the model, or the mass or station of a part. Make it a variable and let that differ.`,
    );
    return;
  }
  if (reach.type?.kind === 'option') {
    say(`${named(cell.name)} lets ${named(of)} differ, which is one of a list. Take a number.`);
    return;
  }
  if (cell.rows.findIndex((each) => each.of === of) < k)
    say(`${named(cell.name)} has ${named(of)} twice. Remove one of them.`);
  const blank = row.size.trim() === '';
  if (blank && !part) {
    text(`${at}.size`, `${named(of)} has no amount to differ by. Type one, such as “${exampleOf(reach)}”.`);
  } else if (blank && row.distribution !== 'normal') {
    text(
      `${at}.size`,
      `${named(of)} has no amount to differ by. Type one, such as “${exampleOf(reach)}”; the uncertainty of the part itself is a standard deviation: for that take normal.`,
    );
  }
  for (const size of SIZES) {
    if (row[size].search(/°[CF]/) < 0) continue;
    text(
      `${at}.${size}`,
      `${row[size].trim()} is a point on a scale. How far ${named(of)} may be off is written in K: “2 K”.`,
    );
  }
}

const exampleOf = ({ shown: unit }: Reach): string => {
  const offset = unitNamed(unit)?.offset ?? 0;
  return offset === 0 ? `2 ${unit}`.trim() : '2 K';
};

/** Whether a path is the mass or a station of a part: these may be off whatever the part is made of. */
export const isPartNumber = (path: string, tables: readonly PartsCell[]): boolean =>
  tables.some(({ name, rows }) => rows.some((row) => OFF_WAYS.some((way) => path === `${name}.${row.name}.${way}`)));

const partNumber = (path: string, { document }: Builder): boolean =>
  isPartNumber(
    path,
    cellsOf(document).filter((each) => each.kind === 'parts'),
  );

function checkWanted(cell: SpreadCell, builder: Builder, say: (message: string) => void): void {
  for (const path of cell.wanted) {
    const reach = builder.find(path);
    if (!reach) say(`${named(cell.name)} asks for “${path}”: nothing has that name.${builder.meant(path)}`);
    else if (reach.kind === 'curve')
      say(`${named(cell.name)} asks for ${named(path)}, which is a curve. Take a single number.`);
    else if (reach.type && reach.type.kind !== 'quantity') {
      say(`${named(cell.name)} asks for ${named(path)}, which is one of a list. Take a number.`);
    }
  }
}

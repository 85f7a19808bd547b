import {
  formatQuantity,
  PART_SHAPES,
  type Part,
  type PartField,
  type PartShape,
  partFields,
  readEntry,
  type UnitSet,
} from '../../../../engine/index';
import type { PasteColumn, Target } from '../../shared/paste-columns';
import { type Decimal, withPoint } from '../../shared/separators';
import { shapeList } from '../shapes';
import { targetOf } from './columns';

/** A name that a text of a part can say, and what people call it. */
export interface KnownName {
  readonly name: string;
  readonly title: string;
}

/** What a row is read beside. */
export interface Reading {
  readonly decimal: Decimal;
  readonly units: UnitSet;
  /** By the text that takes it: material, stack, wire. */
  readonly known: Readonly<Record<string, readonly KnownName[]>>;
}

export type RowRead =
  | { readonly part: Omit<Part, 'name'>; readonly name: string }
  | { readonly faults: readonly string[] };

const FIELDS = new Map(PART_SHAPES.flatMap(partFields).map((field) => [field.name, field]));
/** Texts of a shape alone, before those that every part has. */
const sizesOf = (shape: PartShape): readonly PartField[] => {
  const all = partFields(shape);
  return all.slice(
    0,
    all.findIndex(({ name }) => name === 'count'),
  );
};

/** One line of a pasted table as a part, or what is wrong with it. */
export function readRow(cells: readonly string[], columns: readonly PasteColumn[], reading: Reading): RowRead {
  const faults: string[] = [];
  const said = new Map<string, string>();
  for (const [k, column] of columns.entries()) {
    const target = targetOf(column.to);
    const text = (cells[k] ?? '').trim();
    if (!target || text === '') continue;
    const read = readCell(text, target, column.unit, reading);
    if ('wrong' in read) faults.push(`${target.title}: ${read.wrong}`);
    else said.set(target.key, read.text);
  }
  const title = said.get('title') ?? '';
  if (title === '') faults.push('Part is blank. Write what the part is.');
  else if (/^(sum|total|totals|all parts|together)\b/i.test(title)) {
    faults.push(`“${title}” reads as the sum of the others. Remove the line, or call it otherwise.`);
  }
  if (faults.length > 0) return { faults };
  const all = said.get('mass_all');
  if (all !== undefined) said.set('mass', said.has('count') ? `(${all}) ÷ ${said.get('count')}` : all);
  // One of a thing is what a part is when nothing is said.
  if (said.get('count') === '1') said.delete('count');
  const shaped = shapeOf(said, title);
  if ('wrong' in shaped) faults.push(shaped.wrong);
  if (!said.has('x')) faults.push(`“${title}” has no station. Write where it is.`);
  const fuel = said.get('fuel')?.toLowerCase() ?? 'no';
  if (!SAYS_YES.has(fuel) && !SAYS_NO.has(fuel)) faults.push(`Fuel: “${fuel}” says neither yes nor no.`);
  if ('wrong' in shaped || faults.length > 0) return { faults };
  const fields = Object.fromEntries([...said].filter(([key]) => FIELDS.has(key)));
  // What is known of it is what the scale says: it is what it weighs, too.
  if (shaped.shape === 'point' && fields.mass === undefined) fields.mass = fields.weighed!;
  const as = said.get('weighed_as');
  return {
    part: {
      ...{ title, shape: shaped.shape, fields },
      ...(SAYS_YES.has(fuel) ? { fuel: true } : {}),
      ...(as === undefined ? {} : { weighed_as: as }),
    },
    name: said.get('name') ?? '',
  };
}

const SAYS_YES: ReadonlySet<string> = new Set(['yes', 'true', 'x', '1']);
const SAYS_NO: ReadonlySet<string> = new Set(['no', 'false', '-', '0']);

type Text = { readonly text: string } | { readonly wrong: string };

function readCell(text: string, target: Target, unit: string, reading: Reading): Text {
  if (target.key === 'shape') return shapeNamed(text);
  const known = reading.known[target.key];
  if (known) return named(text, known, target);
  if (!target.dimension) return { text };
  const plain = withPoint(text, reading.decimal);
  if ('wrong' in plain) return { wrong: `${plain.wrong}. Write it so, or choose the other sign.` };
  const read = readEntry(plain.text, unit, reading.units);
  if (!read.ok) return { wrong: read.fault.message };
  const [low, high] = FIELDS.get(target.key)?.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  if (!(read.si >= low && read.si <= high)) {
    const from = formatQuantity(low, unit);
    const allowed = high === Number.POSITIVE_INFINITY ? `at least ${from}` : `${from} to ${formatQuantity(high, unit)}`;
    return { wrong: `“${text}” is out of range. Allowed: ${allowed}.` };
  }
  return {
    text: /^[+\-−]?[\d.\s/]+(e[+-]?\d+)?$/i.test(plain.text) && unit !== '' ? `${plain.text} ${unit}` : plain.text,
  };
}

/** A material, stack or wire by its name or by its title. */
function named(text: string, known: readonly KnownName[], { title }: Target): Text {
  const plain = (words: string): string => words.toLowerCase().replaceAll('_', ' ').replaceAll(',', '').trim();
  const meant = plain(text);
  const found =
    known.find(({ name }) => name === text) ??
    known.find((each) => plain(each.title) === meant || plain(each.name) === meant);
  if (found) return { text: found.name };
  const near = known.filter((each) => plain(each.title).includes(meant)).slice(0, 3);
  const hint = near.length > 0 ? ` Near it: ${near.map((each) => each.title).join('; ')}.` : '';
  return { wrong: `there is no ${title.toLowerCase()} called “${text}”.${hint}` };
}

function shapeNamed(text: string): Text {
  const meant = text.toLowerCase();
  const found = shapeList.find(({ shape, word }) => shape === meant || word === meant);
  if (found) return { text: found.shape };
  return { wrong: `there is no shape called “${text}”. There are: ${shapeList.map(({ word }) => word).join(', ')}.` };
}

/** The shape that is said, else the one whose sizes stand in the line: a mass makes a weight. */
function shapeOf(said: ReadonlyMap<string, string>, title: string): { shape: PartShape } | { readonly wrong: string } {
  const lacks = (shape: PartShape): readonly PartField[] =>
    sizesOf(shape).filter(({ name, blank }) => blank === undefined && !said.has(name));
  const shape = said.get('shape') as PartShape | undefined;
  if (shape) {
    const [lacking] = lacks(shape);
    const weighed = shape === 'point' && said.has('weighed');
    return lacking && !weighed ? { wrong: `“${title}” lacks its ${lacking.title.toLowerCase()}.` } : { shape };
  }
  if (said.has('mass')) return { shape: 'point' };
  const given = (each: PartShape): number => sizesOf(each).filter(({ name }) => said.has(name)).length;
  const fitting = PART_SHAPES.filter((each) => each !== 'point' && lacks(each).length === 0);
  const best = fitting.toSorted((a, b) => given(b) - given(a))[0];
  if (best) return { shape: best };
  if (said.has('weighed')) return { shape: 'point' };
  return {
    wrong: `“${title}” has no mass, and no sizes from which one comes. Write a mass, or the sizes and material of a shape.`,
  };
}

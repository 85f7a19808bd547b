import { isCompared } from './baseline';
import { mapRows } from './cells/rows';
import { differencesOf } from './differences';
import type { Document, Variant } from './document';
import type { BlockLinks } from './links';
import { textAt } from './paths';
import { cellsOf } from './sheets';
import type { Change } from './transaction';

/** Path → text. */
export type VariantTexts = Readonly<Record<string, string>>;

export const variantsOf = ({ variants = [] }: Document): readonly Variant[] => variants;

/**
 * What is set now: every slide and choice, and everything else that differs from the baseline. A variant that holds all of
 * it stays the design that it was, whichever slide is moved afterwards.
 */
export function setNow(document: Document): VariantTexts {
  const slid = cellsOf(document).flatMap((cell) => {
    if (cell.kind === 'variables') return cell.rows.map(({ name, text }) => [name, text] as const);
    return cell.kind === 'choice' ? [[cell.name, cell.text] as const] : [];
  });
  return Object.fromEntries([...slid, ...differencesOf(document).map(({ path, now }) => [path, now] as const)]);
}

/** The wanted name as it is written, or with the first number behind it that no other variant has. */
export function freeVariantName(document: Document, wanted: string): string {
  const plain = tidy(wanted) || 'Variant';
  const taken = new Set(variantsOf(document).map(({ name }) => alike(name)));
  const stem = plain.replace(/ \d+$/, '');
  let name = plain;
  for (let k = 2; taken.has(alike(name)); k++) name = `${stem} ${k}`;
  return name;
}

const tidy = (name: string): string => name.trim().replace(/\s+/g, ' ');
const alike = (name: string): string => tidy(name).toLowerCase();

/** Every one with a name that no other has: the first keeps it. */
export function withOwnVariantNames(document: Document): Document {
  const { variants } = document;
  if (!variants || new Set(variants.map(({ name }) => alike(name))).size === variants.length) return document;
  return withAll({ ...document, variants: [] }, variants);
}

/** Each under a name that is free among those before it. */
function withAll(document: Document, variants: readonly Variant[]): Document {
  let now = document;
  for (const each of variants) {
    const named = { ...each, name: freeVariantName(now, each.name) };
    now = { ...now, variants: [...variantsOf(now), named] };
  }
  return now;
}

/** Adds variants behind those that there are, each under a name of its own. What has no place in this design comes along. */
export function addingVariants(document: Document, variants: readonly Variant[]): readonly Change[] {
  return [putting(variantsOf(withAll(document, variants)))];
}

export const removingVariant = (document: Document, name: string): readonly Change[] => [
  putting(variantsOf(document).filter((each) => each.name !== name)),
];

/** What is wrong with another name for a variant; undefined where nothing is. */
export function variantNameFault(document: Document, name: string, to: string): string | undefined {
  if (tidy(to) === '') return 'A variant needs a name. Type what you call it, such as “Ply tail”.';
  const other = variantsOf(document).find((each) => each.name !== name && alike(each.name) === alike(to));
  return other && `Another variant is called “${other.name}” already. Choose another name.`;
}

/** Throws RangeError for a name that `variantNameFault` refuses: a mistake of the program. */
export function renamingVariant(document: Document, name: string, to: string): readonly Change[] {
  const fault = variantNameFault(document, name, to);
  if (fault !== undefined) throw new RangeError(fault);
  return changing(document, name, (each) => ({ ...each, name: tidy(to) }));
}

/** Another text at one of its paths; undefined leaves that as the design has it. */
export const editingVariant = (
  document: Document,
  name: string,
  path: string,
  text: string | undefined,
): readonly Change[] =>
  changing(document, name, ({ changes, ...rest }) => {
    const { [path]: _, ...others } = changes;
    return { ...rest, changes: text === undefined ? others : { ...changes, [path]: text } };
  });

/** So many at most stand on a chart: more ghosts can't be told apart. */
export const MOST_ON_CHARTS = 3;

/** Shows its ghost on the charts or takes it off them. One more than there is room for takes the place of the first. */
export function chartingVariant(document: Document, name: string, shown: boolean): readonly Change[] {
  const others = variantsOf(document).filter((each) => each.on_charts && each.name !== name);
  const leave = shown && others.length >= MOST_ON_CHARTS ? others[0]!.name : undefined;
  const variants = variantsOf(document).map(({ on_charts, ...each }): Variant => {
    const on = each.name === name ? shown : on_charts && each.name !== leave;
    return on ? { ...each, on_charts: true } : each;
  });
  return [putting(variants)];
}

/**
 * The variants when what they change at one path is typed at others from now on: a field reads a variable that was made of
 * it, or a variable is gone and its number stands in the fields again.
 */
export function movedVariants(
  document: Document,
  moves: ReadonlyMap<string, readonly string[]>,
): readonly Variant[] | undefined {
  return (
    document.variants &&
    mapRows(document.variants, (variant) => {
      const entries = Object.entries(variant.changes);
      if (!entries.some(([path]) => moves.has(path))) return variant;
      const moved = entries.flatMap(([path, text]) => (moves.get(path) ?? [path]).map((to) => [to, text] as const));
      return { ...variant, changes: Object.fromEntries(moved) };
    })
  );
}

/** What a variant changes of the design as it stands, and what has no place there any more. */
export interface VariantChanges {
  readonly texts: readonly (readonly [path: string, text: string])[];
  readonly gone: readonly string[];
}

/** `here`: whether a text of the design stands at a path. */
export function changesOfVariant(
  document: Document,
  { changes }: Pick<Variant, 'changes'>,
  here: (path: string) => boolean,
): VariantChanges {
  const all = Object.entries(changes);
  return {
    texts: all.filter(([path, text]) => here(path) && textAt(document, path) !== text),
    gone: all.flatMap(([path]) => (here(path) ? [] : path)),
  };
}

/** Whether a text of the design stands at a path. A model takes the fields that its declaration names; another's are not its own. */
export function isInDesign(document: Document, path: string, blocks: readonly BlockLinks[]): boolean {
  if (textAt(document, path) === undefined || !isCompared(document, path)) return false;
  const model = cellsOf(document).find((cell) => cell.kind === 'model' && path.startsWith(`${cell.name}.`));
  if (model?.kind !== 'model') return true;
  const fields = blocks.find(({ kind }) => kind === model.of)?.fields ?? [];
  return fields.some(({ name, kind }) => kind !== 'link' && path === `${model.name}.${name}`);
}

/** Makes a variant the design: each of its texts where it has its place. The variant stays, and now is no other than the design. */
export const keepingVariant = (document: Document, name: string, blocks: readonly BlockLinks[]): readonly Change[] =>
  textsOfVariant(document, name, blocks).map(([path, text]) => ({ change: 'text', path, text }));

/** Makes a variant what the design is compared with. The design stays as it is set. */
export function variantAsBaseline(document: Document, name: string, blocks: readonly BlockLinks[]): readonly Change[] {
  const texts = textsOfVariant(document, name, blocks);
  return [{ change: 'head', head: { baseline: Object.fromEntries(texts), baseline_design: null } }];
}

const textsOfVariant = (document: Document, name: string, blocks: readonly BlockLinks[]): VariantChanges['texts'] =>
  changesOfVariant(document, variantOf(document, name), (path) => isInDesign(document, path, blocks)).texts;

function variantOf(document: Document, name: string): Variant {
  const variant = variantsOf(document).find((each) => each.name === name);
  if (!variant) throw new RangeError(`There is no variant called ${name}`);
  return variant;
}

const changing = (document: Document, name: string, change: (variant: Variant) => Variant): readonly Change[] => {
  const variant = variantOf(document, name);
  return [putting(variantsOf(document).map((each) => (each === variant ? change(each) : each)))];
};

const putting = (variants: readonly Variant[]): Change => ({
  change: 'head',
  head: { variants: variants.length === 0 ? null : variants },
});

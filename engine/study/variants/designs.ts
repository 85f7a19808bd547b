import { baselineOf, isCompared } from '../../sheet/baseline';
import type { Document } from '../../sheet/document';
import type { Live } from '../../sheet/live';
import { putText, textAt } from '../../sheet/paths';
import { changesOfVariant, variantsOf } from '../../sheet/variants';
import type { VariantChange, VariantColumn, VariantShares } from '../../terms/index';
import { baselineTexts, type Otherwise } from './baseline-texts';

/** A design to be computed. `anew`: it is made of other pieces than the one that stands. */
export type Design = { readonly texts: Otherwise } | { readonly anew: Document };

/** A column of the table, with the places of its designs among all that are computed. */
export interface PlannedColumn extends Pick<VariantColumn, 'what' | 'name' | 'changes' | 'gone'> {
  readonly design: number;
  readonly method: VariantShares['method'];
  /** `orders`: by the mask of the changes that are made; `alone`: with each change by itself. */
  readonly parts: readonly number[];
}

/** The columns of the variants of one document. */
export interface PlannedTable {
  readonly from: 'baseline' | 'design';
  /** Design that differences are from, and the one that changes begin with: another where pieces came or went since. */
  readonly reference: number;
  readonly start: number;
  readonly columns: readonly PlannedColumn[];
}

export interface Planned {
  readonly table: PlannedTable;
  /** Those that are columns come first: so many. */
  readonly designs: readonly Design[];
  readonly whole: number;
}

/** More changes have too many orders; then each is made alone. */
const MOST_ORDERED = 5;

export function planDesigns(live: Live): Planned {
  const { document } = live.compiled;
  const { put, designs } = designList();
  const none: Otherwise = new Map();
  const present = put({ texts: none });
  const then = baselineOf(document);
  const start = then && !document.baseline_design ? baselineTexts(live) : none;
  const base: Design | undefined = then && (document.baseline_design ? { anew: then } : { texts: start });
  const reference = base ? put(base) : present;
  const drafts = [
    ...(base ? [{ what: 'baseline' as const, name: '', texts: start, gone: [], design: reference }] : []),
    { what: 'design' as const, name: '', texts: none, gone: [], design: present },
    ...variantsOf(document).map((variant) => {
      const { texts, gone } = changesOfVariant(document, variant, (path) => isHere(live, path));
      const otherwise: Otherwise = new Map(texts);
      return {
        what: 'variant' as const,
        name: variant.name,
        texts: otherwise,
        gone,
        design: put({ texts: otherwise }),
      };
    }),
  ];
  const whole = designs.length;
  const columns = drafts.map(({ texts, ...draft }): PlannedColumn => {
    const changes = changesBetween(live, start, texts);
    const ordered = changes.length <= MOST_ORDERED && changes.every((change) => isOfValue(live, change));
    const made = (isMade: (k: number) => boolean): number => put({ texts: withChanges(live, start, changes, isMade) });
    const parts = ordered
      ? Array.from({ length: 1 << changes.length }, (_, mask) => made((k) => (mask & (1 << k)) !== 0))
      : changes.map((_, k) => made((n) => n === k));
    return { ...draft, changes, method: ordered ? 'orders' : 'alone', parts };
  });
  const table: PlannedTable = { from: base ? 'baseline' : 'design', reference, start: put({ texts: start }), columns };
  return { table, designs, whole };
}

/** Whether a text of the design stands at a path. */
export const isHere = ({ compiled }: Live, path: string): boolean =>
  compiled.read(path, '') !== undefined && isCompared(compiled.document, path);

/** Each design once. */
function designList() {
  const designs: Design[] = [];
  const known = new Map<string, number>();
  const put = (design: Design): number => {
    const key = 'anew' in design ? 'anew' : JSON.stringify([...design.texts].sort(([a], [b]) => (a < b ? -1 : 1)));
    const at = known.get(key) ?? designs.push(design) - 1;
    known.set(key, at);
    return at;
  };
  return { designs, put };
}

/** What one design has otherwise than the other; what has the same value in other words isn't told. */
function changesBetween(live: Live, from: Otherwise, to: Otherwise): VariantChange[] {
  const { document } = live.compiled;
  const paths = [...new Set([...to.keys(), ...from.keys()])];
  return paths.flatMap((path) => {
    const now = textAt(document, path) ?? '';
    const change = { path, from: from.get(path) ?? now, to: to.get(path) ?? now };
    return change.from === change.to || isSameValue(live, change) ? [] : [change];
  });
}

function isSameValue({ compiled }: Live, { path, from, to }: VariantChange): boolean {
  const value = compiled.constant(path, to);
  return value !== undefined && Object.is(value, compiled.constant(path, from));
}

/** A change from one number or option to another, which the same program computes. */
const isOfValue = ({ compiled }: Live, { path, from, to }: VariantChange): boolean =>
  compiled.constant(path, from) !== undefined && compiled.constant(path, to) !== undefined;

function withChanges(
  live: Live,
  start: Otherwise,
  changes: readonly VariantChange[],
  made: (k: number) => boolean,
): Otherwise {
  const { document } = live.compiled;
  const texts = new Map(start);
  for (const [k, { path, to }] of changes.entries()) if (made(k)) texts.set(path, to);
  for (const [path, text] of texts) if (textAt(document, path) === text) texts.delete(path);
  return texts;
}

/** The document of a design. */
export function documentOf(document: Document, design: Design): Document {
  if ('anew' in design) return design.anew;
  return [...design.texts].reduce((now, [path, text]) => putText(now, path, text) ?? now, document);
}

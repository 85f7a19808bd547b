import { type Dimension, sameDimension, shownUnit, type UnitSet, unitNamed } from '../../../engine/index';

/** What a column of a pasted table can be. */
export interface Target {
  readonly key: string;
  readonly title: string;
  /** Missing: words. */
  readonly dimension?: Dimension | undefined;
  readonly unit: string;
}

/** A column as it is matched: what it is, '' to leave it out, and the unit of its bare numbers. */
export interface PasteColumn {
  readonly head: string;
  readonly to: string;
  readonly unit: string;
}

/** The unit of a bare number where the heading says none: that of the design. */
export const unitFor = ({ dimension, unit }: Target, set: UnitSet): string => (dimension ? shownUnit(unit, set) : '');

/**
 * Matches each column by its heading: "mass, g", "Mass (g)" and "weight [oz]" are masses. One that says nothing known is left out.
 * `known`: what words mean, in small letters; `again`: what may stand in several columns.
 */
export function matchHeading(
  heading: readonly string[],
  known: (words: string) => Target | undefined,
  set: UnitSet,
  again: ReadonlySet<string> = new Set(),
): readonly PasteColumn[] {
  const taken = new Set<string>();
  return heading.map((head) => {
    const [, before, within] = /^(.*?)\s*(?:,|\(|\[)\s*([^,()[\]]+?)\s*[)\]]?\s*$/.exec(head) ?? [];
    const unit = within === undefined ? undefined : unitNamed(within);
    const target = known((unit ? before! : head).trim().toLowerCase());
    const fits = target && (!unit || (target.dimension && sameDimension(unit.dimension, target.dimension)));
    if (!target || !fits || (taken.has(target.key) && !again.has(target.key))) return { head, to: '', unit: '' };
    taken.add(target.key);
    return { head, to: target.key, unit: unit?.name ?? unitFor(target, set) };
  });
}

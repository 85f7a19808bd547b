import type { Dimension, Ways } from '../units/index';

/** One name that can be read or set. Slots of one document shape. */
export interface NameInfo {
  readonly path: string;
  readonly slot: number;
  readonly kind:
    | 'variable'
    | 'limit'
    | 'choice'
    | 'formula'
    | 'field'
    | 'result'
    | 'curve'
    | 'part'
    | 'fold'
    | 'library';
  readonly cell: string;
  readonly title: string;
  readonly symbol: string;
  readonly dimension: Dimension;
  /** Unit it is shown in, in the document's unit set; '' = plain number. */
  readonly unit: string;
  /** Unit in which a bare number in its text is read, whatever the unit set; missing: `unit`. */
  readonly bare?: string;
  /** Written behind the number in place of a unit ("× weight" for pull per weight). */
  readonly suffix: string;
  /** Words for a value above and below zero, said in place of its sign. */
  readonly ways?: Ways;
  readonly doc: string;
  /** Option names where the slot holds an index. */
  readonly options?: readonly string[];
  /** A person may type here. */
  readonly settable: boolean;
  /** Usual band, SI (common practice, no source). */
  readonly usual?: readonly [number, number];
  /** Range allowed for a field, SI. */
  readonly range?: readonly [number, number];
  /** What a result may not come under, SI, what is wrong then, and whether the design has a stop then. */
  readonly least?: { readonly at: number; readonly because: string; readonly stops?: true };
  readonly detail?: boolean;
  /** Where the number of a blank field comes from: the path of what stands in it, since the piece that gives it is there. */
  readonly takes?: string;
}

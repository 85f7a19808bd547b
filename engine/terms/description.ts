import type { Dimension } from '../units/index';
import type { TraceColumn } from './trace';

export interface TraceDescription {
  readonly name: string;
  readonly title: string;
  readonly doc: string;
  /** `unit` is the metric one. */
  readonly columns: readonly TraceColumn[];
  /** Corners of outlines for a picture of the block's own; no chart is drawn from it. */
  readonly outlines?: true;
}

/** A caution with the role of the cells below which it stands. */
export interface RoleCaution {
  readonly role: string;
  /** Figures, as role.result, after which it stands in the list of key figures. */
  readonly figures: readonly string[];
  /** Results as role.result, of which `{greatest|unit}` in a sentence is the greatest that the design has. */
  readonly greatest: readonly string[];
  /** It stands only while this result is over this number, SI. */
  readonly over?: { readonly result: string; readonly at: number };
  readonly sentences: readonly string[];
}

/** Block declarations as plain data. */
export interface BlockDescription {
  readonly kind: string;
  readonly role: string;
  readonly title: string;
  readonly doc: string;
  readonly fields: readonly FieldDescription[];
  /** Outlines that may be given by their corners, in the place of fields. */
  readonly outlines: readonly OutlineDescription[];
  readonly results: readonly ResultDescription[];
  readonly reasons: readonly { readonly name: string; readonly text: string }[];
  readonly traces: readonly TraceDescription[];
  /** How what was found from measurements is kept as a row of the user's own; missing: there is no such row. */
  readonly keeps?: {
    readonly table: string;
    /** With results in braces. */
    readonly title: string;
    /** Column of the table → field or result that says it. */
    readonly columns: Readonly<Record<string, string>>;
    readonly measured: readonly string[];
    readonly lost: readonly string[];
  };
  /** Names of fields or results that say in one line what it is. */
  readonly line: readonly string[];
  /** Each is said with its title. */
  readonly lineTitled?: true;
}

export interface OutlineDescription {
  readonly name: string;
  readonly title: string;
  /** What it goes round, where it begins and which way, in a sentence or two. */
  readonly doc: string;
  /** The view of the drawing in which it lies. */
  readonly view: 'plan' | 'side';
  /** On the drawing the second length goes the other way: of the inboard panel. */
  readonly mirrored?: true;
  /** The two lengths of a corner in the order in which they are typed, with what is allowed, SI. */
  readonly corner: readonly [OutlineAxis, OutlineAxis];
  readonly unit: string;
  readonly tradeUnit: string;
  /** Corners at least. */
  readonly least: number;
  /** Whether the last corner joins the first by itself; of a panel the root chord lies between. */
  readonly closed: boolean;
  /** Fields that are not read while it has corners. */
  readonly replaces: readonly string[];
}
interface OutlineAxis {
  readonly title: string;
  readonly range: readonly [number, number];
}

export interface FieldDescription {
  readonly name: string;
  readonly title: string;
  readonly symbol: string;
  readonly doc: string;
  readonly kind: 'quantity' | 'option' | 'link';
  readonly dimension: Dimension;
  readonly unit: string;
  readonly tradeUnit: string;
  readonly suffix: string;
  /** Default as text with its unit, '' when the block estimates it. */
  readonly default: string;
  readonly basis: string;
  readonly range?: readonly [number, number];
  readonly options?: readonly string[];
  readonly role?: string;
  /** What a builder calls that role: "fuselage". */
  readonly roleWords?: string;
  /** Of a link: the piece may be missing. */
  readonly optional?: true;
  /** `link.name`: what stands in a blank field while the piece of that optional link is there. */
  readonly taken?: string;
  readonly source: string;
  readonly advanced: boolean;
}

export interface ResultDescription {
  readonly name: string;
  readonly title: string;
  readonly symbol: string;
  readonly doc: string;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly tradeUnit: string;
  readonly suffix: string;
  readonly source: string;
  readonly curve: boolean;
  readonly detail: boolean;
  readonly usual?: readonly [number, number];
}

export interface Description {
  readonly blocks: readonly BlockDescription[];
  /** Warnings of the blocks and of the parts, each once. */
  readonly cautions: readonly RoleCaution[];
  readonly tables: readonly TableDescription[];
}

/** A table of the library: what its rows give, and the rows that come with the program. */
export interface TableDescription {
  readonly name: string;
  readonly title: string;
  /** One of its rows, in a sentence: "line kind". */
  readonly one: string;
  readonly doc: string;
  /** Stands wherever a row is picked; '' where there is none. */
  readonly caution: string;
  /** Role of the block that has fields of the same names; '' where there is none. */
  readonly feeds: string;
  readonly columns: readonly ColumnDescription[];
  readonly rows: readonly RowDescription[];
}

/** Formulas reach it as `ROW.NAME`. */
export interface ColumnDescription {
  readonly name: string;
  readonly title: string;
  readonly symbol: string;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly tradeUnit: string;
  /** Option names where the value is an index. */
  readonly options?: readonly string[];
  /** A row may leave it out. */
  readonly mayBeBlank: boolean;
  /** Few rows have it: a blank one says nothing. */
  readonly seldom: boolean;
}

export interface RowDescription {
  readonly name: string;
  readonly title: string;
  /** What it is called in a design in inches. */
  readonly inchTitle: string;
  /** Where it stands in a list; '' where the table has no groups. */
  readonly group: string;
  /** Column → SI value or index of an option; NaN: not known. */
  readonly values: Readonly<Record<string, number>>;
  /** What else is said of it: title of the column → words. */
  readonly words: Readonly<Record<string, string>>;
  readonly source: string;
  /** Recalled, not read in the source. */
  readonly memory: boolean;
}

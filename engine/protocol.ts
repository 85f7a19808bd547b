/**
 * The door between the page and the engine: plain data only. Served by worker.ts through Comlink.
 * The page keeps the document; the engine is told of it and answers with numbers and faults.
 */

import type { Shape } from './blocks/block';
import type { Repair } from './formula/index';
import type { Document, FitCell, Measure, Part, TableCell } from './sheet/document';
import type { Dimension } from './units/index';

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
  /** Written behind the number in place of a unit ("g" for pull per weight). */
  readonly suffix: string;
  readonly doc: string;
  /** Option names where the slot holds an index. */
  readonly options?: readonly string[];
  /** A person may type here. */
  readonly settable: boolean;
  /** Usual band, SI (common practice, no source). */
  readonly usual?: readonly [number, number];
  /** Range allowed for a field, SI. */
  readonly range?: readonly [number, number];
  readonly detail?: boolean;
}

/** Something wrong, at a place, as sentences for people. */
export interface Fault {
  /** Cell id, and the path whose text is at fault or whose step has no answer. */
  readonly cell: string;
  readonly path: string;
  /** Character range in the text at `path`, where the fault lies in a text. */
  readonly from?: number;
  readonly to?: number;
  /** `fault`: wrong text or no answer; `waits`: an input is missing or at fault (then `waitsFor` names it). */
  /** The edit of the text at `path` that mends it, where it's plain what was meant. */
  readonly repair?: Repair;
  readonly state: 'fault' | 'waits';
  readonly waitsFor?: string;
  /** One or more sentences: what was found, what is allowed, how to mend it. */
  readonly message: string;
}

export interface Snapshot {
  /** Counts every edit that the engine took; a sweep answers for one revision. */
  readonly revision: number;
  /** Identifies the slot numbering; `names` is sent only when it changes. */
  readonly shape: string;
  readonly names?: readonly NameInfo[];
  /** One value a slot, SI. NaN: no answer or nothing typed. */
  readonly values: Float64Array;
  /** The same slots for the baseline, when there is one. */
  readonly baseline?: Float64Array;
  readonly faults: readonly Fault[];
  /** The scale drawing of the present design and of the baseline. */
  readonly drawing: readonly Shape[];
  readonly ghost?: readonly Shape[];
}

export interface SweepRequest {
  /** Name of a sweep cell, of a spread or of levers. */
  readonly sweep: string;
  /** Only the coarse lattice (a finger is down). */
  readonly coarse?: boolean;
  /**
   * Paths of axes: the baseline's design instead of the present one, along these axes only and the others as they are in it.
   * Their values are those of the present sweep, so that both can stand on one scale.
   */
  readonly baseline?: readonly string[];
}

export interface SweepAxisValues {
  readonly path: string;
  /** SI values, or option indices. */
  readonly values: Float64Array;
}

/** Rows of a sweep so far. Sample number = row; the last axis runs fastest. */
export interface SweepProgress {
  readonly revision: number;
  readonly sweep: string;
  readonly axes: readonly SweepAxisValues[];
  readonly wanted: readonly string[];
  /** columns[w][sample]; NaN where not yet computed or no answer. */
  readonly columns: readonly Float64Array[];
  /** Per sample: 0 settled; else 1 + index into `sentences`. 65535 = not computed yet. */
  readonly why: Uint16Array;
  readonly sentences: readonly string[];
  readonly done: number;
  readonly total: number;
  readonly state: 'running' | 'done' | 'stopped' | 'fault';
  /** About how much longer it runs, ms; where that can be told. */
  readonly left?: number;
  /** The sentence when state is fault. */
  readonly message?: string;
  /**
   * Of a spread only. `axes` is empty then; `wanted` and `columns` are its results and after them what differs, one design a
   * row: the first ones where there are very many.
   */
  readonly spread?: SpreadTold;
  /** Of levers only. `axes` is empty then, and each sample is one change. */
  readonly levers?: LeversTold;
}

/** One thing changed, everything else as the design has it; SI, or an index of options. */
export interface LeverChange {
  /** Row of the cell that asks for it. */
  readonly row: number;
  readonly path: string;
  readonly way: 'up' | 'down' | 'to';
  readonly from: number;
  readonly to: number;
}
export interface LeversTold {
  /** One for each sample, in the order of the rows. */
  readonly changes: readonly LeverChange[];
  /** What the wanted results are without a change, SI; NaN where one has no answer. */
  readonly present: readonly number[];
}

/** Something that differs in a spread, by itself: its share of the variance is told. */
export interface SpreadFactor {
  /** What is typed, or a number of a part. */
  readonly path: string;
  /** `place`: all three stations of the part together. */
  readonly what: 'value' | 'mass' | 'station' | 'place';
}

/** What a spread makes of one result, SI. */
export interface SpreadOfResult {
  readonly path: string;
  readonly mean: number;
  readonly deviation: number;
  /** Below which 5 %, 50 % and 95 % of the designs lie. */
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  /** Designs that have no answer. */
  readonly missing: number;
  /** Share of the variance by each factor alone, and with all others; with the standard errors of both. None while they aren't known. */
  readonly first: readonly number[];
  readonly total: readonly number[];
  readonly firstError: readonly number[];
  readonly totalError: readonly number[];
}

export interface SpreadTold {
  /** Designs that means and percentiles are of, so far, and how many are wanted. */
  readonly designs: number;
  readonly samples: number;
  /** Designs that the shares rest on so far; each is computed anew for every factor. */
  readonly compared: number;
  readonly factors: readonly SpreadFactor[];
  readonly results: readonly SpreadOfResult[];
  /** Why designs have no answer, numbers left out of the sentences; the most frequent first. */
  readonly causes: readonly { readonly reason: string; readonly count: number }[];
}

/** Rows of a sweep that are kept: numbers within limits (SI, NaN = none), or these options. */
export interface KeptRange {
  readonly of: string;
  readonly low: number;
  readonly high: number;
  readonly options?: readonly string[];
}

/** What a table shows of a sweep. The same as a table cell says, its limits as numbers. */
export interface TableView
  extends Pick<TableCell, 'sweep' | 'columns' | 'rows' | 'reason' | 'groups' | 'measures' | 'sort' | 'descending'> {
  readonly keep: readonly KeptRange[];
}

export interface TableColumn {
  /** What `sort` says to sort by it. */
  readonly key: string;
  /** Axis or result; '' for a count. */
  readonly path: string;
  /** Of a group: what is said of the result; how many designs it has, how many of them have no answer. */
  readonly measure?: Measure | 'count' | 'unanswered';
}

/** Some rows of a table. */
export interface TableAnswer {
  /** `waits`: the sweep isn't computed for the present design yet. */
  readonly state: 'ready' | 'waits';
  readonly columns: readonly TableColumn[];
  /** Designs of the sweep; rows that the view keeps of them, or groups. */
  readonly total: number;
  readonly rows: number;
  /** Number of the first row below. */
  readonly from: number;
  /** values[c][k]: column c of row from + k, SI or index of an option; NaN where there is no answer. */
  readonly values: readonly Float64Array[];
  /** Per row: why it has no answer, '' where it has one. */
  readonly reasons: readonly string[];
  /** Number of the row that is nearest to the present design, −1 where none is; whether it is the very design. */
  readonly present: number;
  readonly exact: boolean;
  /** Every different reason in the sweep, its numbers left out, with how many designs have it. */
  readonly causes: readonly { readonly reason: string; readonly count: number }[];
}

/** One number of the design that a fit has found, SI. */
export interface FittedFactor {
  readonly path: string;
  /** As typed now. */
  readonly before: number;
  readonly value: number;
  /** Standard error; NaN where it isn't determined or stands at an end. */
  readonly error: number;
  /** The log gives it one value. */
  readonly determined: boolean;
  /** It stands at this end of its range and would go on beyond it. */
  readonly end?: 'low' | 'high';
}

/** One measured number against what the model says of that flight, SI. */
export interface FittedNumber {
  /** Row of the log, from 0. */
  readonly row: number;
  readonly path: string;
  readonly measured: number;
  /** Measuring error as stated, of one lap for a time. */
  readonly error: number;
  /** With the design as it stands, and with the factors found. */
  readonly before: number;
  readonly fitted: number;
}

export interface FitAnswer {
  readonly revision: number;
  /** Name of the fit cell. */
  readonly fit: string;
  /** `stopped`: the design was edited meanwhile. */
  readonly state: 'settled' | 'fault' | 'stopped';
  /** Why there is no fit, where state is fault. */
  readonly message?: string;
  readonly factors: readonly FittedFactor[];
  /** Correlation of factor a with factor b; NaN where either isn't determined. */
  readonly correlation: readonly (readonly number[])[];
  readonly numbers: readonly FittedNumber[];
  /** Measured numbers less the factors that they tell apart. */
  readonly freedom: number;
  /** Root mean square of the residuals in measuring errors, over the freedom; NaN without any. */
  readonly scatter: number;
  /** The same of the design as it stands. */
  readonly scatterBefore: number;
  /** What the standard errors rest on. */
  readonly errors: FitCell['errors'];
  readonly iterations: number;
  /** Every factor has a value of its own that may be taken. */
  readonly takeable: boolean;
  /** What else is to be known of it: what isn't determined, what was left out. */
  readonly sentences: readonly string[];
}

export type TableFormat = 'csv' | 'arrow';

/** What runs together along a trace: the first column along, the others against it. */
export interface TraceColumn {
  readonly name: string;
  readonly title: string;
  readonly symbol: string;
  readonly doc: string;
  readonly dimension: Dimension;
  /** Unit it is shown in, in the document's unit set; '' = plain number. */
  readonly unit: string;
  readonly suffix: string;
}

/** Pull around the lap, shape of the lines and the like: `path` is cell.trace. */
export interface TraceAnswer {
  readonly revision: number;
  readonly path: string;
  readonly title: string;
  readonly doc: string;
  readonly columns: readonly TraceColumn[];
  /** One array a column, SI; empty where there is no answer. */
  readonly present: readonly Float64Array[];
  /** The same for the baseline, where there is one and it has an answer. */
  readonly baseline?: readonly Float64Array[];
  /** Why `present` is empty. */
  readonly message?: string;
}

export interface TraceDescription {
  readonly name: string;
  readonly title: string;
  readonly doc: string;
  /** `unit` is the metric one. */
  readonly columns: readonly TraceColumn[];
  /** Corners of outlines for a picture of the block's own; no chart is drawn from it. */
  readonly outlines?: true;
}

/** Block declarations as plain data. */
export interface BlockDescription {
  readonly kind: string;
  readonly role: string;
  readonly title: string;
  readonly doc: string;
  readonly fields: readonly FieldDescription[];
  readonly results: readonly ResultDescription[];
  readonly reasons: readonly { readonly name: string; readonly text: string }[];
  readonly traces: readonly TraceDescription[];
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
}
export interface RowDescription {
  readonly name: string;
  readonly title: string;
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

/** What a person says of a model that isn't drawn yet: texts as typed, '' where nothing is said. */
export interface FirstDesignForm {
  readonly title: string;
  readonly drive: 'engine' | 'motor';
  readonly span: string;
  readonly chord: string;
  /** Displacement of the engine, or electric power of the motor. */
  readonly size: string;
  readonly line_length: string;
  /** Ready to fly, tank empty. */
  readonly weight: string;
  readonly lap_time: string;
}
export type FormField = 'span' | 'chord' | 'displacement' | 'motor_power' | 'line_length' | 'weight' | 'lap_time';

export interface FormProblem {
  readonly field: FormField;
  /** Where, what was found, what is allowed, how to mend it. */
  readonly message: string;
}

export type FirstDesignAnswer =
  | { readonly ok: true; readonly document: Document }
  /** Nothing was made; each entry that is at fault with its sentence. */
  | { readonly ok: false; readonly problems: readonly FormProblem[] };

/** Makes designs beside the one that is open, which it leaves as it is. */
export interface FirstDesignService {
  firstDesign(form: FirstDesignForm): Promise<FirstDesignAnswer>;
}

/** A small thing that the parts of a design don't name and that is often forgotten, with what it would do. */
export interface ForgottenThing {
  /** Ready to be put among the parts. */
  readonly part: Part;
  readonly about: string;
  readonly source: string;
  readonly memory: boolean;
  /** kg; and m from the datum, NaN where the design says nothing about its place. */
  readonly mass: number;
  readonly x: number;
  readonly y: number;
  /** How far it would move the CG, m: aft positive, outboard positive; NaN without a place or without a CG. */
  readonly shiftX: number;
  readonly shiftY: number;
}

export interface EngineService {
  describe(): Promise<Description>;
  /** Takes a whole document (on opening and after an edit of structure). Steps whose inputs did not change keep their values. */
  open(document: Document): Promise<Snapshot>;
  /** Sets texts by path. The engine decides whether that is an edit of value or of structure; the answer is the same as `open` of the edited document. */
  set(texts: readonly (readonly [path: string, text: string])[]): Promise<Snapshot>;
  /** Runs a sweep, a spread or levers of the present revision; `progress` is called with what is there, about every 50 ms, and less often where copying that many rows takes long. Resolves when done or stopped. A newer edit or a newer request for the same sweep stops it; then the last news has no rows. */
  sweep(request: SweepRequest, progress: (p: SweepProgress) => void): Promise<void>;
  stop(sweep: string): Promise<void>;
  /** Rows from … to − 1 of a sweep of the present revision that has been computed to its end. */
  table(view: TableView, from: number, to: number): Promise<TableAnswer>;
  /** All rows of it as pieces of a file, numbers in the units of the sheet; none while the sweep isn't computed. */
  tableFile(view: TableView, format: TableFormat): Promise<readonly (string | Uint8Array<ArrayBuffer>)[]>;
  /** A trace of the present revision and of the baseline, computed when asked for: cell.trace, such as lap.ring. */
  trace(path: string): Promise<TraceAnswer>;
  /** The factors of a fit cell for the present revision. A newer edit or request stops it. */
  fit(name: string): Promise<FitAnswer>;
  /** For each of these choices: mass of all parts made of it with each of its options, kg; none where no part is made of it. */
  madeOf(choices: readonly string[]): Promise<readonly (readonly number[])[]>;
  /** What the parts cell of this name lacks of the things that are often forgotten. */
  forgotten(parts: string): Promise<readonly ForgottenThing[]>;
  /** Name, text → the text as the engine reads it ("18.3 m"), or the fault's sentence; for a form that checks before it commits. */
  check(
    path: string,
    text: string,
  ): Promise<{ readonly ok: true; readonly value: number } | { readonly ok: false; readonly fault: Fault }>;
}

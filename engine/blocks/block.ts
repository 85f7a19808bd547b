import type { Dimension, Ways } from '../units/index';
import type { OutlineColumns, OutlineSpec } from './outline';
import type { Template, Told } from './template';

/**
 * What a block declares. Everything about a block that a person reads (form, completion, reference page, file check,
 * reasons) is made from this declaration; nothing else in the project repeats it.
 */

/** A number with a dimension. Values are SI. */
export interface Quantity {
  readonly dimension: Dimension;
  /** Unit in which it is shown and in which a bare number typed into the field is read. A name from the unit table, or '' for a plain number. */
  readonly unit: string;
  /** The same in the trade's inch-pound set; missing = `unit` in both sets. */
  readonly tradeUnit?: string;
  readonly symbol: string;
  /** What it is called on the screen: sentence case, the trade's words. */
  readonly title: string;
  /** One or two sentences: what it is, where it is measured, its sign. */
  readonly doc: string;
  readonly source?: string;
  /** Shown instead of the unit when the number has dimension one but people say it otherwise ("× weight" for pull per weight). */
  readonly suffix?: string;
}

/** A quantity that a person may type. */
export interface Field extends Quantity {
  /** SI value used when nothing is typed. NaN: the block estimates it itself, as `basis` says. */
  readonly default: number;
  /** SI, both ends allowed. */
  readonly range: readonly [number, number];
  /** Where the default or the estimate comes from. Required where `default` is NaN. */
  readonly basis?: string;
  /**
   * While nothing is typed: the number that stands here where a piece of the design gives it, as `link.name` of an optional link.
   * The default or estimate holds where there is no such piece.
   */
  readonly taken?: string;
  /** Folded away in the form until asked for. */
  readonly advanced?: true;
}

/** A quantity that runs along a trace. */
export interface TraceQuantity extends Quantity {
  /** Words for a value above and below zero, said in place of its sign. */
  readonly ways?: Ways;
}

/** A quantity that a block computes. */
export interface Result extends TraceQuantity {
  /** Usual band for such models in SI, marked "common practice, no source" where it is shown. */
  readonly usual?: readonly [number, number];
  /** What it may not come under: the number is red wherever it stands. */
  readonly least?: Least;
  /** Folded away in listings. */
  readonly detail?: true;
  /** Where the result is one of these, and its slot holds the index; dimension one. */
  readonly oneOf?: readonly string[];
}

/** A number of one dimension that a result may not come under, with what is wrong then, in the middle of a sentence. */
export interface Least {
  readonly at: number;
  readonly because: string;
  /** The design has a stop then, whether or not a check watches it. */
  readonly stops?: true;
}

/** A function at the fixed knots of `curve.ts`, one slot each: of airspeed, or a propeller's of advance ratio and tip speed. */
export interface Curve {
  readonly curve: 'airspeed' | 'propeller';
  /** How many knots, where the airspeeds of `curve.ts` are not them. Said here, so that the sheet lays slots without any physics. */
  readonly knots?: number;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly symbol: string;
  readonly title: string;
  readonly doc: string;
}

/** One of a list; the slot holds the index. */
export interface Option {
  readonly option: readonly string[];
  readonly default: string;
  readonly symbol: string;
  readonly title: string;
  readonly doc: string;
}

/** Another block of this role, found by itself when the document has exactly one. `results` is that role's result list. */
export interface Link<R extends ResultSpecs = ResultSpecs> {
  readonly link: string;
  readonly results: R;
  readonly doc: string;
}

/** A block of this role that may be there or not: fields that say so in `taken` hold its numbers then. `run` never reads it. */
export interface OptionalLink {
  readonly link: string;
  readonly optional: true;
  readonly doc: string;
}

export type FieldSpecs = Readonly<Record<string, Field | Option | Link | OptionalLink>>;
export type ResultSpecs = Readonly<Record<string, Result | Curve>>;
export type AnySpecs = Readonly<Record<string, Field | Result | Curve | Option | Link | OptionalLink>>;

/**
 * Where each field or result lives: sample i of `f.mass` is `m[f.mass + i]`; knot k of a curve is
 * `m[f.thrust + k * stride + i]`; a link holds the columns of the linked block's results.
 */
export type Columns<S extends AnySpecs> = {
  readonly [K in keyof S]: S[K] extends { readonly link: string; readonly results: infer R extends ResultSpecs }
    ? Columns<R>
    : S[K] extends OptionalLink
      ? never
      : number;
};

/** One line, outline or mark of the scale drawing, metres in layout axes: plan x aft, y outboard; side x aft, z up. */
export interface Shape {
  readonly view: 'plan' | 'side';
  /** What it is: 'wing', 'elevator', 'wheel', 'line' …; names its line kind and its ghost. */
  readonly part: string;
  /** x0, y0, x1, y1 …; one pair and a radius for a circle; one pair alone for a mark. */
  readonly points: readonly number[];
  readonly closed?: boolean;
  readonly radius?: number;
  /** For a mark: the path whose value labels it. */
  readonly label?: string;
  /** It is where it was in a design before: what it follows from waits for the hand to rest. */
  readonly behind?: true;
}

/** Numbers that run together: along the lines, around the lap. All of one length, SI. */
export type TraceColumns = Readonly<Record<string, ArrayLike<number>>>;

/** What a block can tell beyond single numbers, computed only when a picture shows it and never in a sweep. */
interface Trace<F extends FieldSpecs = FieldSpecs, R extends ResultSpecs = ResultSpecs> {
  readonly title: string;
  readonly doc: string;
  /** The first runs along (azimuth, radius); the others are read against it. */
  readonly columns: Readonly<Record<string, TraceQuantity>>;
  /** Corners of outlines for a picture of the block's own; no chart is drawn from it. */
  readonly outlines?: true;
  /** From sample 0 with stride 1; undefined where there is nothing to show. */
  run(m: Float64Array, f: Columns<NoInfer<F>>, r: Columns<NoInfer<R>>): TraceColumns | undefined;
}

/**
 * What a block computes only when pieces that read it have their numbers, so that it can take from them without a ring: other
 * blocks can't link to these results. `run` has all fields and all results.
 */
interface After<F extends FieldSpecs, R extends ResultSpecs> {
  /** Fields that only this reads. */
  readonly fields: readonly (keyof F & string)[];
  readonly results: readonly (keyof R & string)[];
  run(m: Float64Array, f: Columns<NoInfer<F>>, r: Columns<NoInfer<R>>, i: number): void;
}

/** One relation that a block computes by, for people to read. */
export interface Equation {
  readonly title: string;
  /** Plain mathematics in the symbols of the fields and results, one relation a line. */
  readonly text: string;
  /** Symbols that are no field or result, signs, how far it holds. */
  readonly doc?: string;
  /** The publication, the idea of the derivation, or "common practice, no source". */
  readonly source: string;
}

/** What stands behind the numbers of a block. */
export interface Theory {
  readonly equations: readonly Equation[];
  /** What a person could expect of it and it leaves out, one sentence each. */
  readonly notModelled: readonly string[];
}

/** A warning beside the results that it bears on: one that stands everywhere is read nowhere. */
export interface Caution {
  /** Results of the block after which it stands among the key figures; missing: below the block alone. */
  readonly beside?: readonly string[];
  /** Results as `role.result`: `{greatest|unit}` is the greatest of them that the design has. */
  readonly greatest?: readonly string[];
  /** It stands only while this result of the block is over this number, SI. */
  readonly over?: { readonly result: string; readonly at: number };
  /** `{name|unit}` is the value of that result in that unit. What stands in square brackets falls away without a value. */
  readonly sentences: readonly string[];
}

/** How what a block found from measurements is kept by one press, as a row of the user's own in a table of the library. */
export interface Keeps {
  readonly table: string;
  /** What the row is called, with results in braces. */
  readonly title: string;
  /** Column of the table → field or result that says it. */
  readonly columns: Readonly<Record<string, string>>;
  /** Measured fields: with none of them typed there is nothing to keep. What is typed in them becomes the source of the row. */
  readonly measured: readonly string[];
  /** Fields that the table has no column for: with one of them typed a row would be another thing. */
  readonly lost: readonly string[];
}

export interface Block<
  F extends FieldSpecs = FieldSpecs,
  R extends ResultSpecs = ResultSpecs,
  W extends string = string,
> {
  /** Its name in a file, and the usual name of its cell. */
  readonly kind: string;
  /** What it can stand in for; blocks of one role share one result list. Missing: the kind. */
  readonly role?: string;
  readonly title: string;
  readonly doc: string;
  readonly fields: F;
  /** Outlines that a person may give by their corners, by name. */
  readonly outlines?: Readonly<Record<string, OutlineSpec>>;
  readonly results: R;
  /** Why a sample has no answer, as a sentence for people; `{name}` is replaced by the field's or result's value with its unit. */
  readonly reasons: Readonly<Record<W, string>>;
  /** Equations with their sources, and what is left out; every block that is listed has it. */
  readonly theory?: Theory;
  /** Fields or results that say in one line what it is: "1000 mm, 21.5 dm², 12 %". */
  readonly line?: readonly string[];
  /** They say little without their titles: "race time 284 s, stops 2". */
  readonly lineTitled?: true;
  /** What can hurt here, as the trade warns of it. Blocks of one role share one list. */
  readonly cautions?: readonly Caution[];
  /**
   * Computes sample i: reads fields, writes results, all SI. Returns the name of a reason where there is no answer
   * (the evaluator then turns every result into NaN), else undefined. Must depend on sample i alone.
   */
  run(
    m: Float64Array,
    f: Columns<NoInfer<F>>,
    r: Columns<NoInfer<R>>,
    i: number,
    stride: number,
    o: OutlineColumns,
  ): NoInfer<W> | undefined;
  readonly keeps?: Keeps;
  /** Takes longer than a finger on a slide can wait: while one moves the design, it's computed only where it is shown. */
  readonly slow?: true;
  readonly after?: After<NoInfer<F>, NoInfer<R>>;
  /** What it adds to the scale drawing, from sample 0 with stride 1. Called only when a drawing is shown; leaves out what is NaN. */
  draw?(m: Float64Array, f: Columns<NoInfer<F>>, r: Columns<NoInfer<R>>, o: OutlineColumns): Shape[];
  /** What it gives to lay on the work at full size, from sample 0 with stride 1. Called only when it is asked for. */
  templates?(
    m: Float64Array,
    f: Columns<NoInfer<F>>,
    r: Columns<NoInfer<R>>,
    o: OutlineColumns,
    told: Told,
  ): Template[];
  /** By name; read as `cell.trace`. */
  readonly traces?: Readonly<Record<string, Trace<NoInfer<F>, NoInfer<R>>>>;
}

/** Infers fields, results and reasons from the declaration, so that `run` is checked against it. */
export function block<const F extends FieldSpecs, const R extends ResultSpecs, const W extends string>(
  declaration: Block<F, R, W>,
): Block<F, R, W> {
  return declaration;
}

/** A trace whose own types are forgotten. */
export interface AnyTrace {
  readonly title: string;
  readonly doc: string;
  readonly columns: Readonly<Record<string, TraceQuantity>>;
  readonly outlines?: true;
  // biome-ignore lint/suspicious/noExplicitAny: as for a block.
  run(m: Float64Array, f: any, r: any): TraceColumns | undefined;
}

interface AnyAfter {
  readonly fields: readonly string[];
  readonly results: readonly string[];
  // biome-ignore lint/suspicious/noExplicitAny: as for a block.
  run(m: Float64Array, f: any, r: any, i: number): void;
}

/** A block whose own types are forgotten: what a list of blocks holds. */
export interface AnyBlock {
  readonly kind: string;
  readonly role?: string;
  readonly title: string;
  readonly doc: string;
  readonly fields: FieldSpecs;
  readonly outlines?: Readonly<Record<string, OutlineSpec>>;
  readonly results: ResultSpecs;
  readonly reasons: Readonly<Record<string, string>>;
  readonly theory?: Theory;
  /** What can hurt here, as the trade warns of it. Blocks of one role share one list. */
  readonly line?: readonly string[];
  readonly lineTitled?: true;
  readonly cautions?: readonly Caution[];
  // biome-ignore lint/suspicious/noExplicitAny: a heterogeneous list can't name each block's columns; `block()` has checked them.
  run(m: Float64Array, f: any, r: any, i: number, stride: number, o: OutlineColumns): string | undefined;
  readonly keeps?: Keeps;
  readonly slow?: true;
  readonly after?: AnyAfter;
  // biome-ignore lint/suspicious/noExplicitAny: as above.
  draw?(m: Float64Array, f: any, r: any, o: OutlineColumns): Shape[];
  // biome-ignore lint/suspicious/noExplicitAny: as above.
  templates?(m: Float64Array, f: any, r: any, o: OutlineColumns, told: Told): Template[];
  readonly traces?: Readonly<Record<string, AnyTrace>>;
}

export const isLink = (spec: AnySpecs[string]): spec is Link | OptionalLink => 'link' in spec;
export const isOptional = (spec: AnySpecs[string]): spec is OptionalLink => 'optional' in spec;
/** A link that a block can't be without. */
export const isNeeded = (spec: AnySpecs[string]): spec is Link => isLink(spec) && !isOptional(spec);
export const isOption = (spec: AnySpecs[string]): spec is Option => 'option' in spec;
export const isCurve = (spec: AnySpecs[string]): spec is Curve => 'curve' in spec;

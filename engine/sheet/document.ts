import type { UnitSet } from '../units/index';

/**
 * The document: a design as plain data, sheets of pieces in reading order. Every value is kept as the text that a person
 * typed. A piece is called a cell in the code. What the file says of the kinds is what a builder calls them: a block is a
 * `model` of a wing or a tail, a sweep is a `trial_series`, a spread `tolerances`, levers are `what_helps`.
 *
 * Names. A cell has an id (stable, in the file), a name (unique over the design, what formulas say) and a title. Which sheet
 * it stands on changes nothing that is computed.
 * What one name reaches:
 *   variable `tip_weight`            → `tip_weight`, and its limits `tip_weight.low`, `tip_weight.high`
 *   choice `tail_stock`              → `tail_stock` (the picked option) and its numbers `tail_stock.areal_mass` …
 *   formula line `reserve`           → `reserve`
 *   block `flight`                   → fields and results `flight.height`, `flight.pull`
 *   parts `parts`                    → folds `parts.mass`, `parts.x` …, rows `parts.fuel_tank.mass`
 *   library row `balsa_medium`       → `balsa_medium.density` … (own rows first, else the library's)
 */
export const FORMAT = 'tetherwright';
export const VERSION = 4;
/** A file with several designs, each with a version of its own. */
export const DESIGNS_FORMAT = 'tetherwright_designs';
export const DESIGNS_VERSION = 1;

export interface Document {
  readonly format: typeof FORMAT;
  readonly version: number;
  readonly title: string;
  /** Title block, ISO 7200. */
  readonly drawn: string;
  readonly date: string;
  /** What it is flown in, such as a class of the rule book. */
  readonly class?: string;
  /** How results are shown; each entry keeps the unit in which it was typed. */
  readonly units: UnitSet;
  /** Marks a document whose model, people and club are made up. */
  readonly invented?: boolean;
  /** At least one. */
  readonly sheets: readonly Sheet[];
  /** Rows of the library that live with this document; they stand before the library's rows of the same name. */
  readonly rows: readonly OwnRow[];
  /** Paths of the figures in the standing column, in order. */
  readonly figures: readonly string[];
  /** The design everything is compared with: path → text, only for paths whose text differs from the document's. Missing: no baseline. */
  readonly baseline?: Readonly<Record<string, string>>;
  /** What the baseline is made of, where pieces or rows of the design were added or removed since; its texts are the baseline's. */
  readonly baseline_design?: BaselineDesign;
  /** What the design might be instead, side by side. They change nothing until one is kept. */
  readonly variants?: readonly Variant[];
}

/** A named set of changes to the design: texts only, never what it is made of. */
export interface Variant {
  /** What its builder calls it; no two of a design are called alike. */
  readonly name: string;
  /** Path → text. What has no place in the design any more is kept and not counted. */
  readonly changes: Readonly<Record<string, string>>;
  /** Charts show it as a ghost. */
  readonly on_charts?: boolean;
}

/** One page of the drawing set. */
export interface Sheet {
  /** Stable, in the file. */
  readonly id: string;
  readonly title: string;
  /** In reading order. */
  readonly pieces: readonly Cell[];
  /** Fields of other pieces that were blank when this sheet made a variable of them → what the variable took them for. */
  readonly took?: Readonly<Record<string, string>>;
}

export interface BaselineDesign {
  /** Only pieces that the design is made of. */
  readonly sheets: readonly Sheet[];
  readonly rows: readonly OwnRow[];
}

/** A material, a finish, a line kind … that somebody weighed or read. */
export interface OwnRow {
  /** Table of the library that it belongs to. */
  readonly table: string;
  readonly name: string;
  readonly title: string;
  /** Where its values come from; never blank. */
  readonly source: string;
  /** Column → text. */
  readonly values: Readonly<Record<string, string>>;
}

export type Cell =
  | NoteCell
  | VariablesCell
  | ChoiceCell
  | FormulaCell
  | BlockCell
  | PartsCell
  | DrawingCell
  | SweepCell
  | SpreadCell
  | LeversCell
  | ChartCell
  | TableCell
  | CheckCell
  | LogCell
  | FitCell
  | VariantsCell
  | MendsCell
  | BestCell
  | WeighingCell
  | GuessCell;
export type CellKind = Cell['kind'];

interface CellBase {
  readonly id: string;
  readonly name: string;
  readonly title: string;
  /** Shown as its title only. */
  readonly folded?: boolean;
}

export interface NoteCell extends CellBase {
  readonly kind: 'note';
  /** CommonMark; `{flight.pull}` is a formula whose value stands there. */
  readonly text: string;
}

/** A schedule of dimension lines. */
export interface VariablesCell extends CellBase {
  readonly kind: 'variables';
  readonly rows: readonly Variable[];
}
export interface Variable {
  readonly name: string;
  readonly title: string;
  readonly symbol: string;
  /** Unit of a bare number and of the slide. '' for a plain number. */
  readonly unit: string;
  readonly text: string;
  /** Limits of the slide, texts like any other. */
  readonly low: string;
  readonly high: string;
  /** Step of the slide in `unit`, as text; '' = a thousandth of the range, rounded. */
  readonly step: string;
}

/** One of a list. All options give the same numbers. */
export interface ChoiceCell extends CellBase {
  readonly kind: 'choice';
  /**
   * `stack`: each option is a stack of layers and gives areal_mass (kg/m²), thickness (m), stiffness (EI per width, N·m);
   * `numbers`: each option gives the named numbers in `columns`; with no columns it is a bare name for an option field of a block;
   * `library`: each option is called by the name of a row of `table`, of the library or of this document, and gives its numbers.
   */
  readonly of: 'stack' | 'numbers' | 'library';
  /** For `library`: which table of the library. */
  readonly table?: string;
  readonly columns: readonly { readonly name: string; readonly unit: string; readonly title: string }[];
  readonly options: readonly ChoiceOption[];
  /** Name of the picked option. */
  readonly text: string;
}
export interface ChoiceOption {
  readonly name: string;
  readonly title: string;
  /** Line pattern of its swatch. */
  readonly pattern: 'grain' | 'ply' | 'faced' | 'foam' | 'weave' | 'plain';
  /** For `stack`, from one face to the other. */
  readonly layers?: readonly Layer[];
  /** For `numbers`: column → text. */
  readonly values?: Readonly<Record<string, string>>;
}
export interface Layer {
  readonly name: string;
  /** A material, or '' for a glue line or skin given by areal mass alone. */
  readonly material: string;
  /** Thickness with a material; areal mass without one. */
  readonly text: string;
}

export interface FormulaCell extends CellBase {
  readonly kind: 'formula';
  readonly lines: readonly { readonly name: string; readonly text: string; readonly unit: string }[];
}

export interface BlockCell extends CellBase {
  readonly kind: 'model';
  /** Which block it is: wing, tail, lines. */
  readonly of: string;
  /** Field → text; a field that is not named here has its default. */
  readonly fields: Readonly<Record<string, string>>;
}

export interface PartsCell extends CellBase {
  readonly kind: 'parts';
  /** Share of the fuel on board for `parts.mass`, `parts.x` …; results for empty, half and full are given as well. */
  readonly fuel: string;
  readonly rows: readonly Part[];
}
export const PART_SHAPES = [
  'point',
  'sheet',
  'stack',
  'rod',
  'solid',
  'strip',
  'tube',
  'tapered',
  'triangle',
  'ribs',
  'core',
  'run',
] as const;
export type PartShape = (typeof PART_SHAPES)[number];
/** Which texts a shape needs: see `partFields` in cells/parts.ts. */
export interface Part {
  readonly name: string;
  readonly title: string;
  readonly shape: PartShape;
  /** The mass of this row is fuel: it scales with the share on board. */
  readonly fuel?: boolean;
  /**
   * What it was made of when it was on the scale: a material, a stack or an option of a choice among them. Made of anything
   * else it counts as re-made, by its estimate. Missing: what is weighed counts whatever it is made of.
   */
  readonly weighed_as?: string;
  /** Field → text: mass; area, thickness, material; stack; length, diameter; volume; x y z; size_x size_y size_z; coats_area, coat (areal mass); mass_tolerance, station_tolerance; weighed. */
  readonly fields: Readonly<Record<string, string>>;
}

export interface DrawingCell extends CellBase {
  readonly kind: 'drawing';
  /** The parts of the tables are drawn on it, each to its size. */
  readonly parts?: boolean;
  /** A picture of the builder's own plan that lies under it while outlines are drawn. */
  readonly plan?: TracedPlan;
}
/** Places in metres on the drawing from the datum: to the right and down, whichever view it is. */
export interface TracedPlan {
  readonly view: 'plan' | 'side';
  /** What its file was called. */
  readonly name: string;
  /** The picture itself. Missing: it is kept beside the design in the browser of whoever laid it there, under `kept`. */
  readonly image?: string;
  readonly kept?: string;
  /** Pixels. */
  readonly width: number;
  readonly height: number;
  /** Metres that a pixel of it shows. */
  readonly scale: number;
  /** Of its middle. */
  readonly right: number;
  readonly down: number;
  /** Degrees, clockwise as it is seen. */
  readonly angle: number;
  /** 0 to 1. */
  readonly opacity: number;
  readonly printed?: boolean;
}
/** Length of a picture that is kept in the file, characters. */
export const LARGEST_PICTURE = 300_000;

export interface Axis {
  /** A variable, choice or block field. */
  readonly of: string;
  /** Texts; '' = the variable's own limits. Not used for a choice, which takes all its options unless `options` names some. */
  readonly low: string;
  readonly high: string;
  readonly count: number;
  readonly options?: readonly string[];
}
export interface SweepCell extends CellBase {
  readonly kind: 'trial_series';
  /** One to four; the last runs fastest. */
  readonly axes: readonly Axis[];
  /** Result paths. */
  readonly wanted: readonly string[];
}

/** How a number may differ: normal about what is typed, or anywhere within bounds, the middle as likely as the ends or likelier. */
export const SPREAD_KINDS = ['normal', 'uniform', 'triangular'] as const;
export type SpreadKind = (typeof SPREAD_KINDS)[number];
export interface SpreadRow {
  /** A variable, a field of a block, or a number of a part: parts.engine.mass, parts.engine.x. */
  readonly of: string;
  readonly distribution: SpreadKind;
  /** Text. Normal: standard deviation. Else: as much as this below what is typed, and above where `above` is blank. '' = the part's own uncertainty. */
  readonly size: string;
  /** Text: as much above, where that is another amount than below; '' = the same. Not used for normal. */
  readonly above: string;
}
/** Two rows of a spread that are off together. */
export interface SpreadPair {
  readonly of: string;
  readonly and: string;
  /** Text: their correlation, −1 to 1. */
  readonly text: string;
}
/** Tolerances: many designs whose numbers differ at random from what is typed. */
export interface SpreadCell extends CellBase {
  readonly kind: 'tolerances';
  readonly rows: readonly SpreadRow[];
  /** Missing: every row is off by itself. */
  readonly pairs?: readonly SpreadPair[];
  /** Masses and places of all parts differ too, each by its own uncertainty. */
  readonly parts: boolean;
  /** Result paths. */
  readonly wanted: readonly string[];
  /** Designs that mean and percentiles are told of; the shares take as many again for each thing that differs. */
  readonly samples: number;
  /** The same seed gives the same designs again. */
  readonly seed: number;
}

/** A step up and a step down from what is typed, one of the two, or another value. */
export const LEVER_WAYS = ['both', 'up', 'down', 'to'] as const;
export type LeverWay = (typeof LEVER_WAYS)[number];
export interface LeverRow {
  /** A variable, a choice or a field of a block. */
  readonly of: string;
  /** Not used for a choice. */
  readonly way: LeverWay;
  /** Text: by how much, or for `to` the other value. Not used for a choice. */
  readonly text: string;
  /** Of a choice: the options that are tried; missing: every one that isn't picked. */
  readonly options?: readonly string[];
}
/** One change at a time from the present design, ranked by what it does to the results. */
export interface LeversCell extends CellBase {
  readonly kind: 'what_helps';
  readonly rows: readonly LeverRow[];
  /** Result paths. */
  readonly wanted: readonly string[];
  /** By which of the results they are ranked; '' = the first. */
  readonly rank: string;
  /** Instead of by its change alone: by its change for each unit of change of this one; '' = alone. */
  readonly per: string;
}

export const CHART_KINDS = [
  'line',
  'bars',
  'moments',
  'contour',
  'carpet',
  'scatter',
  'histogram',
  'shares',
  'ring',
  'along',
] as const;
export interface ChartCell extends CellBase {
  readonly kind: 'chart';
  /** What each kind takes of the rest: `chartNeeds` in cells/chart-kinds.ts. What a kind doesn't take is kept and not shown. */
  readonly chart: (typeof CHART_KINDS)[number];
  /** Name of a sweep cell, or of a spread where the kind may be drawn from one; '' where there is none. */
  readonly series: string;
  /** Instead of a sweep: a weight and balance table (moments, bars), or what runs along something, such as lap.ring (ring, along). */
  readonly of?: string;
  /** What runs across: an axis of the sweep; for a scatter one of its results; along, a column, '' = the first. */
  readonly across: string;
  /** What is shown, one panel each: results of the sweep, numbers of every part, a column of what runs along. */
  readonly up: readonly string[];
  /** Second axis: tells lines and groups apart, or runs the other way in a contour or carpet. '' = none. */
  readonly lines: string;
  /** Lines: results that are read in one unit stand in one panel. */
  readonly together?: boolean;
  /** Checks whose limits stand in it; missing: all that watch what it shows. */
  readonly checks?: readonly string[];
}

export const MEASURES = ['least', 'greatest', 'mean', 'median'] as const;
export type Measure = (typeof MEASURES)[number];
export const TABLE_ROWS = ['all', 'answered', 'unanswered'] as const;

/** The designs of a sweep, one a row, or groups of them. */
export interface TableCell extends CellBase {
  readonly kind: 'table';
  /** Name of a sweep cell; '' where there is none. */
  readonly series: string;
  /** Axes and results of the sweep, as columns in this order; none named: all. */
  readonly columns: readonly string[];
  /** Only rows that all of these keep. */
  readonly keep: readonly Kept[];
  readonly rows: (typeof TABLE_ROWS)[number];
  /** Only rows that have no answer for this reason, a sentence whose numbers are left out ("…"); '' = any. */
  readonly reason: string;
  /** Axes: rows that agree in all of these become one; none: each design is a row. */
  readonly groups: readonly string[];
  /** What is said of every result of a group. */
  readonly measures: readonly Measure[];
  /** A column: `flight.pull`, `flight.pull mean`, `count`; '' = in the order of the sweep. */
  readonly sort: string;
  readonly descending: boolean;
}
export interface Kept {
  /** An axis or result of the sweep. */
  readonly of: string;
  /** Texts; '' = no limit on that side. Not used for a choice, of which `options` names those that stay. */
  readonly low: string;
  readonly high: string;
  readonly options?: readonly string[];
}

/** "Stop if …": a limit with its reason. */
export interface CheckCell extends CellBase {
  readonly kind: 'check';
  readonly of: string;
  /** Allowed from `low` to `high`; '' = no limit on that side. */
  readonly low: string;
  readonly high: string;
  /** What is wrong below `low` and above `high`, in the builder's words. */
  readonly below: string;
  readonly above: string;
}

/** What was measured on flights, one row a flight, and the lines that they were flown on. */
export interface LogCell extends CellBase {
  readonly kind: 'log';
  /** Result that the time of one lap is compared with; '' = times are only kept. */
  readonly time: string;
  /** Measuring error of a stopped time, whatever the number of laps. */
  readonly stopwatch: string;
  readonly columns: readonly LogColumn[];
  readonly rows: readonly LogRow[];
  readonly line_sets: readonly LineSet[];
  /** What fits to these flights have put into the design, the latest last. */
  readonly taken: readonly LogTaken[];
}
/** A result that was measured, or something that can be set and was so on the day. */
export interface LogColumn {
  /** Stands in the paths of its texts: `flown.row1.pull`. */
  readonly name: string;
  /** The result or what is set. */
  readonly of: string;
  /** Measuring error of a result; '' for what is set. */
  readonly error: string;
}
/** One flight. '' = not measured, not said. */
export interface LogRow {
  /** Number or name of the flight, in words. */
  readonly label: string;
  /** Day, year first: 2026-09-05. */
  readonly date: string;
  /** Name of the variant that was flown; '' = the design as it stands. */
  readonly flown_as: string;
  /** Name of the line set. */
  readonly line_set: string;
  /** How many laps the time is of; '' = one. */
  readonly laps: string;
  readonly time: string;
  /** Times of single laps in their order, in seconds with a space between. */
  readonly splits: string;
  /** All laps of the flight, timed or not. */
  readonly all_laps: string;
  /** What went into the tank and what was left in it; of an electric model the charge put back, and nothing left. */
  readonly fuel_in: string;
  readonly fuel_left: string;
  readonly propeller: string;
  readonly needle: string;
  readonly plug: string;
  /** Column → text. What is set and not said here is as the design has it. */
  readonly values: Readonly<Record<string, string>>;
  readonly note: string;
}
/** Lines that are made up, with what they have been through. */
export interface LineSet {
  /** What its owner calls it; flights say it. */
  readonly name: string;
  readonly diameter: string;
  /** As made up, from grip to model. */
  readonly length: string;
  /** Flights before those of this log. */
  readonly flights: string;
  readonly pull_tests: readonly PullTest[];
  /** In words: where, and what was done about it. */
  readonly kinks: string;
  /** Day on which it was thrown away; '' = in use. */
  readonly retired: string;
}
export interface PullTest {
  readonly date: string;
  readonly load: string;
}
/** A value that a fit has put into the design. */
export interface LogTaken {
  readonly date: string;
  readonly of: string;
  readonly before: string;
  readonly after: string;
  /** How sure and by what, in words. */
  readonly note: string;
}

export const FIT_ERRORS = ['scatter', 'stated'] as const;
/** Factors of the design for which the model comes nearest to a log. */
export interface FitCell extends CellBase {
  readonly kind: 'fit';
  /** Name of a log cell; '' where there is none. */
  readonly log: string;
  /** Numbers of the design that may be others than is typed. */
  readonly factors: readonly string[];
  /** Results of the log that count; none named: all. */
  readonly wanted: readonly string[];
  /** What standard errors rest on: how far the laps lie from the fit, or the measuring errors as the log states them. */
  readonly errors: (typeof FIT_ERRORS)[number];
}

/** The variants of the design beside the baseline and the design as set: results, differences and what makes them. */
export interface VariantsCell extends CellBase {
  readonly kind: 'variants';
  /** Result paths. */
  readonly wanted: readonly string[];
}

/** Exactly what is wanted, at least that, or at most. */
export const MEND_WAYS = ['to', 'least', 'most'] as const;
/** What would bring a result where it is wanted: everything that can be changed, each alone, the cheapest first. */
export interface MendsCell extends CellBase {
  readonly kind: 'what_mends';
  /** The result; '' where none is picked yet. */
  readonly of: string;
  readonly way: (typeof MEND_WAYS)[number];
  /** Text: where it is wanted. */
  readonly text: string;
  /** Results of which it is told what mending does to them. */
  readonly wanted: readonly string[];
}

export const BEST_WAYS = ['least', 'most'] as const;
/** A result of which the least or the most is wanted. */
export interface BestGoal {
  readonly of: string;
  readonly way: (typeof BEST_WAYS)[number];
}
/** Designs along some axes that none of the others beats in everything that is wanted. */
export interface BestCell extends CellBase {
  readonly kind: 'best_compromises';
  /** Values that are tried first; the best designs are looked for more closely between them. */
  readonly axes: readonly Axis[];
  /** Two or three. */
  readonly goals: readonly BestGoal[];
  /** Checks, and results that the design stops for, whose limits a design keeps; missing: every one. */
  readonly keeps?: readonly string[];
  /** Other results that are told of each. */
  readonly wanted: readonly string[];
}

/** The bench: the parts of a table come on the scale one after another, and it is told where the CG comes to lie. */
export interface WeighingCell extends CellBase {
  readonly kind: 'weighing';
  /** Name of the table of parts; '' where there is none. */
  readonly parts: string;
  /** Parts in the order in which they came on the scale: `parts.fin`. Weighed ones that it doesn't name came before, as the table has them. */
  readonly order: readonly string[];
  /** Text: where the CG is wanted; '' = nowhere. */
  readonly text: string;
  /** Text: how far it may lie from there to either side; '' = not at all. */
  readonly within: string;
}

/** A number that is typed, one of some answers, or a line drawn over a trial series. */
export const GUESS_WAYS = ['number', 'choice', 'line'] as const;
/** Places, evenly from the first to the last value across, at which a drawn line has its heights. */
export const GUESS_PLACES = 9;
/** One of the answers to be chosen from: the right one is the first within whose ends the computed number lies. */
export interface GuessOption {
  readonly words: string;
  /** Texts; '' = no end on that side. */
  readonly low: string;
  readonly high: string;
}
/** What somebody thought before the answer was shown. */
export interface Guess {
  /** Name or number of who guessed; '' where one guesses alone. */
  readonly by: string;
  /** The number as it was typed, or the place of the chosen answer, from 1; '' for a line. */
  readonly text: string;
  /** Heights of a drawn line, SI, at GUESS_PLACES places. */
  readonly line?: readonly number[];
}
/** A question, what is guessed, and what the design then answers. */
export interface GuessCell extends CellBase {
  readonly kind: 'guess';
  /** Words with formulas in braces, as in a note; so are `why`, `try_this` and `instructor`. */
  readonly question: string;
  readonly way: (typeof GUESS_WAYS)[number];
  /** The computed answer: a formula; for a line the result whose trial series is guessed. */
  readonly of: string;
  /** Unit of the answer and of a guess without one; '' = that of `of`. */
  readonly unit: string;
  readonly options: readonly GuessOption[];
  /** Of a line: name of a trial series with one axis; '' where there is none. */
  readonly series: string;
  readonly why: string;
  readonly try_this: string;
  /** Said to the instructor alone. */
  readonly instructor: string;
  readonly guesses: readonly Guess[];
  /** The answer is shown. */
  readonly shown?: boolean;
}

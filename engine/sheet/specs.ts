import type { AnyBlock } from '../blocks/block';
import type { Repair, ValueType } from '../formula/index';
import type { LibraryTable } from '../library/index';
import type { Fault, NameInfo } from '../terms/index';
import type { Dimension, Ways } from '../units/index';
import type { Document, PartShape } from './document';
import type { ValueColumn } from './library-numbers';
import type { Slot, Step } from './program';

/** What stands behind a document: the blocks it may use, and the tables whose rows it may name. */
export interface Library {
  readonly blocks: readonly AnyBlock[];
  readonly tables: readonly LibraryTable[];
}

/** What a text has to give: a quantity of a dimension, one of a list, or whatever its formula gives. */
type Wants = { readonly dimension: Dimension } | { readonly options: readonly string[] } | 'anything';

/** What a person reads of a name. */
export interface NameTold {
  readonly kind: NameInfo['kind'];
  readonly title: string;
  readonly symbol?: string;
  readonly doc?: string;
  readonly suffix?: string;
  /** Words for a value above and below zero. */
  readonly ways?: Ways;
  readonly usual?: readonly [number, number];
  readonly least?: NameInfo['least'];
  readonly range?: readonly [number, number];
  readonly detail?: boolean;
  /** A result that is one of these. */
  readonly oneOf?: readonly string[];
}

/** A text that a person may set. */
export interface TextSpec extends NameTold {
  readonly cell: string;
  readonly path: string;
  readonly text: string;
  /** Unit of a bare number. */
  readonly unit: string;
  /** Unit in which it is shown in an inch-pound design; missing: the usual one in the place of `unit`. */
  readonly tradeUnit?: string;
  readonly wants: Wants;
  /** Instead of `unit` and `wants`: those of what this path reaches. */
  readonly like?: string;
  /** What a blank text stands for: the name of a number that the design has; undefined where it has none. Asked once all is laid. */
  readonly stands?: () => string | undefined;
  /** With `like`: how far apart two values of it are. On a scale with a zero of its own that is another unit. */
  readonly apart?: boolean;
  /** Value of a blank text; missing: a blank text is a fault. */
  readonly blank?: number;
  /** Having no value is no fault: a field that names it then has its own default. */
  readonly mayBeBlank?: boolean;
  /** What is wrong when it is blank. Missing: "… is blank." and what to type. */
  readonly needed?: string;
  /** What is read under the path is something else: the mass of a part that counts, weighed or not; an estimate. */
  readonly unnamed?: boolean;
}

/** A value that a step writes, or a number that no text of this document holds. */
export interface ValueSpec extends NameTold {
  readonly cell: string;
  readonly path: string;
  readonly slot: Slot;
  readonly dimension: Dimension;
  readonly unit: string;
  readonly tradeUnit?: string;
  readonly settable?: boolean;
  /** The value is the index of one of these. */
  readonly options?: readonly string[];
  /** Having no value is no fault: a field that names it then has its own default. */
  readonly mayBeBlank?: boolean;
}

/** What a name reaches, as far as other texts need it. */
export interface Reach {
  readonly path: string;
  readonly slot: Slot;
  readonly cell: string;
  readonly kind: NameInfo['kind'];
  /** Unit in which a bare number beside it is read: never that of the reader's unit set. */
  readonly unit: string;
  /** Unit it is shown in, in the document's unit set. */
  readonly shown: string;
  readonly suffix?: string;
  readonly ways?: Ways;
  /** Missing: not known, because its own text is at fault. */
  readonly type?: ValueType;
  readonly settable: boolean;
  readonly mayBeBlank?: boolean;
}

/** One answer that a step could not give, in words. */
export interface Told {
  readonly path: string;
  readonly from?: number;
  readonly to?: number;
  readonly message: string;
  readonly repair?: Repair;
}

/** A step and how to say why it has no answer. `read(slot)` is the value of the sample in question. */
export interface StepSpec {
  readonly step: Step;
  tell(reason: number, read: (slot: Slot) => number): Told;
}

/** A block's place in the document. */
export interface BlockPlace {
  readonly cell: string;
  readonly name: string;
  readonly kind: string;
  readonly role: string;
  readonly results: AnyBlock['results'];
  readonly slots: ReadonlyMap<string, Slot>;
}

export interface PartStepSpec {
  readonly cell: string;
  readonly path: string;
  readonly shape: PartShape;
  /** Field → slot; for `density` and `areal_mass` the slot that the material or stack text names. */
  readonly inputs: ReadonlyMap<string, Slot>;
  /** PART_STRIDE slots in a row. */
  readonly row: Slot;
  /** Four in a row: how far its mass and its place along x, y and z are off what the sheet says. 0 but in a spread. */
  readonly off: Slot;
  readonly estimate: Slot;
  /** Weighed less estimated; NaN until weighed, and where it is made of something else than then. */
  readonly difference: Slot;
  /** What is weighed counts while this choice picks this option, or not at all: it was made of something else. Missing: always. */
  readonly weighedAs: { readonly picked: Slot; readonly option: number } | 'something else' | undefined;
}

export interface FoldPartsSpec {
  readonly cell: string;
  readonly path: string;
  readonly fuelShare: Slot;
  readonly rows: readonly {
    readonly path: string;
    readonly fuel: boolean;
    readonly row: Slot;
    /** What its mass is estimated from together with others: a material or a stack. */
    readonly cutFrom: string | undefined;
  }[];
  /** In the order of `foldNames`. */
  readonly folds: readonly Slot[];
  /** One a row: moment about the CG, and the same as a share. */
  readonly moments: readonly Slot[];
  readonly shares: readonly Slot[];
}

export interface LayerStepSpec {
  readonly cell: string;
  readonly path: string;
  readonly amount: Slot;
  /** Missing for a layer known by its areal mass alone. */
  readonly material?: {
    readonly density: Slot;
    readonly modulus: Slot | undefined;
    /** Modulus in bending by itself, where it's another. */
    readonly bending: Slot | undefined;
  };
  /** `layerStride` slots in a row. */
  readonly layer: Slot;
}

export interface FoldLayersSpec {
  readonly cell: string;
  readonly path: string;
  readonly layers: readonly Slot[];
  /** In the order of `stackNames`. */
  readonly folds: readonly Slot[];
}

/**
 * The steps that need physics. Handed to the cell kinds instead of imported by them, so that the page, which edits cells
 * but computes nothing, doesn't carry physics.
 */
export interface TradeSteps {
  readonly partStride: number;
  readonly layerStride: number;
  readonly partsRole: string;
  readonly partsResults: AnyBlock['results'];
  part(spec: PartStepSpec): StepSpec;
  foldParts(spec: FoldPartsSpec): StepSpec;
  layer(spec: LayerStepSpec): StepSpec;
  foldLayers(spec: FoldLayersSpec): StepSpec;
}

/** What a cell kind says to while its document is compiled. First every cell lays its names and texts, then the work put off is done. */
export interface Builder {
  readonly document: Document;
  readonly blocks: ReadonlyMap<string, AnyBlock>;
  readonly tables: ReadonlyMap<string, LibraryTable>;
  /** The columns of a table that formulas can read. */
  columns(table: string): readonly ValueColumn[];
  /** Names of the rows of a table: those of the document first, then the library's. */
  rows(table: string): readonly string[];
  readonly trade: TradeSteps;
  /** Takes a path for one thing. False, with a fault, where the name isn't legal or is taken: then leave the thing out. */
  claim(path: string, cell: string, as?: 'name' | 'option'): boolean;
  /** Slots in a row; `key` names them over the document. */
  slots(key: string, count?: number): Slot;
  /** Slots in a row that hold a number until a plan puts another there; no text and no formula reaches it. */
  fixed(key: string, value: number, count?: number): Slot;
  /** Slots in a row with the numbers that one text of the document gives; no formula reaches them. */
  numbers(key: string, values: readonly number[]): Slot;
  /** A text with its slot; it becomes a constant, a formula step or a fault. */
  text(spec: TextSpec): Slot;
  value(spec: ValueSpec): void;
  /** A function of airspeed: has a name, but no formula can read it. */
  curve(spec: ValueSpec): void;
  /** Dimension of a unit by name; undefined, with a fault at the path, where there is no such unit. */
  unit(unit: string, path: string, cell: string): Dimension | undefined;
  /** Put off until every name is laid. */
  later(work: () => void): void;
  step(spec: StepSpec): void;
  /** What stands in for a step that can't be made: its writes have no answer and those who need them wait. */
  broken(
    at: { cell: string; path: string; kind: Step['kind']; writes: readonly Slot[] },
    told: Omit<Told, 'path'> & { readonly path?: string },
  ): void;
  fault(fault: Omit<Fault, 'state'>): void;
  find(path: string): Reach | undefined;
  /** The name nearest to one that isn't there, as a sentence with a space before it; '' where none is near. Of the design's own names it says the title. */
  meant(name: string, among?: readonly string[], say?: (near: string) => string): string;
  /** Every path that `find` finds. */
  paths(): readonly string[];
  offer(place: BlockPlace): void;
  placesOf(role: string): readonly BlockPlace[];
}

import type { GenericSchema } from 'valibot';
import type { Cell } from '../document';
import type { Builder } from '../specs';

/** One text that a person may set, and where it is. */
export interface Text {
  readonly path: string;
  readonly text: string;
}

/** How the references in a cell change when something is renamed. */
export interface Rewrite {
  /** A formula, which may also be a bare value. */
  formula(text: string): string;
  /** One path by itself. */
  path(path: string): string;
  /** The name of an option of the choice at `of`. */
  option(of: string, name: string): string;
}

/**
 * Everything that the sheet knows of one kind of cell. A new kind is one file with one of these, listed in index.ts.
 * Functions return the cell itself where nothing changes.
 */
export interface CellKindOf<C extends Cell> {
  readonly kind: C['kind'];
  /** Its keys stand in the order in which a file lists them. */
  readonly schema: GenericSchema<unknown, C>;
  /** Paths of the things that have a name of their own, the cell's first. */
  owns(cell: C): readonly string[];
  /** In reading order. */
  texts(cell: C): readonly Text[];
  /** Undefined where the path isn't one of its texts. */
  put(cell: C, path: string, text: string): C | undefined;
  /** Gives the thing at `path` the name `to`; undefined where `path` isn't in `owns`. */
  rename(cell: C, path: string, to: string): C | undefined;
  rewrite(cell: C, change: Rewrite): C;
  lay(cell: C, builder: Builder): void;
}

import type { Dimension } from './dimension';

/** A unit as people type it. SI value = (x + offset) · factor. */
export interface Unit {
  /** As it is shown, kept in a file and usually typed: `mm`, `lbf·in`, `°C`. */
  readonly name: string;
  /** What it is called in full. */
  readonly title: string;
  readonly dimension: Dimension;
  /** Size of one unit in the coherent SI unit of its dimension. */
  readonly factor: number;
  /** Added before scaling; not 0 only for temperature scales with a zero of their own. */
  readonly offset: number;
  /** The set that it belongs to. */
  readonly system: UnitSystem;
  /** Other spellings that are read, never shown. */
  readonly aliases: readonly string[];
}

export type UnitSystem = UnitSet | 'both';

/** The units in which a design is shown. */
export type UnitSet = 'metric' | 'inch_pound';

/** One row of a unit table, in a form that is short to write down. */
export function unit(
  name: string,
  title: string,
  dimension: Dimension,
  factor: number,
  system: UnitSystem,
  aliases: readonly string[] = [],
): Unit {
  return { name, title, dimension, factor, offset: 0, system, aliases };
}

import text from '../../data/blade-shapes.csv?raw';
import { ONE } from '../units/index';
import { readTable, type Sourced } from './table';

/** Outline and twist of a propeller's blade, free of its size. */
export interface LibraryBladeShape extends Sourced {
  /** r/R. */
  readonly radiusShare: readonly number[];
  /** c/R. */
  readonly chordShare: readonly number[];
  /** Local pitch over the marked pitch. */
  readonly pitchShare: readonly number[];
}

/** Stations of the table, % of the tip radius. */
const STATIONS = [15, 20, 30, 40, 50, 60, 70, 80, 90, 95, 100] as const;

const readBladeShapes = (file: string, content: string): LibraryBladeShape[] =>
  readTable(file, content, (row) => ({
    name: row.name,
    title: row.title,
    radiusShare: STATIONS.map((station) => station / 100),
    chordShare: STATIONS.map((station) => row.quantity(`chord_${station}`, ONE)),
    pitchShare: STATIONS.map((station) => row.quantity(`pitch_${station}`, ONE)),
    source: row.source,
    memory: row.memory,
  }));

export const bladeShapes: readonly LibraryBladeShape[] = readBladeShapes('blade-shapes.csv', text);

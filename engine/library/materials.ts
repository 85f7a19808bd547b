import text from '../../data/materials.csv?raw';
import { DENSITY, PRESSURE } from '../units/index';
import { readTable, type Sourced } from './table';

export interface LibraryMaterial extends Sourced {
  /** kg/m³. */
  readonly density: number;
  /** Young's modulus along the grain or fibre, Pa; NaN: not known. */
  readonly modulus: number;
}

export const readMaterials = (file: string, content: string): LibraryMaterial[] =>
  readTable(file, content, (row) => ({
    name: row.name,
    title: row.title,
    density: row.quantity('density', DENSITY),
    modulus: row.quantity('modulus', PRESSURE, Number.NaN),
    source: row.source,
    memory: row.memory,
  }));

export const materials: readonly LibraryMaterial[] = readMaterials('materials.csv', text);

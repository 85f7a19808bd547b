import { AREAL_MASS } from '../units/index';
import type { Library, ValueSpec } from './build';
import { MATERIAL_NUMBERS } from './material-numbers';

/** A number of the library and what a person reads of it. */
export interface Given {
  readonly value: number;
  readonly told: Pick<ValueSpec, 'title' | 'symbol' | 'doc' | 'dimension' | 'unit' | 'tradeUnit'>;
}

/** Every number that a document may name without having it: `balsa_medium.density`, `dope_clear.areal_mass`. */
export function libraryNumbers({ materials, finishes }: Library): ReadonlyMap<string, Given> {
  const numbers = new Map<string, Given>();
  for (const material of materials) {
    for (const { name, title, ...told } of MATERIAL_NUMBERS) {
      numbers.set(`${material.name}.${name}`, {
        value: material[name],
        told: { ...told, title: `${material.title}: ${title}`, doc: material.source },
      });
    }
  }
  for (const { name, title, arealMass, source } of finishes) {
    numbers.set(`${name}.areal_mass`, {
      value: arealMass,
      told: {
        title: `${title}: areal mass`,
        symbol: 'w',
        doc: source,
        dimension: AREAL_MASS,
        unit: 'g/m²',
        tradeUnit: 'oz/yd²',
      },
    });
  }
  return numbers;
}

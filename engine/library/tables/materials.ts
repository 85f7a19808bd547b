import text from '../../../data/materials.csv?raw';
import { DENSITY, PRESSURE } from '../../units/index';
import { libraryTable } from '../library-table';

export const readMaterials = (file: string, content: string) =>
  libraryTable(
    {
      name: 'materials',
      title: 'Materials',
      one: 'material',
      doc: 'Formulas and parts reach a material by its name: balsa_medium.density. Wood varies from sheet to sheet: weigh what you buy. The modulus in bending is of plywood by itself, whose outer plies do most of the work; blank where it is the other.',
      group: 'group',
      columns: {
        group: {
          title: 'Group',
          words: true,
          among: ['balsa', 'wood', 'plywood', 'composite', 'fibre', 'metal', 'plastic', 'foam', 'liquid'],
        },
        density: { title: 'Density', symbol: 'ρ', dimension: DENSITY, unit: 'kg/m³', tradeUnit: 'lb/ft³' },
        modulus: { title: 'Young’s modulus', symbol: 'E', dimension: PRESSURE, unit: 'GPa', mayBeBlank: true },
        bending_modulus: {
          title: 'Modulus in bending',
          symbol: 'E_b',
          dimension: PRESSURE,
          unit: 'GPa',
          mayBeBlank: true,
          seldom: true,
        },
      },
    },
    file,
    content,
  );

/** Woods, plies, laminates, metals, foams and liquids; the modulus is along the grain or fibre where nothing else is said. */
export const materials = readMaterials('materials.csv', text);

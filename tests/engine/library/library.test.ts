import { describe, expect, it } from 'vitest';
import { readFinishes } from '../../../engine/library/finishes';
import { finishes, materials, SECTION_FAMILIES, sections, sectionsOf } from '../../../engine/library/index';
import { readMaterials } from '../../../engine/library/materials';
import { readSections } from '../../../engine/library/sections';

const HEAD = 'name,title,density,modulus,memory,source\n';
const material = (row: string) => () => readMaterials('stuff.csv', HEAD + row);

describe('a data row', () => {
  it('is read in SI, with its source and its mark', () => {
    expect(readMaterials('stuff.csv', `${HEAD}pine,Pine,500 kg/m³,9000 MPa,no,A handbook\n`)).toEqual([
      { name: 'pine', title: 'Pine', density: 500, modulus: 9e9, memory: false, source: 'A handbook' },
    ]);
  });
  it('may leave a modulus out', () => {
    expect(readMaterials('stuff.csv', `${HEAD}glue,Glue,1100 kg/m³,,yes,Recalled\n`)[0]!.modulus).toBeNaN();
  });
  it('is refused without source', () => {
    expect(material('pine,Pine,500 kg/m³,9 GPa,no,\n')).toThrow(new RangeError('stuff.csv: line 2: source is blank'));
  });
  it('is refused without unit, or with one of another kind', () => {
    expect(material('pine,Pine,500,9 GPa,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: density is "500"; its unit is missing'),
    );
    expect(material('pine,Pine,500 kg/m²,9 GPa,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: density is "500 kg/m²"; its unit is not one for this column'),
    );
  });
  it('is refused without number', () => {
    expect(material('pine,Pine,heavy kg/m³,9 GPa,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: density is "heavy kg/m³"; it must be a number and its unit'),
    );
    expect(material('pine,Pine,,9 GPa,no,A handbook\n')).toThrow(new RangeError('stuff.csv: line 2: density is blank'));
  });
  it('is refused with a name that stands already', () => {
    const pine = 'pine,Pine,500 kg/m³,9 GPa,no,A handbook\n';
    expect(material(pine + pine)).toThrow(new RangeError('stuff.csv: line 3: name "pine" is taken by line 2'));
  });
  it('is refused with a name that no formula can say', () => {
    expect(material('Pine wood,Pine,500 kg/m³,9 GPa,no,A handbook\n')).toThrow(
      new RangeError(
        'stuff.csv: line 2: name "Pine wood" is not lower-case letters, digits and underscores, beginning with a letter',
      ),
    );
  });
  it('is refused without saying whether it was recalled', () => {
    expect(material('pine,Pine,500 kg/m³,9 GPa,perhaps,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: memory is "perhaps"; it must be yes or no'),
    );
  });
  it('is refused in a table without its column', () => {
    expect(() => readMaterials('stuff.csv', 'name,title,memory,source\npine,Pine,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: there is no column "density"'),
    );
  });
  it('of a finish or a section must be of a known kind', () => {
    expect(() =>
      readFinishes('finish.csv', 'name,title,kind,areal_mass,memory,source\nwax,Wax,polish,3 g/m²,yes,Recalled\n'),
    ).toThrow(new RangeError('finish.csv: line 2: kind is "polish"; it must be coat, covering or glue'));
    expect(() =>
      readSections('shapes.csv', 'name,title,family,memory,source\nbarn,Barn door,flat,yes,Recalled\n'),
    ).toThrow(
      new RangeError('shapes.csv: line 2: family is "flat"; it must be one of symmetrical, cambered 2 %, cambered 4 %'),
    );
  });
});

describe('the library', () => {
  it('has the woods, metals, laminates and fuel that a builder needs', () => {
    const names = new Set(materials.map((each) => each.name));
    for (const name of ['balsa_medium', 'spruce_sitka', 'basswood', 'maple', 'birch_ply', 'light_ply']) {
      expect(names).toContain(name);
    }
    for (const name of ['carbon_laminate', 'music_wire', 'brass', 'lead', 'aluminium', 'glow_fuel']) {
      expect(names).toContain(name);
    }
  });
  it('holds densities and moduli of solids that exist', () => {
    for (const { name, density, modulus } of materials) {
      expect(density, name).toBeGreaterThan(10);
      expect(density, name).toBeLessThan(12000);
      if (!Number.isNaN(modulus)) {
        expect(modulus, name).toBeGreaterThan(1e6);
        expect(modulus, name).toBeLessThan(3e11);
      }
    }
  });
  it('says "common practice" only of rows that are marked as recalled', () => {
    for (const row of [...materials, ...finishes]) {
      if (row.source.includes('ommon practice, no source')) expect(row.memory, row.name).toBe(true);
    }
  });
  it('has finishes from a thin coat to glass cloth', () => {
    const masses = finishes.map((each) => each.arealMass);
    expect(Math.min(...masses)).toBeGreaterThan(0.004);
    expect(Math.max(...masses)).toBeLessThan(0.15);
    expect(new Set(finishes.map((each) => each.kind)).size).toBe(3);
  });
  it('puts every section into one family', () => {
    expect(SECTION_FAMILIES.flatMap((family) => sectionsOf(family)).length).toBe(sections.length);
  });
});

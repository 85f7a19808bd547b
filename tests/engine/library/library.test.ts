import { describe, expect, it } from 'vitest';
import { LINE_MAKES, SECTION_FAMILIES, sections, sectionsOf, tables } from '../../../engine/library/index';
import { libraryOf } from '../../../engine/library/library-table';
import { readClassRules } from '../../../engine/library/tables/class-rules';
import { finishes, readFinishes } from '../../../engine/library/tables/finishes';
import { lineKinds, readLineKinds } from '../../../engine/library/tables/line-kinds';
import { materials, readMaterials } from '../../../engine/library/tables/materials';
import { readSections } from '../../../engine/library/tables/sections';
import { wire } from '../../../engine/library/tables/wire';
import { LINE_KINDS, lineLinearMass } from '../../../engine/physics/index';

const HEAD = 'name,title,group,density,modulus,bending_modulus,memory,source\n';
const material = (row: string) => () => readMaterials('stuff.csv', HEAD + row);

describe('a data row', () => {
  it('is read in SI, with its source and its mark', () => {
    expect(readMaterials('stuff.csv', `${HEAD}pine,Pine,wood,500 kg/m³,9000 MPa,,no,A handbook\n`).rows).toEqual([
      {
        name: 'pine',
        title: 'Pine',
        words: { group: 'wood' },
        values: { density: 500, modulus: 9e9, bending_modulus: Number.NaN },
        memory: false,
        source: 'A handbook',
      },
    ]);
  });
  it('may leave a modulus out', () => {
    const { rows } = readMaterials('stuff.csv', `${HEAD}glue,Glue,liquid,1100 kg/m³,,,yes,Recalled\n`);
    expect(rows[0]!.values.modulus).toBeNaN();
  });
  it('is refused without source', () => {
    expect(material('pine,Pine,wood,500 kg/m³,9 GPa,,no,\n')).toThrow(
      new RangeError(
        'stuff.csv: line 2: source is blank; name where the values come from, or write "Common practice, no source" and mark the row as recalled',
      ),
    );
  });
  it('is refused without unit, or with one of another kind', () => {
    expect(material('pine,Pine,wood,500,9 GPa,,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: density is "500", which has no unit; write a density with its unit'),
    );
    expect(material('pine,Pine,wood,500 kg/m²,9 GPa,,no,A handbook\n')).toThrow(
      new RangeError(
        'stuff.csv: line 2: density is "500 kg/m²", which has the unit "kg/m²"; write a density with its unit',
      ),
    );
  });
  it('is refused without number', () => {
    expect(material('pine,Pine,wood,heavy kg/m³,9 GPa,,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: density is "heavy kg/m³", which is no number; write a density with its unit'),
    );
    expect(material('pine,Pine,wood,,9 GPa,,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: density is blank'),
    );
  });
  it('is refused with a name that stands already', () => {
    const pine = 'pine,Pine,wood,500 kg/m³,9 GPa,,no,A handbook\n';
    expect(material(pine + pine)).toThrow(
      new RangeError('stuff.csv: line 3: name "pine" is taken by line 2; each row needs one of its own'),
    );
  });
  it('is refused with a name that a row of another table has', () => {
    const stuff = readMaterials('stuff.csv', `${HEAD}silk,Silk,fibre,500 kg/m³,9 GPa,,no,A handbook\n`);
    expect(() => libraryOf([stuff, finishes])).toThrow(
      new RangeError(
        'finishes: the row "silk" has the name of a row of materials; every row of the library needs one of its own',
      ),
    );
  });
  it('is refused with a name that no formula can say', () => {
    expect(material('Pine wood,Pine,wood,500 kg/m³,9 GPa,,no,A handbook\n')).toThrow(
      new RangeError(
        'stuff.csv: line 2: name "Pine wood" is not lower-case letters, digits and underscores, beginning with a letter',
      ),
    );
  });
  it('is refused without saying whether it was recalled', () => {
    expect(material('pine,Pine,wood,500 kg/m³,9 GPa,,perhaps,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: memory is "perhaps"; it must be yes or no'),
    );
  });
  it('is refused in a table without its column', () => {
    expect(() => readMaterials('stuff.csv', 'name,title,group,memory,source\npine,Pine,wood,no,A handbook\n')).toThrow(
      new RangeError('stuff.csv: line 2: there is no column "density"'),
    );
  });
  it('must be of a known group, kind or family', () => {
    expect(material('pine,Pine,tree,500 kg/m³,9 GPa,,no,A handbook\n')).toThrow(
      new RangeError(
        'stuff.csv: line 2: group is "tree"; it must be one of balsa, wood, plywood, composite, fibre, metal, plastic, foam, liquid',
      ),
    );
    expect(() =>
      readFinishes('finish.csv', 'name,title,kind,areal_mass,memory,source\nwax,Wax,polish,3 g/m²,yes,Recalled\n'),
    ).toThrow(new RangeError('finish.csv: line 2: kind is "polish"; it must be one of coat, covering, glue'));
    expect(() =>
      readSections('shapes.csv', 'name,title,family,memory,source\nbarn,Barn door,flat,yes,Recalled\n'),
    ).toThrow(
      new RangeError('shapes.csv: line 2: family is "flat"; it must be one of symmetrical, cambered 2 %, cambered 4 %'),
    );
    expect(() => readLineKinds('lines.csv', 'name,title,kind,memory,source\nrope,Rope,hemp,yes,Recalled\n')).toThrow(
      new RangeError(
        'lines.csv: line 2: kind is "hemp"; it must be one of stranded_steel, solid_steel, polyethylene_braid',
      ),
    );
  });
  it('of a class rule must say its pull in a unit of force', () => {
    const columns = 'edition,line_length_min,line_length_max,line_diameter_min,test_factor,test_load';
    const head = `name,title,${columns},mass_max,displacement_max,span_max,memory,source\n`;
    expect(() => readClassRules('rules.csv', `${head}fast,Fast,2026,,,,,20 kg,,,,no,A rule book\n`)).toThrow(
      new RangeError('rules.csv: line 2: test_load is "20 kg", which has the unit "kg"; write a force with its unit'),
    );
  });
});

describe('the library', () => {
  it('has the woods, metals, laminates and fuel that a builder needs', () => {
    const names = new Set(materials.rows.map((each) => each.name));
    for (const name of ['balsa_medium', 'spruce_sitka', 'basswood', 'maple', 'birch_ply', 'light_ply']) {
      expect(names).toContain(name);
    }
    for (const name of ['carbon_laminate', 'music_wire', 'brass', 'lead', 'aluminium', 'glow_fuel']) {
      expect(names).toContain(name);
    }
  });
  it('holds densities and moduli of solids that exist', () => {
    for (const { name, values } of materials.rows) {
      expect(values.density, name).toBeGreaterThan(10);
      expect(values.density, name).toBeLessThan(12000);
      if (Number.isNaN(values.modulus)) continue;
      expect(values.modulus, name).toBeGreaterThan(1e6);
      expect(values.modulus, name).toBeLessThan(3e11);
    }
  });
  it('says "common practice", "recalled" or "estimate" only of rows that are marked so', () => {
    for (const { rows } of tables) {
      for (const row of rows) {
        if (/ommon practice, no source|an estimate without source|recalled/i.test(row.source)) {
          expect(row.memory, row.name).toBe(true);
        }
      }
    }
  });
  it('has finishes from a thin coat to glass cloth, and every kind of them', () => {
    const masses = finishes.rows.map((each) => each.values.areal_mass!);
    expect(Math.min(...masses)).toBeGreaterThan(0.004);
    expect(Math.max(...masses)).toBeLessThan(0.15);
    expect(new Set(finishes.rows.map((each) => each.words.kind)).size).toBe(3);
  });
  it('puts every section into one family', () => {
    expect(SECTION_FAMILIES.flatMap((family) => sectionsOf(family)).length).toBe(sections.length);
  });
  it('weighs a line as the lines block does by its kind and diameter', () => {
    expect(LINE_KINDS.map((kind) => kind.name)).toEqual([...LINE_MAKES]);
    for (const { name, values } of lineKinds.rows) {
      const computed = lineLinearMass(LINE_KINDS[values.kind!]!, values.diameter!);
      expect(Math.abs(values.linear_mass! / computed - 1), name).toBeLessThan(0.002);
    }
  });
  it('breaks wire at its strength times its section, and weighs it as steel', () => {
    for (const { name, values, words } of wire.rows) {
      if (words.group !== 'music wire') continue;
      const area = (Math.PI / 4) * values.diameter! ** 2;
      expect(Math.abs(values.breaking_load! / (values.strength! * area) - 1), name).toBeLessThan(0.001);
      expect(Math.abs(values.linear_mass! / (7800 * area) - 1), name).toBeLessThan(0.001);
    }
  });
});

import text from '../../../data/sections.csv?raw';
import { ONE } from '../../units/index';
import { libraryTable } from '../library-table';

/** Section pictures a builder picks from, each a family of sections of rising thickness. */
export const SECTION_FAMILIES = ['symmetrical', 'cambered 2 %', 'cambered 4 %'] as const;

const plain = { dimension: ONE, unit: '' } as const;

export const readSections = (file: string, content: string) =>
  libraryTable(
    {
      name: 'sections',
      title: 'Wing sections',
      one: 'wing section',
      doc: 'Values at the Reynolds number of the source, ten times and more that of a model: the wing takes drag and greatest lift of a symmetrical section from those measured at low Reynolds numbers, and from here what camber and a thin nose change in them.',
      group: 'family',
      columns: {
        family: { title: 'Family', words: true, among: SECTION_FAMILIES },
        thickness: { title: 'Thickness', symbol: 't/c', dimension: ONE, unit: '%' },
        slope: { title: 'Lift slope', symbol: 'a_0', dimension: ONE, unit: '1/°' },
        zero_lift_angle: { title: 'Zero lift at', symbol: 'α_L0', dimension: ONE, unit: '°' },
        moment: { title: 'Moment', symbol: 'c_m', ...plain },
        drag: { title: 'Least drag', symbol: 'c_d0', ...plain },
        lift_limit: { title: 'Greatest lift', symbol: 'c_l,max', ...plain },
        least_drag_lift: { title: 'Least drag at lift', symbol: 'c_l,i', ...plain },
        reynolds: { title: 'Reynolds number', words: true },
      },
    },
    file,
    content,
  );

/** NACA sections: what each does at the Reynolds number of its source. */
export const sectionRows = readSections('sections.csv', text);

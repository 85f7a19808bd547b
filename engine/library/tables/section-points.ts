import text from '../../../data/section_points.csv?raw';
import { ONE } from '../../units/index';
import { libraryTable } from '../library-table';

/** Transition left to itself, or fixed by a strip. */
const SURFACES = ['smooth', 'tripped'] as const;

const plain = { dimension: ONE, unit: '', mayBeBlank: true } as const;

const readSectionPoints = (file: string, content: string) =>
  libraryTable(
    {
      name: 'section_points',
      title: 'Wing sections by Reynolds number',
      one: 'section at one Reynolds number',
      doc: 'How drag and greatest lift of three symmetrical sections change down to the Reynolds numbers of a model: the wing is computed with the smooth ones, between them by thickness and the logarithm of the Reynolds number. Lift slope between 0° and 4°; NACA 0012 has no greatest lift in what was read.',
      group: 'group',
      columns: {
        group: { title: 'Section', words: true },
        thickness: { title: 'Thickness', symbol: 't/c', dimension: ONE, unit: '%' },
        surface: { title: 'Surface', words: true, among: SURFACES },
        reynolds: { title: 'Reynolds number', symbol: 'Re', dimension: ONE, unit: '' },
        slope: { title: 'Lift slope', symbol: 'a_0', dimension: ONE, unit: '1/°', mayBeBlank: true },
        lift_limit: { title: 'Greatest lift', symbol: 'c_l,max', ...plain },
        drag_0: { title: 'Drag at 0°', symbol: 'c_d', ...plain },
        drag_4: { title: 'Drag at 4°', symbol: 'c_d', ...plain },
        drag_8: { title: 'Drag at 8°', symbol: 'c_d', ...plain },
      },
    },
    file,
    content,
  );

/** NACA 0012, 0015 and 0018 at Reynolds numbers from 40 000 to 6 000 000. */
export const sectionPoints = readSectionPoints('section_points.csv', text);

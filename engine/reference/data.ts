import { finishes, materials, type Sourced, sections } from '../library/index';
import { formatQuantity } from '../units/index';
import type { Chapter } from './chapter';

const MARKS =
  'A row marked “from memory” was recalled and not looked up: open its source, or weigh a piece, before you rest anything on it.';

const mark = ({ memory }: Sourced): string => (memory ? 'from memory' : '');
const blankOr = (value: number, unit: string): string => (Number.isNaN(value) ? '' : formatQuantity(value, unit));

export const materialsChapter = (): Chapter => ({
  id: 'materials',
  group: 'Data',
  title: 'Materials',
  pieces: [
    {
      kind: 'text',
      text: `Formulas and parts reach a material by its name: balsa_medium.density. Wood varies from sheet to sheet: weigh what you buy. ${MARKS}`,
    },
    {
      kind: 'table',
      title: 'Materials',
      columns: ['material', 'name', 'density', 'Young’s modulus', 'source', 'mark'],
      rows: materials.map((row) => [
        row.title,
        row.name,
        formatQuantity(row.density, 'kg/m³', { significant: 4 }),
        blankOr(row.modulus, 'GPa'),
        row.source,
        mark(row),
      ]),
    },
  ],
});

export const finishesChapter = (): Chapter => ({
  id: 'finishes',
  group: 'Data',
  title: 'Finishes, coverings and glue',
  pieces: [
    { kind: 'text', text: `Mass on one square metre when dry, for one coat. ${MARKS}` },
    {
      kind: 'table',
      title: 'Finishes',
      columns: ['finish', 'name', 'kind', 'mass per area', 'source', 'mark'],
      rows: finishes.map((row) => [
        row.title,
        row.name,
        row.kind,
        formatQuantity(row.arealMass, 'g/m²'),
        row.source,
        mark(row),
      ]),
    },
  ],
});

export const sectionsChapter = (): Chapter => ({
  id: 'sections',
  group: 'Data',
  title: 'Wing sections',
  pieces: [
    {
      kind: 'text',
      text: `Values at the Reynolds number of the source, ten times and more that of a model: the wing block corrects drag and greatest lift by factors that can be typed. ${MARKS}`,
    },
    {
      kind: 'table',
      title: 'Wing sections',
      columns: [
        'section',
        'family',
        'thickness',
        'lift slope',
        'zero lift at',
        'moment',
        'least drag',
        'greatest lift',
        'Reynolds number',
        'source',
        'mark',
      ],
      rows: sections.map((row) => [
        row.title,
        row.family,
        formatQuantity(row.thickness, '%'),
        formatQuantity(row.slope, '1/°', { significant: 3 }),
        formatQuantity(row.zeroLiftAngle, '°'),
        formatQuantity(row.moment, ''),
        formatQuantity(row.drag, ''),
        formatQuantity(row.liftLimit, ''),
        row.reynolds,
        row.source,
        mark(row),
      ]),
    },
  ],
});

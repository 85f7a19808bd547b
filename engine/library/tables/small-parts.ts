import text from '../../../data/small-parts.csv?raw';
import { LENGTH, MASS, VOLUME } from '../../units/index';
import { libraryTable } from '../library-table';

const size = { dimension: LENGTH, unit: 'mm', tradeUnit: 'in', mayBeBlank: true, seldom: true } as const;

const readSmallParts = (file: string, content: string) =>
  libraryTable(
    {
      name: 'small_parts',
      title: 'Small parts',
      one: 'small part',
      doc: 'What is bought by the piece, with the mass of one: the mass of a part can be one of these, times how many there are.',
      group: 'kind',
      columns: {
        kind: { title: 'Kind', words: true, among: ['wheels', 'screws', 'nuts', 'washers', 'hardware', 'tanks'] },
        mass: { title: 'Mass of one', symbol: 'm', dimension: MASS, unit: 'g', tradeUnit: 'oz' },
        diameter: { title: 'Diameter', symbol: 'd', ...size },
        length: { title: 'Length', symbol: 'l', ...size },
        volume: {
          title: 'Volume',
          symbol: 'v',
          dimension: VOLUME,
          unit: 'cm³',
          tradeUnit: 'fl oz',
          mayBeBlank: true,
          seldom: true,
        },
      },
    },
    file,
    content,
  );

/** Wheels, screws, nuts, washers, small hardware and tanks: what one of each weighs. */
export const smallParts = readSmallParts('small-parts.csv', text);

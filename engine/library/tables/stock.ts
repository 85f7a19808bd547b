import text from '../../../data/stock.csv?raw';
import { LENGTH } from '../../units/index';
import { libraryTable } from '../library-table';

const size = { dimension: LENGTH, unit: 'mm', tradeUnit: 'in' } as const;

const readStock = (file: string, content: string) =>
  libraryTable(
    {
      name: 'stock',
      title: 'Sizes of the trade',
      one: 'size of the trade',
      doc: 'In which sizes sheet, ply, strip, dowel and triangle are sold. What a piece weighs is its size by the density of its wood.',
      group: 'kind',
      columns: {
        kind: { title: 'Kind', words: true, among: ['sheets', 'ply', 'strips', 'dowels', 'triangles'] },
        thickness: { title: 'Thickness', symbol: 't', ...size },
        width: { title: 'Width', symbol: 'w', ...size },
        length: { title: 'Length', symbol: 'l', ...size },
      },
    },
    file,
    content,
  );

/** Sheet, ply, strip, dowel and triangle as they are sold, in inches and in millimetres. */
export const stock = readStock('stock.csv', text);

import type { PartsCell } from '../../engine/index';
import { useSheet } from '../store/context';

const totals = [
  { words: 'tank empty', suffix: '_empty' },
  { words: 'tank half full', suffix: '_half' },
  { words: 'tank full', suffix: '_full' },
  { words: 'as set', suffix: '' },
] as const;

/** Weight and CG with the tank empty, half full, full, and with the fuel that the list says. */
export function PartTotals({ cell }: { cell: PartsCell }) {
  const sheet = useSheet();
  return (
    <tfoot>
      {totals.map(({ words, suffix }) => (
        <tr key={words}>
          <th scope="row">{words}</th>
          <td />
          {['mass', 'x', 'y', 'z'].map((column) => (
            <td key={column} data-value={`${cell.name}.${column}${suffix}`}>
              {sheet.shown(`${cell.name}.${column}${suffix}`)}
            </td>
          ))}
          <td />
          <td>{suffix === '' ? sheet.shown(`${cell.name}.weighed_share`) : ''}</td>
        </tr>
      ))}
    </tfoot>
  );
}

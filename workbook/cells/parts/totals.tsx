import type { PartsCell } from '../../../engine/index';
import { useSheet } from '../../store/context';

const totals = [
  { words: 'tank empty', suffix: '_empty' },
  { words: 'tank half full', suffix: '_half' },
  { words: 'tank full', suffix: '_full' },
  { words: 'as set', suffix: '' },
] as const;

/** Weight and CG with the tank empty, half full, full, and with the fuel that the list says; and how sure they are. */
export function PartTotals({ cell }: { cell: PartsCell }) {
  const sheet = useSheet();
  return (
    <tfoot>
      {totals.map(({ words, suffix }) => (
        <tr key={words}>
          <th scope="row">{words}</th>
          <Total path={`${cell.name}.mass${suffix}`} label="mass" />
          <td class="spare" />
          <Total path={`${cell.name}.x${suffix}`} label="x" />
          <Total path={`${cell.name}.y${suffix}`} label="y" />
          <Total path={`${cell.name}.z${suffix}`} label="z" />
          <td class="spare" />
        </tr>
      ))}
      <tr class="uncertain">
        <th scope="row">uncertainty of these, one standard deviation</th>
        <Total path={`${cell.name}.mass_sd`} label="mass" />
        <td data-label="weighed so far" data-value={`${cell.name}.weighed_share`}>
          {sheet.shown(`${cell.name}.weighed_share`)} weighed
        </td>
        <Total path={`${cell.name}.x_sd`} label="x" />
        <Total path={`${cell.name}.y_sd`} label="y" />
        <td class="spare" />
        <td class="spare" />
      </tr>
    </tfoot>
  );
}

function Total({ path, label }: { path: string; label: string }) {
  return (
    <td data-label={label} data-value={path}>
      {useSheet().shown(path)}
    </td>
  );
}

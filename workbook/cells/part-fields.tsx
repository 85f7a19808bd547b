import { useSignal } from '@preact/signals';
import type { PartsCell } from '../../engine/index';
import { TextEntry } from '../controls/text-entry';
import { useSheet } from '../store/context';
import { fieldsOfPart, partFieldTitle } from './part-shapes';

/** All texts of one part, to be changed. */
export function PartFields({ cell }: { cell: PartsCell }) {
  const sheet = useSheet();
  const picked = useSignal(cell.rows[0]?.name ?? '');
  const row = cell.rows.find((part) => part.name === picked.value);
  return (
    <details class="part-fields">
      <summary>Change a part</summary>
      <label class="part-pick">
        <span>Part</span>
        <select
          value={picked.value}
          onChange={(event) => {
            picked.value = event.currentTarget.value;
          }}
        >
          {cell.rows.map((part) => (
            <option key={part.name} value={part.name}>
              {part.title}
            </option>
          ))}
        </select>
      </label>
      {row &&
        fieldsOfPart(row).map((field) => {
          const path = `${cell.name}.${row.name}.${field}`;
          return (
            <div class="part-field" key={path}>
              <span>{partFieldTitle(field)}</span>
              <TextEntry
                secondary={field === 'weighed'}
                path={path}
                label={`${row.title}, ${partFieldTitle(field)}`}
                text={row.fields[field] ?? ''}
                shown={row.fields[field] ?? ''}
                placeholder="–"
                fault={sheet.faultAt(path)}
                onCommit={(text) => sheet.setText(path, text)}
                onUndoBeyond={sheet.undo}
              />
            </div>
          );
        })}
    </details>
  );
}

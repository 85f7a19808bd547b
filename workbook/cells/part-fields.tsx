import { useSignal } from '@preact/signals';
import { type PartsCell, partFields } from '../../engine/index';
import { TextEntry } from '../controls/text-entry';
import { useSheet } from '../store/context';

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
        partFields(row.shape).map((field) => {
          const path = `${cell.name}.${row.name}.${field.name}`;
          const text = row.fields[field.name] ?? '';
          return (
            <div class="part-field" key={path}>
              <span>{field.title}</span>
              <TextEntry
                secondary={field.name === 'weighed'}
                path={path}
                label={`${row.title}, ${field.title.toLowerCase()}`}
                text={text}
                shown={text}
                placeholder="–"
                fault={sheet.faultAt(path)}
                describedBy={`doc-${path}`}
                onCommit={(typed) => sheet.setText(path, typed)}
                onUndoBeyond={sheet.undo}
              />
              <span class="aside" id={`doc-${path}`}>
                {field.doc}
              </span>
            </div>
          );
        })}
    </details>
  );
}

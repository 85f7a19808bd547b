import type { BlockCell, FieldDescription } from '../../../engine/index';
import { useSheet } from '../../store/context';

/** Which of several cells a block takes a role from; nothing to ask where the sheet has one of them. */
export function LinkRow({ cell, field }: { cell: BlockCell; field: FieldDescription }) {
  const sheet = useSheet();
  const role = field.role ?? field.name;
  const words = field.roleWords ?? role;
  const names = sheet.namesOfRole(role).filter((name) => name !== cell.name);
  const picked = cell.fields[field.name] ?? '';
  const strange = picked !== '' && !names.includes(picked);
  if (names.length < 2 && !strange) return null;
  const path = `${cell.name}.${field.name}`;
  const title = (name: string): string => {
    const of = (each: string): string => sheet.cells.value.find((cell) => cell.name === each)?.title || each;
    // The name in formulas is only of use where two pieces are called the same.
    const alone = names.filter((each) => of(each) === of(name)).length === 1;
    return alone ? of(name) : `${of(name)} (${name})`;
  };
  return (
    <div class="field">
      <span class="symbol" />
      <span class="field-title">Which {words}</span>
      <select
        class="field-entry"
        data-path={path}
        aria-label={`Which ${words} ${cell.title} uses`}
        aria-describedby={`doc-${cell.id}-${field.name}`}
        value={picked}
        onChange={(event) => sheet.setText(path, event.currentTarget.value)}
      >
        <option value="">{names.length === 1 ? 'the only one' : 'not said yet'}</option>
        {strange && <option value={picked}>{picked}, which is not there</option>}
        {names.map((name) => (
          <option key={name} value={name}>
            {title(name)}
          </option>
        ))}
      </select>
      <span class="change" />
      <p class="aside field-doc" id={`doc-${cell.id}-${field.name}`}>
        {field.doc}
      </p>
    </div>
  );
}

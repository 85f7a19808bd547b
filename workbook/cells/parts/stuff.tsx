import type { Part, PartField } from '../../../engine/index';
import { FaultFlag } from '../../controls/fault-flag';
import { OwnRows } from '../../library/own-rows';
import { RowPick } from '../../library/row-pick';
import { NamedRowTold } from '../../library/row-told';
import { numberTold } from '../../library/told';
import { useSheet } from '../../store/context';

interface StuffProps {
  readonly table: string;
  readonly part: Part;
  readonly field: PartField;
}

/** What a part is made of, picked from the sheet's own materials, its choices and the library. */
export function MaterialPick({ table, part, field }: StuffProps) {
  const sheet = useSheet();
  const materials = sheet.tableNamed('materials');
  const path = `${table}.${part.name}.${field.name}`;
  const text = part.fields[field.name] ?? '';
  return (
    <div class="part-field">
      <span class="part-field-title">{field.title}</span>
      <MaterialList
        path={path}
        label={`${part.title}, material`}
        text={text}
        onPick={(name) => sheet.setText(path, name)}
      />
      <MaterialTold name={text} />
      {materials && <OwnRows table={materials} onAdd={(row) => sheet.setText(path, row.name)} />}
      <Flag path={path} />
    </div>
  );
}

export function MaterialList(props: {
  path: string;
  label: string;
  text: string;
  /** What a blank stands for; missing: something must be picked. */
  blank?: string;
  onPick(name: string): void;
}) {
  const { path, label, text, blank, onPick } = props;
  const sheet = useSheet();
  const library = sheet.tableNamed('materials');
  if (!library) return null;
  const choices = [...sheet.names.value.values()]
    .filter((info) => info.kind === 'choice' && info.path.endsWith('.density'))
    .map((info) => info.path.slice(0, -'.density'.length))
    .map((name) => ({
      value: name,
      title: name.replaceAll('_', ' ').replace('.', ': '),
      group: 'choices of this sheet',
    }));
  const density = library.columns.find(({ name }) => name === 'density');
  const none = blank === undefined ? [] : [{ value: '', title: blank }];
  return (
    <RowPick
      table={library}
      path={path}
      label={label}
      value={text}
      before={[...none, ...choices]}
      detail={(row) => density && numberTold(density, row, sheet.units())}
      onPick={onPick}
    />
  );
}

/** Density, modulus and source of a material, and whether its numbers were recalled. */
function MaterialTold({ name }: { name: string }) {
  const table = useSheet().tableNamed('materials');
  return table ? <NamedRowTold table={table} name={name} /> : null;
}

/** The stack that a part is cut from: a choice as it is picked, or one of its options whatever is picked. */
export function StackPick({ table, part, field }: StuffProps) {
  const sheet = useSheet();
  const path = `${table}.${part.name}.${field.name}`;
  const text = part.fields[field.name] ?? '';
  const choices = sheet.cells.value.filter((cell) => cell.kind === 'choice' && cell.of === 'stack');
  const coverings = (sheet.tableNamed('finishes')?.rows ?? []).map((each) => each.name);
  const known = choices.flatMap((cell) =>
    cell.kind === 'choice' ? [cell.name, ...cell.options.map((option) => `${cell.name}.${option.name}`)] : [],
  );
  return (
    <div class="part-field">
      <span class="part-field-title">{field.title}</span>
      <select
        data-path={path}
        aria-label={`${part.title}, stack`}
        aria-invalid={sheet.faultAt(path) ? true : undefined}
        value={text}
        onChange={(event) => sheet.setText(path, event.currentTarget.value)}
      >
        {text === '' && <option value="">pick one</option>}
        {text !== '' && !known.includes(text) && <option value={text}>{text}</option>}
        {choices.map(
          (cell) =>
            cell.kind === 'choice' && (
              <optgroup key={cell.name} label={cell.title}>
                <option value={cell.name}>{cell.title}: as picked</option>
                {cell.options.map((option) => (
                  <option key={option.name} value={`${cell.name}.${option.name}`}>
                    always {option.title}
                  </option>
                ))}
              </optgroup>
            ),
        )}
      </select>
      <p class="aside">
        {text === '' || coverings.includes(text) ? field.doc : `${sheet.shown(`${text}.areal_mass`)}, `}
        {text !== '' && `${sheet.shown(`${text}.thickness`)} thick. `}
        {choices.length === 0 && 'This sheet has no choice of stacks yet.'}
      </p>
      <Flag path={path} />
    </div>
  );
}

function Flag({ path }: { path: string }) {
  const fault = useSheet().faultAt(path);
  return fault ? <FaultFlag fault={fault} /> : null;
}

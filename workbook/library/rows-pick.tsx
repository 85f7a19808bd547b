import { useId } from 'preact/hooks';
import type { OwnRow, RowDescription, TableDescription, UnitSet } from '../../engine/index';
import { Combobox, type PickOption } from '../controls/pick/index';
import { useSheet } from '../store/context';
import { rowList } from './row-list';
import { numberTold, titleTold } from './told';

interface Props {
  readonly tables: readonly TableDescription[];
  /** What every row that is offered has to give. */
  readonly column: string;
  readonly label: string;
  readonly value: string;
  readonly placeholder?: string;
  readonly before?: readonly PickOption[];
  readonly path?: string;
  onPick(name: string): void;
}

/** One row of several tables that give the same number, such as a mass. */
export function RowsPick(props: Props) {
  const { tables, column, label, value, placeholder = 'pick one', before = [], path, onPick } = props;
  const sheet = useSheet();
  return (
    <Combobox
      id={useId()}
      label={label}
      path={path}
      invalid={path !== undefined && sheet.faultAt(path) !== undefined}
      value={value}
      options={[...before, ...rowsWith(tables, column, sheet.part('rows'), sheet.units())]}
      placeholder={value === '' ? placeholder : `${value} (not there)`}
      onPick={onPick}
    />
  );
}

/** Rows of these tables that give a number, own ones first. */
export function rowsWith(
  tables: readonly TableDescription[],
  column: string,
  own: readonly OwnRow[],
  units: UnitSet,
): readonly PickOption[] {
  const words = (row: RowDescription): string => titleTold(row, units);
  const lists = tables.map((table) => {
    const mine = own.filter((row) => row.table === table.name);
    const giving = table.rows.filter((row) => !Number.isNaN(row.values[column] ?? Number.NaN));
    const given = table.columns.find(({ name }) => name === column);
    const detail = (row: RowDescription) => given && numberTold(given, row, units);
    return rowList(mine, giving, { words, detail }).map((option) =>
      option.group === 'library' ? { ...option, group: `library: ${table.title.toLowerCase()}` } : option,
    );
  });
  const mine = lists.flat().filter(({ group }) => group?.startsWith('own'));
  return [...mine, ...lists.flat().filter(({ group }) => !group?.startsWith('own'))];
}

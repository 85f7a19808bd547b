import { useId } from 'preact/hooks';
import type { RowDescription, TableDescription } from '../../engine/index';
import { Combobox, type PickOption } from '../controls/pick/index';
import { useSheet } from '../store/context';
import { type RowListing, rowList } from './row-list';
import { titleTold } from './told';

interface Props extends RowListing {
  readonly table: TableDescription;
  readonly label: string;
  readonly value: string;
  /** What else can be picked, before the rows. */
  readonly before?: readonly PickOption[];
  /** The place that the row is written to, where it's one of the sheet's. */
  readonly path?: string;
  onPick(name: string): void;
}

/** One row of a table of the library. The list is made when it opens, since there may be many of these lists on a sheet. */
export function RowPick({ table, label, value, before = [], path, onPick, ...given }: Props) {
  const sheet = useSheet();
  const units = sheet.units();
  const listing = { words: (row: RowDescription) => titleTold(row, units), ...given };
  const own = sheet.part('rows').filter((row) => row.table === table.name);
  return (
    <Combobox
      id={useId()}
      label={label}
      path={path}
      invalid={path !== undefined && sheet.faultAt(path) !== undefined}
      value={value}
      options={[...before, ...rowList(own, table.rows, listing)]}
      placeholder={value === '' ? 'pick one' : `${value} (not there)`}
      onPick={onPick}
    />
  );
}

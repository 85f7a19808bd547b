import { type ChoiceCell, type ChoiceOption, freeName } from '../../../engine/index';

type Column = ChoiceCell['columns'][number];

const names = (options: readonly ChoiceOption[]): ReadonlySet<string> => new Set(options.map(({ name }) => name));

/** The same under a name of its own. */
export const copyOf = (option: ChoiceOption, among: readonly ChoiceOption[]): ChoiceOption => ({
  ...option,
  name: freeName(option.name, names(among)),
  title: `${option.title}, copy`,
});

/** One more option, filled as the last one is so that nothing is blank; the first one is empty. */
export function newOption({ of, columns, options }: ChoiceCell): ChoiceOption {
  const last = options.at(-1);
  const name = freeName('option', names(options));
  const title = `Option ${options.length + 1}`;
  if (last) return { ...last, name, title };
  if (of === 'stack') return { name, title, pattern: 'plain', layers: [] };
  return {
    name,
    title,
    pattern: 'plain',
    values: Object.fromEntries(columns.map((column) => [column.name, blank(column)])),
  };
}

const blank = ({ unit }: Pick<Column, 'unit'>): string => (unit === '' ? '0' : `0 ${unit}`);

/** One more number that every option gives. */
export function withColumn(cell: ChoiceCell): ChoiceCell {
  const column = {
    name: freeName('number', new Set([...cell.columns, ...cell.options].map(({ name }) => name))),
    unit: '',
    title: 'Number',
  };
  return {
    ...cell,
    columns: [...cell.columns, column],
    options: cell.options.map((option) => ({ ...option, values: { ...option.values, [column.name]: blank(column) } })),
  };
}

/** Without one of its numbers. */
export function withoutColumn(cell: ChoiceCell, name: string): ChoiceCell {
  const left = ({ values = {}, ...option }: ChoiceOption): ChoiceOption => {
    const { [name]: _, ...rest } = values;
    return { ...option, values: rest };
  };
  return { ...cell, columns: cell.columns.filter((column) => column.name !== name), options: cell.options.map(left) };
}

/** A number under another title or unit. */
export const withChangedColumn = (cell: ChoiceCell, at: number, change: Partial<Column>): ChoiceCell => ({
  ...cell,
  columns: cell.columns.with(at, { ...cell.columns[at]!, ...change }),
});

import { type DayForm, fromSI, type LogCell, type NameInfo, toSI, writeQuantity } from '../../../engine/index';

/** What the day card asks of the air, and where the air of a design has it. */
const SAID = {
  temperature: 'temperature',
  pressure: 'pressure',
  elevation: 'elevation',
  wind: 'wind',
  from: 'wind_from',
} as const;

/** The weather of a day in the columns that a log has for it: column → text. */
export function weatherOf(
  cell: LogCell,
  day: DayForm,
  info: (path: string) => Pick<NameInfo, 'unit' | 'cell'> | undefined,
  isAir: (cell: string) => boolean,
): Readonly<Record<string, string>> {
  const texts = cell.columns.flatMap(({ name, of }) => {
    const field = of.slice(of.lastIndexOf('.') + 1);
    const said = (Object.keys(SAID) as (keyof typeof SAID)[]).find((key) => SAID[key] === field);
    const si = said && day[said];
    const told = info(of);
    if (si === undefined || !told || !isAir(told.cell)) return [];
    const { unit } = told;
    return [[name, writeQuantity(toSI(Number(fromSI(si, unit).toPrecision(4)), unit), unit)] as const];
  });
  return Object.fromEntries(texts);
}

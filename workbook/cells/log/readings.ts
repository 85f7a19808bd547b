import { type LogCell, type LogRow, type NameInfo, writeQuantity } from '../../../engine/index';
import type { Sheet } from '../../store/sheet';
import { today } from '../../store/today';
import { withColumn, withFlightToday } from './edits';
import { newLog, USUAL_ERRORS } from './new-log';

/** What was timed or heard of one flight, SI; what was not is missing. */
export interface FlightReadings {
  /** Times of single laps in their order, s. */
  readonly splits?: readonly number[];
  /** Of so many laps the whole time, s, where single laps were not told. */
  readonly timed?: { readonly laps: number; readonly time: number };
  /** Of engine or motor, rad/s. */
  readonly shaftSpeed?: number;
  /** Put behind the remarks of the flight. */
  readonly note?: string;
}

/** Hundredths of a second are what a thumb and an ear can tell. */
const seconds = (time: number): number => Math.round(time * 100) / 100;

/** A log with readings in row k, in the place of what stood there of the same; the speed of the shaft gets a column if it has none. */
export function withReadings(
  cell: LogCell,
  k: number,
  { splits, timed, shaftSpeed, note }: FlightReadings,
  names: Iterable<Pick<NameInfo, 'path'>>,
): LogCell {
  let log = cell;
  let row: LogRow = log.rows[k]!;
  const told = splits && splits.length > 0 ? { laps: splits.length, time: splits.reduce((a, b) => a + b, 0) } : timed;
  if (told) {
    const list = splits?.map((time) => seconds(time).toFixed(2)).join(' ') ?? '';
    row = { ...row, laps: String(told.laps), time: `${seconds(told.time)} s`, splits: list };
  }
  const isShaft = (path: string): boolean => path.endsWith('.shaft_speed');
  if (shaftSpeed !== undefined) {
    const shaft = [...names].find(({ path }) => isShaft(path))?.path;
    if (!log.columns.some(({ of }) => isShaft(of)) && shaft !== undefined)
      log = withColumn(log, shaft, USUAL_ERRORS.rpm);
    const column = log.columns.find(({ of }) => isShaft(of));
    // Ten turns a minute is finer than anything hears or reads them.
    const rpm = writeQuantity(shaftSpeed, 'rpm').replace(/^[\d.]+/, (number) =>
      String(Math.round(Number(number) / 10) * 10),
    );
    if (column) row = { ...row, values: { ...row.values, [column.name]: rpm } };
  }
  if (note) row = { ...row, note: row.note === '' ? note : `${row.note}; ${note}` };
  return { ...log, rows: log.rows.with(k, row) };
}

/** Where readings were put: the piece and the row of it, from 0. */
interface ReadingsPlace {
  readonly cell: string;
  readonly row: number;
}

/**
 * Puts readings into the log of the open design as one step of undo, into the row that is asked for, or else into a new flight; a log that
 * has only a blank row takes them there. A design without a log gets one on the shown sheet. Undefined where nothing may be changed.
 */
export function putReadings(
  sheet: Sheet,
  readings: FlightReadings,
  into: { readonly log?: string; readonly row?: number } = {},
): ReadingsPlace | undefined {
  const logs = sheet.cells.value.filter((cell): cell is LogCell => cell.kind === 'log');
  const known = logs.find(({ name }) => name === into.log) ?? logs[0];
  const before = sheet.document.value;
  let place: ReadingsPlace | undefined;
  sheet.edit((document) => {
    const log = known ?? newLog(document);
    const [from, row] = into.row === undefined ? withFreeRow(log, sheet) : [log, into.row];
    const cell = withReadings(from, row, readings, sheet.names.value.values());
    place = { cell: cell.id, row };
    const shown = sheet.shownSheet.value;
    return known ? [{ change: 'cell', cell }] : [{ change: 'insert', sheet: shown.id, at: shown.pieces.length, cell }];
  }, 'a flight');
  return sheet.document.value === before ? undefined : place;
}

/** The log with a flight that nothing is measured of yet, and its row. */
function withFreeRow(log: LogCell, sheet: Sheet): readonly [LogCell, number] {
  const only = log.rows[0];
  if (log.rows.length === 1 && only && only.time === '' && Object.keys(only.values).length === 0) {
    return [{ ...log, rows: [{ ...only, date: only.date || today() }] }, 0];
  }
  return [withFlightToday(log, sheet), log.rows.length];
}

import { inUnitsOf, type LogCell, logErrorPath, type NameInfo, unparted } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { AddFrom, Pick } from '../shared/pick';
import { RowFaults } from '../shared/row-faults';
import { isResult, nameOptions } from '../shared/wanted';
import { isAxis } from '../sweep/axes-form';
import { withColumn, withoutColumn } from './edits';
import { PULL_IN_POUNDS, USUAL_ERRORS } from './new-log';

/** What was measured, what was set, and how far each reading may be off. */
export function LogForm({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const isSet = (path: string): boolean => sheet.name(path)?.settable ?? false;
  const free = ({ path }: NameInfo): boolean =>
    path !== cell.time && !cell.columns.some((column) => column.of === path);
  const times = nameOptions(sheet, (info) => isResult(info) && info.unit === 's' && !info.settable);
  const title = (path: string): string => sheet.name(path)?.title ?? `${path} (not there)`;
  const errorEntry = (path: string, of: string, text: string) => (
    <TextEntry
      path={path}
      label={`Measuring error of ${of}`}
      text={text}
      shown={text === '' ? '' : sheet.entry(path)}
      fault={sheet.faultAt(path)}
      faultElsewhere
      onCommit={(typed) => sheet.setText(path, typed)}
      onUndoBeyond={sheet.undo}
    />
  );
  const measured = cell.columns.filter((column) => !isSet(column.of));
  const set = cell.columns.filter((column) => isSet(column.of));
  const add = (of: string): void => sheet.changeCell(withColumn(cell, of, isSet(of) ? '' : usualError(sheet.name(of))));
  const takeOff = (column: (typeof cell.columns)[number]) => (
    <button type="button" class="word quiet" onClick={() => sheet.changeCell(withoutColumn(cell, column))}>
      Remove<span class="unseen"> {title(column.of)} with what is typed there</span>
    </button>
  );
  return (
    <>
      <div class="set-up-fields">
        <Pick
          id={`${cell.id}-time`}
          label="Time of a lap is compared with"
          value={cell.time}
          options={[{ value: '', title: 'nothing' }, ...times]}
          onPick={(time) => sheet.changeCell({ ...cell, time })}
        />
      </div>
      <p class="aside">In wind pick the lap time of a lap in wind, which is the mean of the lap.</p>
      <fieldset class="set-up-list">
        <legend>Measured, and how far a reading may be off (one standard deviation)</legend>
        <ul class="log-errors">
          <li>
            <span>A stopped time, whatever the number of laps</span>
            {errorEntry(`${cell.name}.stopwatch`, 'a stopped time', cell.stopwatch)}
          </li>
          {measured.map((column) => (
            <li key={column.name}>
              <span>{title(column.of)}</span>
              {errorEntry(logErrorPath(cell, column), title(column.of), column.error)}
              {takeOff(column)}
            </li>
          ))}
        </ul>
        <RowFaults paths={[`${cell.name}.stopwatch`, ...measured.map((column) => logErrorPath(cell, column))]} />
        <p class="aside">
          A new log begins with {unparted(USUAL_ERRORS.time)}, {inUnitsOf(USUAL_ERRORS.pull, sheet.units())} and{' '}
          {unparted(USUAL_ERRORS.rpm)}: common practice, no source.
        </p>
        <div class="set-up-fields">
          <AddFrom
            id={`${cell.id}-add-measured`}
            label="Add a reading"
            options={nameOptions(sheet, (info) => isResult(info) && !info.settable && free(info))}
            onAdd={add}
          />
        </div>
      </fieldset>
      <fieldset class="set-up-list">
        <legend>Set or found so on the day; blank: as the design has it</legend>
        <ul class="log-errors">
          {set.map((column) => (
            <li key={column.name}>
              <span>{title(column.of)}</span>
              {takeOff(column)}
            </li>
          ))}
        </ul>
        <div class="set-up-fields">
          <AddFrom
            id={`${cell.id}-add-set`}
            label="Add a condition"
            options={nameOptions(
              sheet,
              (info) => (isAxis(info) || (info.kind === 'result' && info.settable)) && free(info),
            )}
            onAdd={add}
          />
        </div>
      </fieldset>
    </>
  );
}

const FIRST_ERRORS: readonly string[] = [...Object.values(USUAL_ERRORS), PULL_IN_POUNDS];

/** A first measuring error in the unit of the result. */
const usualError = (info: NameInfo | undefined): string =>
  info === undefined || info.unit === '' ? '' : (FIRST_ERRORS.find((text) => text.endsWith(` ${info.unit}`)) ?? '');

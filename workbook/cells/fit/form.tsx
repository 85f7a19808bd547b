import { type FitCell, fittedResults, type LogCell, logResults, type NameInfo } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { titleOf } from '../shared/offer';
import { AddFrom, Pick } from '../shared/pick';
import { Tick } from '../shared/tick';
import { nameOptions } from '../shared/wanted';
import { isAxis } from '../sweep/axes-form';

/** To which log, which factors, by which readings. */
export function FitForm({ cell }: { cell: FitCell }) {
  const sheet = useSheet();
  const change = (to: Partial<FitCell>): void => sheet.changeCell({ ...cell, ...to });
  const logs = sheet.cells.value.filter((each): each is LogCell => each.kind === 'log');
  const log = logs.find((each) => each.name === cell.log);
  const title = (path: string): string => sheet.name(path)?.title ?? `${path} (not there)`;
  const measured = log ? logResults(log, (path) => sheet.name(path)?.settable ?? false) : [];
  const counted = fittedResults(cell, measured);
  const count = (path: string, on: boolean): void => {
    const wanted = measured.filter((each) => (each === path ? on : counted.includes(each)));
    // None named means all: the last one stays.
    if (wanted.length > 0) change({ wanted: wanted.length === measured.length ? [] : wanted });
  };
  const isFactor = (info: NameInfo): boolean =>
    (isAxis(info) || (info.kind === 'result' && info.settable)) &&
    !info.options &&
    !cell.factors.includes(info.path) &&
    !log?.columns.some((column) => column.of === info.path);
  return (
    <>
      <div class="set-up-fields">
        <Pick
          id={`${cell.id}-log`}
          label="Log"
          value={cell.log}
          options={logs.map((each) => ({ value: each.name, title: titleOf(each) }))}
          onPick={(name) => change({ log: name, wanted: [] })}
        />
        <Pick
          id={`${cell.id}-errors`}
          label="Standard errors by"
          value={cell.errors}
          options={[
            { value: 'scatter', title: 'the scatter of the readings' },
            { value: 'stated', title: 'the measuring errors of the log' },
          ]}
          onPick={(errors) => change({ errors: errors as FitCell['errors'] })}
        />
      </div>
      <fieldset class="set-up-list">
        <legend>Factors</legend>
        <ul>
          {cell.factors.map((path) => (
            <li key={path}>
              {title(path)}{' '}
              <button
                type="button"
                class="word quiet"
                onClick={() => change({ factors: cell.factors.filter((each) => each !== path) })}
              >
                Remove<span class="unseen"> {title(path)}</span>
              </button>
            </li>
          ))}
        </ul>
        <div class="set-up-fields">
          <AddFrom
            id={`${cell.id}-add-factor`}
            label={cell.factors.length === 0 ? 'Factor' : 'Add a factor'}
            options={nameOptions(sheet, isFactor)}
            onAdd={(path) => change({ factors: [...cell.factors, path] })}
          />
        </div>
      </fieldset>
      {measured.length > 0 && (
        <fieldset class="ticks">
          <legend>Readings that count</legend>
          {measured.map((path) => (
            <Tick key={path} on={counted.includes(path)} onChange={(on) => count(path, on)}>
              {title(path)}
            </Tick>
          ))}
        </fieldset>
      )}
      <p class="aside">
        Every flight of the log is flown by the design as it stands, with what the log says of the day. Where something
        else was different then, give it a column in the log.
      </p>
    </>
  );
}

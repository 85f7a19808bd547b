import { type LogCell, type LogRow, logRowPath, type NameInfo } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { RowFaults } from '../shared/row-faults';
import { withLogRow, withoutLogRow } from './edits';
import { flightTitle } from './words';

type Word = 'label' | 'propeller' | 'needle' | 'plug' | 'note' | 'splits';

/** One flight, a field below the other: a thumb reaches all, and numbers come with number keys. */
export function FlightForm({ cell, k, onGone }: { cell: LogCell; k: number; onGone(): void }) {
  const sheet = useSheet();
  const row = cell.rows[k]!;
  const path = logRowPath(cell, k);
  const said = flightTitle(cell, k);
  const charge = sheet.cells.value.some((each) => each.kind === 'model' && each.of === 'electric');
  const change = (to: Partial<LogRow>): void => sheet.changeCell(withLogRow(cell, k, { ...row, ...to }));
  const settable = (of: string): boolean => sheet.name(of)?.settable ?? false;
  const measured = cell.columns.filter(({ of }) => !settable(of));
  const set = cell.columns.filter(({ of }) => settable(of));
  const unit = (info: Pick<NameInfo, 'unit' | 'suffix'> | undefined): string => info?.suffix || info?.unit || '';
  const number = (name: string, title: string, text: string, unitWord: string, blank = '–') => (
    <div class="flight-field" key={name}>
      <span>
        {title}
        {unitWord && <span class="aside">, {unitWord}</span>}
      </span>
      <TextEntry
        path={`${path}.${name}`}
        label={`${title}, ${said}`}
        keys="decimal"
        text={text}
        shown={text === '' ? '' : sheet.entry(`${path}.${name}`)}
        placeholder={blank}
        fault={sheet.faultAt(`${path}.${name}`)}
        faultElsewhere
        secondary
        onCommit={(typed) => sheet.setText(`${path}.${name}`, typed)}
        onUndoBeyond={sheet.undo}
      />
    </div>
  );
  const ofColumn = ({ name, of }: LogCell['columns'][number]) => {
    const info = sheet.name(of);
    return number(name, info?.title ?? of, row.values[name] ?? '', unit(info), settable(of) ? 'as the design' : '–');
  };
  const word = (key: Word, title: string) => (
    <div class="flight-field" key={key}>
      <span>{title}</span>
      <TextEntry
        path={`${path}#form-${key}`}
        label={`${title}, ${said}`}
        text={row[key]}
        shown={row[key]}
        placeholder="–"
        onCommit={(text) => change({ [key]: text })}
        onUndoBeyond={sheet.undo}
      />
    </div>
  );
  const names = ['laps', 'time', 'all_laps', 'fuel_in', 'fuel_left', ...cell.columns.map(({ name }) => name)];
  const faulty = names.filter((name) => sheet.faultAt(`${path}.${name}`)).map((name) => `${path}.${name}`);
  const fluid = unit(sheet.name(`${path}.fuel_in`));
  return (
    <div class="flight-form">
      <label class="flight-field">
        <span>Day</span>
        <input
          type="date"
          class="text-entry"
          value={row.date}
          onChange={({ currentTarget }) => change({ date: currentTarget.value })}
        />
      </label>
      {word('label', 'Flight')}
      {number('laps', 'Laps timed', row.laps, '', '1')}
      {number('time', 'Time of these laps', row.time, 's')}
      {measured.map(ofColumn)}
      {number('all_laps', 'All laps of the flight', row.all_laps, '')}
      {number('fuel_in', charge ? 'Charge put back' : 'Fuel in', row.fuel_in, fluid)}
      {!charge && number('fuel_left', 'Fuel left', row.fuel_left, fluid)}
      {set.map(ofColumn)}
      <Listed
        title="Lines"
        none="not said"
        value={row.line_set}
        options={cell.line_sets.map(({ name }) => name).filter((name) => name !== '')}
        onPick={(line_set) => change({ line_set })}
      />
      <Listed
        title="Flown as"
        none="the design as it stands"
        value={row.flown_as}
        options={(sheet.part('variants') ?? []).map(({ name }) => name)}
        onPick={(flown_as) => change({ flown_as })}
      />
      {word('propeller', 'Propeller')}
      {!charge && word('needle', 'Needle')}
      {!charge && word('plug', 'Plug')}
      {word('note', 'Remarks')}
      {word('splits', 'Times of single laps, s')}
      <RowFaults paths={faulty} />
      <button
        type="button"
        class="word quiet"
        onClick={() => {
          sheet.changeCell(withoutLogRow(cell, k));
          onGone();
        }}
      >
        Remove this flight
      </button>
    </div>
  );
}

/** One of a short list by the picker of the system; what is said and not in the list stays to be seen. */
function Listed(props: {
  title: string;
  none: string;
  value: string;
  options: readonly string[];
  onPick(value: string): void;
}) {
  const { title, none, value, options, onPick } = props;
  const strange = value !== '' && !options.includes(value);
  return (
    <label class="flight-field">
      <span>{title}</span>
      <select value={value} onChange={({ currentTarget }) => onPick(currentTarget.value)}>
        <option value="">{none}</option>
        {options.map((option) => (
          <option key={option} value={option}>
            {option}
          </option>
        ))}
        {strange && <option value={value}>{value} (not there)</option>}
      </select>
    </label>
  );
}

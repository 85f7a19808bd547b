import { type LineSet, type LogCell, lineSetPath, pullTestPath } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { today } from '../../store/today';
import { RowFaults } from '../shared/row-faults';
import { SetUp } from '../shared/set-up';
import { withLineSetCalled } from './edits';
import { lineSetWords } from './line-words';

/** Lines that are made up, with what they have been through: flights, pull tests, kinks, until they are thrown away. */
export function LineSets({ cell }: { cell: LogCell }) {
  const sheet = useSheet();
  const change = (line_sets: readonly LineSet[]): void => sheet.changeCell({ ...cell, line_sets });
  const add = (): void => {
    const blank = { diameter: '', length: '', flights: '', pull_tests: [], kinks: '', retired: '' };
    change([...cell.line_sets, { name: `Set ${cell.line_sets.length + 1}`, ...blank }]);
  };
  return (
    <SetUp title={cell.line_sets.length === 0 ? 'Line sets' : `Line sets (${cell.line_sets.length})`} open={false}>
      <ul class="line-sets">
        {cell.line_sets.map((_, k) => (
          <OneSet key={k} cell={cell} k={k} onChange={change} />
        ))}
      </ul>
      <button type="button" class="word" onClick={add}>
        Add a line set
      </button>
      <p class="aside">
        The pull test is of the whole system, by the rule book of the day. A kinked, rusted or frayed line is thrown
        away; when in doubt, too.
      </p>
    </SetUp>
  );
}

function OneSet({ cell, k, onChange }: { cell: LogCell; k: number; onChange(sets: readonly LineSet[]): void }) {
  const sheet = useSheet();
  const set = cell.line_sets[k]!;
  const path = lineSetPath(cell, k);
  const change = (to: Partial<LineSet>): void => onChange(cell.line_sets.with(k, { ...set, ...to }));
  const number = (at: string, title: string, text: string) => (
    <div class="flight-field">
      <span>{title}</span>
      <TextEntry
        path={at}
        label={`${title}, ${set.name}`}
        keys="decimal"
        text={text}
        shown={text === '' ? '' : sheet.entry(at)}
        placeholder="–"
        fault={sheet.faultAt(at)}
        faultElsewhere
        onCommit={(typed) => sheet.setText(at, typed)}
        onUndoBeyond={sheet.undo}
      />
    </div>
  );
  const word = (key: 'name' | 'kinks', title: string) => (
    <div class="flight-field">
      <span>{title}</span>
      <TextEntry
        path={`${path}#${key}`}
        label={`${title}, ${set.name}`}
        text={set[key]}
        shown={set[key]}
        placeholder="–"
        onCommit={(text) =>
          key === 'name' ? sheet.changeCell(withLineSetCalled(cell, k, text)) : change({ [key]: text })
        }
        onUndoBeyond={sheet.undo}
      />
    </div>
  );
  const loads = set.pull_tests.map((_, test) => pullTestPath(cell, k, test));
  const numbers = [...(['diameter', 'length', 'flights'] as const).map((name) => `${path}.${name}`), ...loads];
  return (
    <li>
      <p>
        <strong>{set.name}</strong> {lineSetWords(cell, set, today())}
      </p>
      {word('name', 'Called')}
      {number(`${path}.diameter`, 'Diameter', set.diameter)}
      {number(`${path}.length`, 'Length as made up', set.length)}
      {number(`${path}.flights`, 'Flights before this log', set.flights)}
      {set.pull_tests.map(({ date }, test) => (
        <div class="pull-test" key={loads[test]}>
          <label class="flight-field">
            <span>Pull test on</span>
            <input
              type="date"
              class="text-entry"
              value={date}
              onChange={({ currentTarget }) =>
                change({
                  pull_tests: set.pull_tests.with(test, { ...set.pull_tests[test]!, date: currentTarget.value }),
                })
              }
            />
          </label>
          {number(loads[test]!, 'Held', set.pull_tests[test]!.load)}
        </div>
      ))}
      <button
        type="button"
        class="word"
        onClick={() => change({ pull_tests: [...set.pull_tests, { date: today(), load: '' }] })}
      >
        Add a pull test
      </button>
      {word('kinks', 'Kinks and repairs')}
      <label class="flight-field">
        <span>Thrown away on</span>
        <input
          type="date"
          class="text-entry"
          value={set.retired}
          onChange={({ currentTarget }) => change({ retired: currentTarget.value })}
        />
      </label>
      <RowFaults paths={numbers.filter((at) => sheet.faultAt(at))} />
      <button type="button" class="word quiet" onClick={() => onChange(cell.line_sets.toSpliced(k, 1))}>
        Remove<span class="unseen"> {set.name}</span> from the list
      </button>
    </li>
  );
}

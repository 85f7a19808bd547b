import {
  cellsOf,
  type Part,
  type PartsCell,
  type WeighingAnswer,
  type WeighingCell,
  weighingPaths,
} from '../../../engine/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { Pick } from '../shared/pick';
import { RowFaults } from '../shared/row-faults';
import { SetUp } from '../shared/set-up';
import { SetUpEntry } from '../shared/set-up-entry';
import { History } from './history';
import { NextPart } from './next';
import { BenchRow } from './row';
import { percent, restSentence, type Written, writtenAs } from './words';

/** The bench: which part comes on the scale next, what it says, and where the CG comes to lie. */
export function WeighingView({ cell }: { cell: WeighingCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.weighings.watch(cell.name), cell.name);
  const answer = sheet.weighings.of(cell.name).value;
  const working = sheet.weighings.working(cell.name).value;
  const faulty = sheet.faultAt(cell.name) !== undefined;
  const table = cellsOf(sheet.document.value).find(
    (each): each is PartsCell => each.kind === 'parts' && each.name === cell.parts,
  );
  return (
    <div class="bench" ref={watched} aria-busy={working}>
      {!faulty && answer?.state === 'fault' && <p class="fault-flag fault">{answer.message}</p>}
      {!faulty && table && answer?.state === 'settled' && <Bench table={table} answer={answer} />}
      <SetUp title="Set up this bench" open={faulty}>
        <Form cell={cell} />
      </SetUp>
    </div>
  );
}

function Bench({ table, answer }: { table: PartsCell; answer: WeighingAnswer }) {
  const sheet = useSheet();
  const [mass, x] = [sheet.name(`${table.name}.mass`), sheet.name(`${table.name}.x`)];
  const written = writtenAs(mass, x);
  const parts = new Map(table.rows.map((part): [string, Part] => [`${table.name}.${part.name}`, part]));
  const titleOf = (path: string): string => parts.get(path)?.title ?? path;
  // A part that was removed meanwhile is gone from the list before the next answer.
  const rows = answer.parts.flatMap((told) => {
    const part = parts.get(told.path);
    return part ? [{ told, part }] : [];
  });
  const next = rows.find(({ told }) => told.path === answer.next);
  const rest = restSentence(answer, written);
  const weighed = rows.filter(({ told }) => told.state === 'weighed').length;
  return (
    <>
      <Finished answer={answer} written={written} />
      <p role="status">
        {weighed} of {rows.length} parts weighed, {percent(answer.done)} of the mass.
        {next ? '' : ' Every part has been on the scale.'}
        {fuelWords(table, sheet.value(`${table.name}.fuel`))}
      </p>
      {next && <NextPart {...next} written={written} />}
      {rest !== '' && <p>{rest}</p>}
      <History answer={answer} written={written} unit={x?.unit ?? 'mm'} titleOf={titleOf} />
      <h3>All parts</h3>
      <ul class="bench-rows">
        {rows.map((row) => (
          <BenchRow key={row.told.path} {...row} written={written} />
        ))}
      </ul>
    </>
  );
}

/** The finished model has the fuel on board with which the table counts. */
function fuelWords({ rows }: PartsCell, share: number): string {
  if (!rows.some(({ fuel }) => fuel)) return '';
  return share > 0
    ? ` Finished, it has ${percent(share)} of its fuel on board, as the table says.`
    : ' Finished, its tank is empty, as the table says.';
}

/** The CG when finished, where it is wanted, and what has been on the scale by itself. */
function Finished({ answer, written }: { answer: WeighingAnswer; written: Written }) {
  const { finished, weighed, wanted, within } = answer;
  return (
    <dl class="bench-figures">
      <div>
        <dt>CG when finished</dt>
        <dd>
          {written.at(finished.x)} <small>{written.band(finished.band)}</small>
        </dd>
      </div>
      {!Number.isNaN(wanted) && (
        <div>
          <dt>wanted</dt>
          <dd>
            {written.at(wanted)} {within > 0 && <small>{written.band(within)}</small>}
          </dd>
        </div>
      )}
      <div>
        <dt>CG of what is weighed</dt>
        <dd>
          {Number.isNaN(weighed.mass) ? '–' : written.at(weighed.x)}{' '}
          {!Number.isNaN(weighed.mass) && <small>{written.mass(weighed.mass)}</small>}
        </dd>
      </div>
    </dl>
  );
}

function Form({ cell }: { cell: WeighingCell }) {
  const sheet = useSheet();
  const tables = cellsOf(sheet.document.value).filter((each) => each.kind === 'parts');
  const paths = weighingPaths(cell);
  return (
    <>
      <div class="set-up-fields">
        <Pick
          id={`${cell.id}-parts`}
          label="Table of parts"
          value={cell.parts}
          options={tables.map(({ name, title }) => ({ value: name, title: title || name }))}
          onPick={(parts) => sheet.changeCell({ ...cell, parts, order: [] })}
        />
        <SetUpEntry
          word="CG wanted at"
          label="CG station, wanted"
          path={paths.text}
          text={cell.text}
          placeholder="nowhere"
        />
        <SetUpEntry
          word="to either side"
          label="CG station, allowed to either side"
          path={paths.within}
          text={cell.within}
          placeholder="nothing"
        />
      </div>
      <RowFaults paths={[paths.text, paths.within]} />
    </>
  );
}

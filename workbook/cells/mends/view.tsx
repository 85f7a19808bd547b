import { MEND_WAYS, type MendsAnswer, type MendsCell, mendPath, type NameInfo } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { useOnScreen } from '../../store/on-screen';
import { showValue } from '../../store/show';
import { Pick } from '../shared/pick';
import { Remade } from '../shared/remade';
import { RowFaults } from '../shared/row-faults';
import { SetUp } from '../shared/set-up';
import { SetUpEntry } from '../shared/set-up-entry';
import { isResult, nameOptions, Wanted } from '../shared/wanted';
import { MendsTable } from './table';
import { wayTitles } from './words';

/** What brings a result where it is wanted: each change alone, the cheapest first. */
export function MendsView({ cell }: { cell: MendsCell }) {
  const sheet = useSheet();
  const watched = useOnScreen(() => sheet.mends.watch(cell.name), cell.name);
  const answer = sheet.mends.of(cell.name).value;
  const working = sheet.mends.working(cell.name).value;
  const faulty = sheet.faultAt(cell.name) !== undefined;
  const shown = !faulty && answer && fits(answer, cell) ? answer : undefined;
  const info = sheet.name(cell.of);
  return (
    <div class="variants" ref={watched} aria-busy={working}>
      {!faulty && <p role="status">{working || !shown ? 'Working.' : statusOf(shown, cell, info)}</p>}
      {shown?.state === 'settled' && shown.found.length > 0 && <MendsTable cell={cell} answer={shown} />}
      {shown && <Remade of={shown.found.map(({ path }) => path)} />}
      <SetUp title="Set up what is wanted" open={faulty || answer?.state === 'fault'}>
        <Form cell={cell} />
      </SetUp>
    </div>
  );
}

/** What was computed for other results is about to be computed anew. */
const fits = ({ found }: MendsAnswer, { wanted }: MendsCell): boolean =>
  found.every(({ effects }) => effects.length === wanted.length);

function statusOf(
  { state, message = '', now, wanted, met, found }: MendsAnswer,
  cell: MendsCell,
  info?: NameInfo,
): string {
  if (state === 'fault' || !info) return message;
  const way = cell.way === 'to' ? '' : `${wayTitles[cell.way]} `;
  const is = `${info.title} is ${showValue(info, now)}; wanted is ${way}${showValue(info, wanted)}.`;
  if (met) return `${is} It is there already.`;
  return found.length === 0 ? `${is} No single change in this design brings it nearer.` : is;
}

function Form({ cell }: { cell: MendsCell }) {
  const sheet = useSheet();
  const change = (to: Partial<MendsCell>): void => sheet.changeCell({ ...cell, ...to });
  const at = mendPath(cell);
  return (
    <>
      <div class="set-up-fields">
        <Pick
          id={`${cell.id}-of`}
          label="Result to mend"
          value={cell.of}
          options={nameOptions(sheet, isResult)}
          onPick={(of) => change({ of, text: '' })}
        />
        <Pick
          id={`${cell.id}-way`}
          label="Wanted"
          value={cell.way}
          options={MEND_WAYS.map((value) => ({ value, title: wayTitles[value] }))}
          onPick={(way) => change({ way: way as MendsCell['way'] })}
        />
        <SetUpEntry
          word="Value"
          label={`${sheet.name(cell.of)?.title ?? 'Result'}, wanted`}
          path={at}
          text={cell.text}
          placeholder="type a value"
        />
      </div>
      <RowFaults paths={[at]} />
      <p class="aside">One thing is changed at a time; everything else stays as the design has it.</p>
      <Wanted id={cell.id} wanted={cell.wanted} sheet={sheet} onChange={(wanted) => change({ wanted })} />
    </>
  );
}

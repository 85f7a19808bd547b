import { useState } from 'preact/hooks';
import { inUnitsOf, MOST_SPREAD_SAMPLES, type NameInfo, type SpreadCell, type SpreadRow } from '../../../engine/index';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { AddFrom, Labelled, type PickOption } from '../shared/pick';
import { Tick } from '../shared/tick';
import { Typed } from '../shared/typed';
import { nameOptions, Wanted } from '../shared/wanted';
import { SpreadPairs } from './pairs';
import { SpreadRowForm } from './row';
import { titleOfRow } from './words';

/** What differs, how and by how much; which results are asked for; how many designs and which. */
export function SpreadForm({ cell }: { cell: SpreadCell }) {
  const sheet = useSheet();
  const change = (to: Partial<SpreadCell>): void => sheet.changeCell({ ...cell, ...to });
  const taken = cell.rows.map((row) => row.of);
  const free = (of: string): PickOption[] =>
    differingOptions(sheet).filter(({ value }) => value === of || !taken.includes(value));
  return (
    <>
      {cell.rows.map((row, k) => (
        <SpreadRowForm
          // A row is known by its place: its texts have paths by it.
          key={k}
          cell={cell}
          index={k}
          options={free(row.of)}
          onChange={(to) => change({ rows: cell.rows.with(k, to) })}
          onRemove={() => change(without(cell, k))}
        />
      ))}
      <div class="set-up-fields">
        <AddFrom
          id={`${cell.id}-add-row`}
          label={cell.rows.length === 0 ? 'What differs' : 'And what else differs'}
          options={free('')}
          onAdd={(of) => change({ rows: [...cell.rows, newRow(of)] })}
        />
      </div>
      <SpreadPairs cell={cell} onChange={(pairs) => change({ pairs })} />
      <div class="ticks">
        <Tick on={cell.parts} onChange={(parts) => change({ parts })}>
          With the uncertainty of the parts
        </Tick>
      </div>
      <p class="aside">
        Mass and station of every part then differ by what the parts table says of it, one standard deviation each;
        where nothing is typed there, a tenth of an estimate, {inUnitsOf('0.5 g', sheet.units())} on the scale and{' '}
        {inUnitsOf('2 mm', sheet.units())} of station (common practice, no source).
      </p>
      <Wanted id={cell.id} wanted={cell.wanted} sheet={sheet} onChange={(wanted) => change({ wanted })} />
      <div class="set-up-fields">
        <Whole
          id={`${cell.id}-samples`}
          label="How many designs"
          number={cell.samples}
          least={10}
          most={MOST_SPREAD_SAMPLES}
          onChange={(samples) => change({ samples })}
        />
        <Whole
          id={`${cell.id}-seed`}
          label="Seed"
          number={cell.seed}
          least={0}
          most={1_000_000}
          onChange={(seed) => change({ seed })}
        />
      </div>
      <p class="aside">The same seed draws the same designs again. Another one shows how much is chance.</p>
    </>
  );
}

/** A row gone, with the correlations that name it. */
const without = ({ rows, pairs }: SpreadCell, k: number): Partial<SpreadCell> => {
  const { of } = rows[k]!;
  const left = pairs?.filter((pair) => pair.of !== of && pair.and !== of);
  return { rows: rows.toSpliced(k, 1), ...(left && { pairs: left }) };
};

/** By an amount that is still to be typed; of a part by its own uncertainty. */
const newRow = (of: string): SpreadRow => ({ of, distribution: 'normal', size: '', above: '' });

const DIFFERS: ReadonlySet<NameInfo['kind']> = new Set(['variable', 'field', 'library']);
const PART_NUMBER = /\.(mass|x|y|z)$/;

const differs = (info: NameInfo): boolean =>
  !info.options && (info.kind === 'part' ? PART_NUMBER.test(info.path) : info.settable && DIFFERS.has(info.kind));

const differingOptions = (sheet: Sheet): PickOption[] =>
  nameOptions(sheet, differs).map((option) => ({ ...option, title: withWord(option, sheet) }));

function withWord({ value, title }: PickOption, sheet: Sheet): string {
  const info = sheet.name(value);
  return info ? title.replace(info.title, titleOfRow(value, info)) : title;
}

interface WholeProps {
  readonly id: string;
  readonly label: string;
  readonly number: number;
  readonly least: number;
  readonly most: number;
  onChange(number: number): void;
}

function Whole({ id, label, number, least, most, onChange }: WholeProps) {
  const [wrong, setWrong] = useState<string | undefined>(undefined);
  return (
    <Labelled id={id} label={label}>
      <Typed
        id={id}
        numeric
        text={wrong ?? String(number)}
        wrong={wrong === undefined ? undefined : `${id}-wrong`}
        onDone={(text) => {
          const typed = Number(text.replace(/[\s\u202f]/g, ''));
          const sound = /^\d[\d\s\u202f]*$/.test(text) && typed >= least && typed <= most;
          setWrong(sound ? undefined : text);
          if (sound && typed !== number) onChange(typed);
        }}
      />
      {wrong !== undefined && (
        <p class="fault-flag fault" id={`${id}-wrong`} role="alert">
          {wholeFault(wrong, least, most)}
        </p>
      )}
    </Labelled>
  );
}

/** What is wrong with a whole number, and what to type. */
const wholeFault = (text: string, least: number, most: number): string =>
  `“${text}” cannot be taken. Type a whole number from ${least} to ${most}.`;

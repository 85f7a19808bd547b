import { type Kept, keptPath, type TableCell } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { RowFaults } from '../shared/row-faults';
import { Tick } from '../shared/tick';

interface KeptProps {
  readonly cell: TableCell;
  /** Axes and results that may be limited. */
  readonly paths: readonly string[];
}

/** Limits that the rows have to keep. */
export function KeptRows({ cell, paths }: KeptProps) {
  const sheet = useSheet();
  const title = (path: string): string => sheet.name(path)?.title ?? path;
  const set = (keep: readonly Kept[]): void => sheet.changeCell({ ...cell, keep });
  const blank = (of: string): Kept => ({ of, low: '', high: '' });
  const free = paths.find((path) => cell.keep.every((kept) => kept.of !== path)) ?? paths[0];
  return (
    <fieldset class="table-keep">
      <legend>Only rows within</legend>
      {cell.keep.map((kept, k) => (
        <div class="table-limit" key={k}>
          <select
            aria-label={`Limit ${k + 1}: of what`}
            value={kept.of}
            onChange={({ currentTarget }) => set(cell.keep.with(k, blank(currentTarget.value)))}
          >
            {(paths.includes(kept.of) ? paths : [kept.of, ...paths]).map((path) => (
              <option key={path} value={path}>
                {title(path)}
              </option>
            ))}
          </select>
          <Limits cell={cell} kept={kept} k={k} onChange={(to) => set(cell.keep.with(k, to))} />
          <button type="button" class="word quiet" onClick={() => set(cell.keep.toSpliced(k, 1))}>
            Remove<span class="unseen"> the limit of {title(kept.of)}</span>
          </button>
          <RowFaults paths={[`${keptPath(cell, k)}.low`, `${keptPath(cell, k)}.high`]} />
        </div>
      ))}
      {free !== undefined && (
        <button type="button" class="word quiet" onClick={() => set([...cell.keep, blank(free)])}>
          Add a limit
        </button>
      )}
    </fieldset>
  );
}

function Limits(props: { cell: TableCell; kept: Kept; k: number; onChange(kept: Kept): void }) {
  const { cell, kept, k, onChange } = props;
  const sheet = useSheet();
  const info = sheet.name(kept.of);
  const title = info?.title ?? kept.of;
  const all = info?.options;
  if (all) {
    const taken = kept.options ?? all;
    return (
      <span class="ticks">
        {all.map((option) => (
          <Tick
            key={option}
            on={taken.includes(option)}
            onChange={(on) =>
              onChange({ ...kept, options: all.filter((each) => (each === option ? on : taken.includes(each))) })
            }
          >
            {sheet.optionTitle(kept.of, option) ?? option.replaceAll('_', ' ')}
          </Tick>
        ))}
      </span>
    );
  }
  const limit = (end: 'low' | 'high', words: string) => {
    const path = `${keptPath(cell, k)}.${end}`;
    return (
      <span class="table-end">
        {words}
        <TextEntry
          path={path}
          label={`${title}, ${words}`}
          text={kept[end]}
          shown={kept[end] === '' ? '' : sheet.entry(path)}
          placeholder="no limit"
          fault={sheet.faultAt(path)}
          faultElsewhere
          onCommit={(text) => sheet.setText(path, text)}
          onUndoBeyond={sheet.undo}
        />
      </span>
    );
  };
  return (
    <>
      {limit('low', 'from')}
      {limit('high', 'to')}
    </>
  );
}

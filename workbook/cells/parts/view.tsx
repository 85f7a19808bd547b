import { computed, useSignal } from '@preact/signals';
import { Fragment } from 'preact';
import { useCallback, useMemo } from 'preact/hooks';
import type { PartsCell } from '../../../engine/index';
import { along } from '../../controls/along';
import { kept } from '../../controls/kept';
import { TextEntry } from '../../controls/text-entry';
import { CautionFor } from '../../page/standing/caution';
import { useSheet } from '../../store/context';
import { fileName, saveText } from '../../store/files';
import { useSteadyKeys } from '../rows/index';
import { PartEditor } from './editor';
import { newPart, withPart } from './edits';
import { OftenForgotten } from './forgotten';
import { longestBar } from './moment-bar';
import { PasteParts } from './paste/paste-parts';
import { PartRow } from './row';
import { partsCsv } from './table-csv';
import { takenNames } from './taken';
import { PartTotals } from './totals';

/** The weight and balance table: every part with its mass and station, the scale's word beside the estimate. */
export function PartsView({ cell }: { cell: PartsCell }) {
  const sheet = useSheet();
  const opened = useSignal<string | undefined>(undefined);
  const added = useSignal<string | undefined>(undefined);
  const most = useMemo(
    () => computed(() => longestBar(cell.rows.map((row) => sheet.value(`${cell.name}.${row.name}.moment_share`)))),
    [cell.name, cell.rows, sheet],
  );
  const names = useMemo(() => cell.rows.map(({ name }) => name), [cell.rows]);
  const keyOf = useSteadyKeys(names);
  const open = (name: string | undefined): void => {
    opened.value = name;
  };
  const toggle = useCallback(
    (name: string): void => {
      opened.value = opened.value === name ? undefined : name;
    },
    [opened],
  );
  return (
    <>
      {cell.rows.length === 0 && (
        <p class="aside">Nothing weighs anything yet. Add the parts one by one, the heavy ones first.</p>
      )}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways has to be reachable by keys. */}
      <section class="parts-room" aria-label={`${cell.title}, table`} tabIndex={0}>
        <table class="parts">
          <thead>
            <tr>
              <th scope="col">part</th>
              <th scope="col">mass</th>
              <th scope="col">weighed</th>
              <th scope="col">x</th>
              <th scope="col">y</th>
              <th scope="col">z</th>
              <th scope="col">nose heavy · share of the moment · tail heavy</th>
            </tr>
          </thead>
          <tbody>
            {cell.rows.map((part) => (
              <Fragment key={keyOf(part.name)}>
                <KeptRow
                  table={cell.name}
                  part={part}
                  isOpen={opened.value === part.name}
                  most={most.value}
                  onOpen={toggle}
                />
                {opened.value === part.name && (
                  <tr class="part-open">
                    <td class="part-room" colSpan={7}>
                      <PartEditor cell={cell} part={part} isNew={added.value === part.name} onOpen={open} />
                    </td>
                  </tr>
                )}
              </Fragment>
            ))}
          </tbody>
          <PartTotals cell={cell} />
        </table>
      </section>
      <p class="part-commands">
        <button
          type="button"
          {...along()}
          class="word"
          onClick={() => {
            const part = newPart(takenNames(sheet, cell), sheet.units());
            added.value = part.name;
            sheet.changeCell(withPart(cell, part, opened.value));
            opened.value = part.name;
          }}
        >
          Add a part
        </button>
        {cell.rows.length > 0 && (
          <button
            type="button"
            {...along()}
            class="word"
            onClick={() => saveText(partsCsv(cell, sheet), fileName(cell.title, '.csv'), 'text/csv')}
          >
            Save the table as CSV
          </button>
        )}
      </p>
      <PasteParts cell={cell} />
      <OftenForgotten cell={cell} />
      <div class="fuel">
        <span>Fuel on board</span>
        <TextEntry
          class="fuel-entry"
          path={`${cell.name}.fuel`}
          label="Fuel on board"
          text={cell.fuel}
          shown={cell.fuel}
          placeholder="half"
          fault={sheet.faultAt(`${cell.name}.fuel`)}
          onCommit={(text) => sheet.setText(`${cell.name}.fuel`, text)}
          onUndoBeyond={sheet.undo}
        />
        <span class="aside">share of a full tank, 0 to 1</span>
      </div>
      <CautionFor of="parts" cell={cell.name} />
    </>
  );
}

const KeptRow = kept(PartRow);

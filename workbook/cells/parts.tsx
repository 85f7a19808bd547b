import type { Part, PartsCell } from '../../engine/index';
import { kept } from '../controls/kept';
import { TextEntry } from '../controls/text-entry';
import { CautionFor } from '../page/caution';
import { useSheet } from '../store/context';
import { PartFields } from './part-fields';
import { shapeWords } from './part-shapes';
import { PartTotals } from './part-totals';

/** The weight and balance table: every part with its mass and station, the scale's reading beside the estimate. */
export function PartsView({ cell }: { cell: PartsCell }) {
  const sheet = useSheet();
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls sideways has to be reachable by keys. */}
      <section class="table-room" aria-label={`${cell.title}, table`} tabIndex={0}>
        <table class="parts">
          <thead>
            <tr>
              <th scope="col">part</th>
              <th scope="col">shape</th>
              <th scope="col">mass</th>
              <th scope="col">x</th>
              <th scope="col">y</th>
              <th scope="col">z</th>
              <th scope="col">share of the moment</th>
              <th scope="col">weighed</th>
            </tr>
          </thead>
          <tbody>
            {cell.rows.map((row) => (
              <KeptRow key={row.name} table={cell.name} row={row} />
            ))}
          </tbody>
          <PartTotals cell={cell} />
        </table>
      </section>
      <div class="fuel">
        <span>Fuel on board</span>
        <TextEntry
          class="fuel-entry"
          path={`${cell.name}.fuel`}
          label="Fuel on board"
          text={cell.fuel}
          shown={cell.fuel}
          fault={sheet.faultAt(`${cell.name}.fuel`)}
          onCommit={(text) => sheet.setText(`${cell.name}.fuel`, text)}
          onUndoBeyond={sheet.undo}
        />
      </div>
      <PartFields cell={cell} />
      <CautionFor block="parts" />
    </>
  );
}

const KeptRow = kept(PartRow);

function PartRow({ table, row }: { table: string; row: Part }) {
  const sheet = useSheet();
  const path = `${table}.${row.name}`;
  const fault = sheet.faultAt(path);
  return (
    <tr data-part={row.name}>
      <th scope="row">
        {row.title}
        {fault && <span class="fault-words">{fault.message}</span>}
      </th>
      <td class="words">{shapeWords(row)}</td>
      {['mass', 'x', 'y', 'z'].map((column) => (
        <td key={column} data-value={`${path}.${column}`}>
          {sheet.shown(`${path}.${column}`)}
        </td>
      ))}
      <td data-value={`${path}.moment_share`}>{sheet.shown(`${path}.moment_share`)}</td>
      <td class="weighed">
        <TextEntry
          path={`${path}.weighed`}
          label={`${row.title}, weighed`}
          text={row.fields.weighed ?? ''}
          shown={(row.fields.weighed ?? '') === '' ? '' : sheet.shown(`${path}.weighed`)}
          placeholder="–"
          fault={sheet.faultAt(`${path}.weighed`)}
          onCommit={(text) => sheet.setText(`${path}.weighed`, text)}
          onUndoBeyond={sheet.undo}
        />
      </td>
    </tr>
  );
}

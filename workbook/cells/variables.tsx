import type { Variable, VariablesCell } from '../../engine/index';
import { DimensionLine } from '../controls/dimension-line';
import { faultId } from '../controls/fault-flag';
import { kept } from '../controls/kept';
import { QuantitySymbol } from '../controls/quantity-symbol';
import { slideText, stepOf } from '../controls/slide';
import { TextEntry } from '../controls/text-entry';
import { useSheet } from '../store/context';
import { inUnit } from '../store/show';
import { RowFaults } from './row-faults';

/** A schedule of dimension lines. */
export function VariablesView({ cell }: { cell: VariablesCell }) {
  return (
    <div class="schedule">
      {cell.rows.map((row) => (
        <KeptRow key={row.name} row={row} />
      ))}
    </div>
  );
}

const KeptRow = kept(VariableRow);

function VariableRow({ row }: { row: Variable }) {
  const sheet = useSheet();
  const value = inUnit(sheet.value(row.name), row.unit);
  const low = inUnit(sheet.value(`${row.name}.low`), row.unit);
  const high = inUnit(sheet.value(`${row.name}.high`), row.unit);
  const typedStep = inUnit(sheet.value(`${row.name}.step`), row.unit);
  const step = typedStep > 0 ? typedStep : stepOf(low, high);
  const fault = sheet.faultAt(row.name);
  const computed = sheet.isComputed(row.text, row.unit);
  const outside = value < low || value > high;
  const moved = sheet.change(row.name);
  const noteId = `about-${row.name}`;

  const limit = (end: 'low' | 'high') => (
    <TextEntry
      class={`limit ${end}`}
      path={`${row.name}.${end}`}
      label={`${row.title}, ${end === 'low' ? 'low' : 'high'} end of the slide`}
      text={row[end]}
      shown={sheet.shown(`${row.name}.${end}`, { bare: true })}
      fault={sheet.faultAt(`${row.name}.${end}`)}
      faultElsewhere
      onCommit={(text) => sheet.setText(`${row.name}.${end}`, text)}
      onUndoBeyond={sheet.undo}
    />
  );

  return (
    <fieldset class="variable">
      <legend class="unseen">{row.title}</legend>
      <QuantitySymbol of={row.symbol} />
      <span class="variable-title">{row.title}</span>
      <div class="variable-line">
        {limit('low')}
        {limit('high')}
        <DimensionLine
          path={row.name}
          label={row.title}
          value={value}
          low={low}
          high={high}
          step={step}
          baseline={inUnit(sheet.baseline(row.name), row.unit)}
          shown={sheet.shown(row.name)}
          describedBy={fault ? faultId(row.name) : undefined}
          onMove={(moved) => sheet.drag(row.name, slideText(moved, step, row.unit))}
          onRest={sheet.rest}
        />
      </div>
      <TextEntry
        secondary
        class="variable-value"
        path={row.name}
        label={`${row.title}, value`}
        text={row.text}
        shown={sheet.shown(row.name)}
        fault={fault}
        faultElsewhere
        describedBy={computed || outside ? noteId : undefined}
        onCommit={(text) => sheet.setText(row.name, text)}
        onUndoBeyond={sheet.undo}
      />
      <span class="change">{moved === '0' ? '' : moved}</span>
      {(computed || outside) && (
        <p class="aside" id={noteId}>
          {computed && `Written as ${row.text}. Moving the slide puts a number in its place.`}
          {outside && ' This value lies outside the ends of its slide.'}
        </p>
      )}
      <RowFaults paths={[row.name, `${row.name}.low`, `${row.name}.high`]} />
    </fieldset>
  );
}

import type { Variable } from '../../../engine/index';
import { DimensionLine } from '../../controls/dimension-line';
import { faultId } from '../../controls/fault-flag';
import { QuantitySymbol } from '../../controls/quantity-symbol';
import { slideText, stepOf } from '../../controls/slide';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { inUnit } from '../../store/show';
import { RowMenu } from '../rows/index';
import { makingCommands } from '../shared/number-menu';
import { RowFaults } from '../shared/row-faults';
import { VariableForm } from './form';

interface VariableRowProps {
  readonly row: Variable;
  /** Place in the schedule, and how long that is. */
  readonly at: number;
  readonly count: number;
  /** Everything that can be said of it is shown under it. */
  readonly isOpen: boolean;
  readonly act: RowActions;
}

/** What can be done with a row; the same object for all rows and always. */
export interface RowActions {
  open(name: string | undefined): void;
  move(name: string, by: 1 | -1): void;
  copy(name: string): void;
  remove(name: string): void;
}

/** The ends of a slide stand beside its value, which says their unit. */
const withoutUnit = (text: string, unit: string): string =>
  unit !== '' && text.endsWith(unit) ? text.slice(0, -unit.length).trimEnd() : text;

/** A dimension line with its limits, its value and what moved. */
export function VariableRow({ row, at, count, isOpen, act }: VariableRowProps) {
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
      passedBy
      class={`limit ${end}`}
      path={`${row.name}.${end}`}
      label={`${row.title}, ${end === 'low' ? 'low' : 'high'} end of the slide`}
      text={row[end]}
      shown={withoutUnit(sheet.entry(`${row.name}.${end}`), row.unit)}
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
      <RowMenu
        class="variable-title"
        title={row.title}
        at={at}
        count={count}
        onChange={() => act.open(row.name)}
        onMove={(by) => act.move(row.name, by)}
        onCopy={() => act.copy(row.name)}
        onRemove={() => act.remove(row.name)}
        making={() => makingCommands(sheet, row.name, row.title)}
      >
        {row.title}
      </RowMenu>
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
          shown={sheet.entry(row.name)}
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
        shown={sheet.entry(row.name)}
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
      <RowFaults paths={[row.name, `${row.name}.low`, `${row.name}.high`, ...(isOpen ? [] : [`${row.name}.step`])]} />
      {isOpen && <VariableForm row={row} onOpen={act.open} />}
    </fieldset>
  );
}

import { cellsOf, type Variable, type VariablesCell } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { FormRow, inOtherUnit, NameRow, RowRoom, UnitRow, WordsRow } from '../rows/index';
import { changeRow, retitleVariable } from './edits';

interface VariableFormProps {
  readonly row: Variable;
  /** The row goes on under another name, or is closed. */
  onOpen(name: string | undefined): void;
}

/** Title, name, symbol, unit and step of a variable; its value is typed on the line itself. */
export function VariableForm({ row, onOpen }: VariableFormProps) {
  const sheet = useSheet();
  const change = (make: (now: Variable) => Variable): void =>
    sheet.edit((document) => {
      const cell = cellsOf(document).find(
        (each): each is VariablesCell => each.kind === 'variables' && each.rows.some(({ name }) => name === row.name),
      );
      return cell ? [{ change: 'cell', cell: changeRow(cell, row.name, make) }] : [];
    }, row.title);
  return (
    <RowRoom title={row.title} onClose={() => onOpen(undefined)}>
      <WordsRow
        word="Title"
        label={`Title of ${row.title}`}
        path={`${row.name}#title`}
        text={row.title}
        onCommit={(title) =>
          sheet.edit((document) => {
            const { changes, name } = retitleVariable(document, row, title);
            onOpen(name);
            return changes;
          }, `the title of ${row.title}`)
        }
      />
      <NameRow path={row.name} title={row.title} onRenamed={onOpen} />
      <WordsRow
        word="Symbol"
        label={`Symbol of ${row.title}`}
        path={`${row.name}#symbol`}
        text={row.symbol}
        about="What stands behind _ is its index: m_t."
        onCommit={(symbol) => change((now) => ({ ...now, symbol }))}
      />
      <UnitRow
        label={`Unit of ${row.title}`}
        unit={row.unit}
        blank="none: a plain number"
        onPick={(unit) => change((now) => inOtherUnit(now, unit))}
      />
      <FormRow word="From">
        <End row={row} end="low" />
      </FormRow>
      <FormRow word="To">
        <End row={row} end="high" />
      </FormRow>
      <FormRow word="Step" about="Of the slide. Blank: about a thousandth of its length.">
        <TextEntry
          path={`${row.name}.step`}
          label={`${row.title}, step of the slide`}
          text={row.step}
          shown={row.step === '' ? '' : sheet.entry(`${row.name}.step`)}
          placeholder="–"
          fault={sheet.faultAt(`${row.name}.step`)}
          onCommit={(text) => sheet.setText(`${row.name}.step`, text)}
          onUndoBeyond={sheet.undo}
        />
      </FormRow>
    </RowRoom>
  );
}

/** An end of the slide, which can be typed on the line itself too. */
function End({ row, end }: { row: Variable; end: 'low' | 'high' }) {
  const sheet = useSheet();
  const path = `${row.name}.${end}`;
  return (
    <TextEntry
      secondary
      path={path}
      label={`${row.title}, slide ${end === 'low' ? 'from' : 'to'}`}
      text={row[end]}
      shown={sheet.entry(path)}
      faultElsewhere
      onCommit={(text) => sheet.setText(path, text)}
      onUndoBeyond={sheet.undo}
    />
  );
}

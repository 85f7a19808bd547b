import { type ChoiceCell, type ChoiceOption, formatQuantity, shownUnit } from '../../../engine/index';
import { Swatch } from '../../controls/swatch';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { StackLayers } from '../layers/stack-layers';
import { Remade } from '../shared/remade';
import { RowFaults } from '../shared/row-faults';
import { LibraryChoice } from './library';
import { OwnOptions } from './own-options';

/** Material swatches to pick from, each with what it weighs beside its name. */
export function ChoiceView({ cell }: { cell: ChoiceCell }) {
  const sheet = useSheet();
  const base = sheet.baselineText(cell.name);
  return (
    <>
      <fieldset class="choice" data-path={cell.name}>
        <legend class="unseen">{cell.title}</legend>
        {cell.options.map((option) => (
          <label
            key={option.name}
            class={`option ${option.name === cell.text ? 'picked' : ''} ${option.name === base ? 'baseline' : ''}`}
            title={option.name === base ? 'baseline' : undefined}
          >
            <input
              type="radio"
              name={`choice-${cell.name}`}
              value={option.name}
              checked={option.name === cell.text}
              onChange={() => sheet.setText(cell.name, option.name)}
            />
            {(cell.of === 'stack' || option.pattern !== 'plain') && <Swatch pattern={option.pattern} />}
            <span class="option-title">{option.title}</span>
            <Consequence cell={cell} option={option} />
            {option.name === base && <span class="unseen">, baseline</span>}
          </label>
        ))}
      </fieldset>
      <RowFaults paths={[cell.name]} />
      <Remade of={[cell.name]} />
      {cell.of === 'stack' && <StackLayers cell={cell} />}
      {cell.of === 'library' ? <LibraryChoice cell={cell} /> : <OwnOptions cell={cell} />}
    </>
  );
}

/** Numbers that fit beside a name. */
const MOST_NUMBERS = 2;

/** The numbers an option brings, in grey beside its name. */
function Consequence({ cell, option }: { cell: ChoiceCell; option: ChoiceOption }) {
  const sheet = useSheet();
  // A builder weighs parts: where any are made of it, what they weigh says more than what a square metre does.
  const mass = sheet.madeOf(cell.name)[cell.options.indexOf(option)];
  if (mass !== undefined && !Number.isNaN(mass)) {
    return (
      <span class="consequence">
        {formatQuantity(mass, shownUnit('g', sheet.units()))}
        <span class="unseen"> of parts made of it</span>
      </span>
    );
  }
  const words = columnsOf(cell, sheet)
    .slice(0, MOST_NUMBERS)
    .map((column) =>
      sheet.shown(cell.of === 'library' ? `${option.name}.${column}` : `${cell.name}.${option.name}.${column}`),
    )
    .filter((text) => text !== '–');
  return <span class="consequence">{words.join(', ')}</span>;
}

function columnsOf(cell: ChoiceCell, sheet: Sheet): readonly string[] {
  if (cell.of === 'stack') return ['areal_mass'];
  if (cell.of === 'numbers') return cell.columns.map((column) => column.name);
  const columns = sheet.tableNamed(cell.table ?? '')?.columns ?? [];
  return columns.filter((column) => !column.options).map((column) => column.name);
}

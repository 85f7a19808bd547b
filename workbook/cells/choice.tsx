import type { ChoiceCell, ChoiceOption } from '../../engine/index';
import { Swatch } from '../controls/swatch';
import { useSheet } from '../store/context';
import { RowFaults } from './row-faults';

/** Material swatches to pick from, each with what it weighs beside its name. */
export function ChoiceView({ cell }: { cell: ChoiceCell }) {
  const sheet = useSheet();
  return (
    <>
      <fieldset class="choice" data-path={cell.name}>
        <legend class="unseen">{cell.title}</legend>
        {cell.options.map((option) => (
          <label key={option.name} class={option.name === cell.text ? 'option picked' : 'option'}>
            <input
              type="radio"
              name={`choice-${cell.name}`}
              value={option.name}
              checked={option.name === cell.text}
              onChange={() => sheet.setText(cell.name, option.name)}
            />
            <Swatch pattern={option.pattern} />
            <span class="option-title">{option.title}</span>
            <Consequence cell={cell} option={option} />
          </label>
        ))}
      </fieldset>
      <RowFaults paths={[cell.name]} />
    </>
  );
}

/** The numbers an option brings, in grey beside its name. */
function Consequence({ cell, option }: { cell: ChoiceCell; option: ChoiceOption }) {
  const sheet = useSheet();
  const words = sheet.consequence(cell, option);
  const base = sheet.baselineText(cell.name);
  return (
    <span class="consequence">
      {words}
      {base !== undefined && base !== cell.text && base === option.name && ' (baseline)'}
    </span>
  );
}

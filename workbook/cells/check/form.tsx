import { useRef } from 'preact/hooks';
import type { CheckCell } from '../../../engine/index';
import { along } from '../../controls/along';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { FormRow, WordsRow } from '../rows/index';

/** What a check watches, its limits and their reasons; open where it has no limit yet. */
export function CheckForm({ cell }: { cell: CheckCell }) {
  const sheet = useSheet();
  // It doesn't close under the hand that types the first limit.
  const begins = useRef(cell.low === '' && cell.high === '');
  const entry = (path: string, label: string, text: string, placeholder: string) => (
    <TextEntry
      secondary
      path={path}
      label={`${cell.title}, ${label}`}
      text={text}
      shown={text}
      placeholder={placeholder}
      fault={sheet.faultAt(path)}
      faultElsewhere
      onCommit={(typed) => sheet.setText(path, typed)}
      onUndoBeyond={sheet.undo}
    />
  );
  const reason = (end: 'below' | 'above', word: string) => (
    <WordsRow
      word={word}
      label={`${cell.title}, reason ${end === 'below' ? 'of the least' : 'of the most'}`}
      path={`${cell.id}#${end}`}
      text={cell[end]}
      placeholder="what is wrong then, and what mends it"
      onCommit={(text) => sheet.changeCell({ ...cell, [end]: text })}
    />
  );
  return (
    <details class="check-form" open={begins.current}>
      <summary {...along()}>Edit this check</summary>
      <FormRow word="Watch" about="A result or a formula, such as flight.pull.">
        {entry(cell.name, 'watched', cell.of, 'needed')}
      </FormRow>
      <FormRow word="Stop if under">{entry(`${cell.name}.low`, 'least', cell.low, 'no limit')}</FormRow>
      {reason('below', 'because')}
      <FormRow word="Stop if over">{entry(`${cell.name}.high`, 'most', cell.high, 'no limit')}</FormRow>
      {reason('above', 'because')}
    </details>
  );
}

import { SPREAD_KINDS, type SpreadCell, type SpreadKind, type SpreadRow, spreadPath } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { Pick, type PickOption } from '../shared/pick';
import { RowFaults } from '../shared/row-faults';
import { SetUpEntry } from '../shared/set-up-entry';
import { beginning } from './offer';
import { titleOfRow } from './words';

const KIND_TITLES: Readonly<Record<SpreadKind, string>> = {
  normal: 'normal',
  uniform: 'uniform: anywhere between the ends',
  triangular: 'triangular: most likely as typed',
};

interface RowProps {
  readonly cell: SpreadCell;
  readonly index: number;
  readonly options: readonly PickOption[];
  onChange(row: SpreadRow): void;
  onRemove(): void;
}

/** One thing that differs: what, in which way, by how much. */
export function SpreadRowForm({ cell, index, options, onChange, onRemove }: RowProps) {
  const sheet = useSheet();
  const row = cell.rows[index]!;
  const info = sheet.name(row.of);
  const title = titleOfRow(row.of, info);
  const at = spreadPath(cell, index);
  const id = (part: string): string => `${cell.id}-row${index + 1}-${part}`;
  const own = info?.kind === 'part';
  const amount = (size: 'size' | 'above', word: string, placeholder: string) => (
    <SetUpEntry
      word={word}
      label={`${title}, ${word.toLowerCase()}`}
      path={`${at}.${size}`}
      text={row[size]}
      placeholder={placeholder}
    />
  );
  return (
    <fieldset class="set-up-axis">
      <legend>{title}</legend>
      <div class="set-up-fields">
        <Pick
          id={id('of')}
          label="What differs"
          value={row.of}
          options={options}
          onPick={(of) => onChange({ ...row, of, size: '', above: '' })}
        />
        <Pick
          id={id('kind')}
          label="How"
          value={row.distribution}
          options={SPREAD_KINDS.map((kind) => ({ value: kind, title: KIND_TITLES[kind] }))}
          onPick={(kind) => onChange({ ...row, distribution: kind as SpreadKind })}
        />
        {row.distribution === 'normal'
          ? amount('size', 'Standard deviation', own ? 'the part’s own' : 'type an amount')
          : amount('size', 'As much below', 'type an amount')}
        {row.distribution !== 'normal' && amount('above', 'As much above', 'the same')}
        <button type="button" class="word quiet" onClick={onRemove}>
          Remove<span class="unseen"> {title}</span>
        </button>
      </div>
      {row.size === beginning(row.of) && (
        <p class="aside">2 % is only a guess: type your own, such as how well your scale weighs.</p>
      )}
      <RowFaults paths={[`${at}.size`, `${at}.above`]} />
    </fieldset>
  );
}

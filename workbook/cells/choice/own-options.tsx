import { useSignal } from '@preact/signals';
import type { ChoiceCell, ChoiceOption } from '../../../engine/index';
import { along } from '../../controls/along';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { FormRow, moved, NameRow, RowMenu, RowRoom, WordsRow } from '../rows/index';
import { ChoiceColumns } from './columns';
import { copyOf, newOption } from './edits';
import { withoutOption } from './options';

/** Options of a choice that are the sheet's own: added, titled, named, filled, copied, moved and removed. */
export function OwnOptions({ cell }: { cell: ChoiceCell }) {
  const sheet = useSheet();
  const opened = useSignal<string | undefined>(undefined);
  const open = (name: string | undefined): void => {
    opened.value = name;
  };
  const put = (options: readonly ChoiceOption[]): void => sheet.changeCell({ ...cell, options });
  return (
    <details class="choice-rows">
      <summary {...along()}>Edit the options</summary>
      {cell.options.length === 0 && <p class="aside">No option yet. Add one, then pick it above.</p>}
      {cell.options.map((option, at) => (
        <div key={option.name} class="option-line">
          <RowMenu
            title={option.title}
            at={at}
            count={cell.options.length}
            stays={cell.options.length === 1}
            onChange={() => open(option.name)}
            onMove={(by) => put(moved(cell.options, at, by))}
            onCopy={() => put(cell.options.toSpliced(at + 1, 0, copyOf(option, cell.options)))}
            onRemove={() => sheet.changeCell(withoutOption(cell, option.name))}
          >
            {option.title}
          </RowMenu>
          {opened.value === option.name && (
            <RowRoom title={option.title} onClose={() => open(undefined)}>
              <OptionForm
                cell={cell}
                option={option}
                onRenamed={open}
                onChange={(next) => put(cell.options.with(at, next))}
              />
            </RowRoom>
          )}
        </div>
      ))}
      <button
        type="button"
        class="word quiet"
        onClick={() => {
          const option = newOption(cell);
          sheet.changeCell({ ...cell, options: [...cell.options, option], text: cell.text || option.name });
          open(option.name);
        }}
      >
        Add an option<span class="unseen"> to {cell.title}</span>
      </button>
      {cell.of === 'numbers' && <ChoiceColumns cell={cell} />}
    </details>
  );
}

const PATTERNS: Readonly<Record<ChoiceOption['pattern'], string>> = {
  plain: 'plain',
  grain: 'grain',
  ply: 'ply lines',
  faced: 'wood with ply faces',
  foam: 'foam',
  weave: 'weave',
};

interface OptionFormProps {
  readonly cell: ChoiceCell;
  readonly option: ChoiceOption;
  onRenamed(name: string): void;
  onChange(option: ChoiceOption): void;
}

function OptionForm({ cell, option, onRenamed, onChange }: OptionFormProps) {
  const sheet = useSheet();
  const path = `${cell.name}.${option.name}`;
  return (
    <>
      <WordsRow
        word="Title"
        label={`Title of ${option.title}`}
        path={`${path}#title`}
        text={option.title}
        onCommit={(title) => onChange({ ...option, title })}
      />
      <NameRow path={path} title={option.title} onRenamed={onRenamed} />
      <FormRow word="Drawn as">
        <select
          aria-label={`Pattern of ${option.title}`}
          value={option.pattern}
          onChange={(event) => onChange({ ...option, pattern: event.currentTarget.value as ChoiceOption['pattern'] })}
        >
          {Object.entries(PATTERNS).map(([pattern, words]) => (
            <option key={pattern} value={pattern}>
              {words}
            </option>
          ))}
        </select>
      </FormRow>
      {cell.of === 'numbers' &&
        cell.columns.map((column) => (
          <FormRow key={column.name} word={column.title}>
            <TextEntry
              path={`${path}.${column.name}`}
              label={`${column.title} of ${option.title}`}
              text={option.values?.[column.name] ?? ''}
              shown={sheet.entry(`${path}.${column.name}`)}
              fault={sheet.faultAt(`${path}.${column.name}`)}
              onCommit={(text) => sheet.setText(`${path}.${column.name}`, text)}
              onUndoBeyond={sheet.undo}
            />
          </FormRow>
        ))}
    </>
  );
}

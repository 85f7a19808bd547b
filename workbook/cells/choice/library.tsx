import { useSignal } from '@preact/signals';
import type { BlockCell, ChoiceCell, TableDescription } from '../../../engine/index';
import { along } from '../../controls/along';
import { OwnRows } from '../../library/own-rows';
import { RowPick } from '../../library/row-pick';
import { NamedRowTold } from '../../library/row-told';
import { titleTold } from '../../library/told';
import { useSheet } from '../../store/context';
import type { Sheet } from '../../store/sheet';
import { feedingTexts, withOption, withoutOption } from './options';

/** Below the options of a choice among rows of the library: what the picked one is, which block it feeds, which rows there are. */
export function LibraryChoice({ cell }: { cell: ChoiceCell }) {
  const sheet = useSheet();
  const table = sheet.tableNamed(cell.table ?? '');
  if (!table) return null;
  return (
    <>
      <NamedRowTold table={table} name={cell.text} />
      <Feed cell={cell} table={table} />
      <details class="choice-rows">
        <summary {...along()}>Edit the options</summary>
        <Rows cell={cell} />
        <AddRow cell={cell} table={table} />
        <OwnRows table={table} onAdd={(row) => sheet.changeCell(withOption(cell, row))} />
      </details>
    </>
  );
}

/** Lets the fields of a block follow the choice. */
function Feed({ cell, table }: { cell: ChoiceCell; table: TableDescription }) {
  const sheet = useSheet();
  return (
    <>
      {blocksFed(sheet, table).map((block) => {
        const texts = feedingTexts(cell, block, table, sheet.blockNamed(block.of)?.fields ?? []);
        if (texts.length === 0) return null;
        return (
          <button
            key={block.name}
            type="button"
            class="word"
            onClick={() => sheet.setTexts(texts, `${block.title} after ${cell.title}`)}
          >
            Use this choice in {block.title}
          </button>
        );
      })}
    </>
  );
}

const blocksFed = (sheet: Sheet, table: TableDescription): readonly BlockCell[] =>
  sheet.cells.value
    .filter((each) => each.kind === 'model')
    .filter((each) => sheet.blockNamed(each.of)?.role === table.feeds);

function Rows({ cell }: { cell: ChoiceCell }) {
  const sheet = useSheet();
  return (
    <ul class="plain-list">
      {cell.options.map((option) => (
        <li key={option.name}>
          {option.title}{' '}
          <button
            type="button"
            class="word quiet"
            disabled={cell.options.length === 1}
            onClick={() => sheet.changeCell(withoutOption(cell, option.name))}
          >
            Remove<span class="unseen"> {option.title}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function AddRow({ cell, table }: { cell: ChoiceCell; table: TableDescription }) {
  const sheet = useSheet();
  const picked = useSignal('');
  const offered = (name: string): boolean => cell.options.some((option) => option.name === name);
  const own = sheet.part('rows').filter((row) => row.table === table.name);
  const known = table.rows.map(({ name, ...row }) => ({ name, title: titleTold(row, sheet.units()) }));
  const rest = [...own, ...known].filter((row) => !offered(row.name));
  const row = rest.find((each) => each.name === picked.value) ?? rest[0];
  if (!row) return <p class="aside">Every {table.one} of the library is there.</p>;
  return (
    <div class="add-row">
      <RowPick
        table={table}
        label={`${cell.title}, ${table.one} to add`}
        value={row.name}
        but={offered}
        onPick={(name) => {
          picked.value = name;
        }}
      />
      <button type="button" class="word" onClick={() => sheet.changeCell(withOption(cell, row))}>
        Add to the choice
      </button>
      <NamedRowTold table={table} name={row.name} />
    </div>
  );
}

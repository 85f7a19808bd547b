import { useSignal } from '@preact/signals';
import { along } from '../../controls/along';
import { Menu } from '../../controls/menu';
import { useSheet } from '../../store/context';
import type { SheetTold } from '../../store/sheet-set';
import { sheetCommands } from './commands';
import { CopyToDesign } from './copy-to-design';
import { SheetTitleForm } from './title-form';

/** The list of sheets of a drawing set: number, title, state; a press shows one. */
export function SheetList({ onShown }: { onShown?(): void }) {
  const sheet = useSheet();
  const { id: shown } = sheet.shownSheet.value;
  const onto = sheet.carrying.value?.onto;
  const naming = useSignal('');
  const copying = useSignal<SheetTold | undefined>(undefined);
  const show = (id: string): void => {
    sheet.showSheet(id);
    onShown?.();
  };
  return (
    <>
      <ol class="sheet-list">
        {sheet.sheetList.value.map((told) => (
          <li
            key={told.id}
            class={`${told.id === shown ? 'shown' : ''} ${told.id === onto ? 'put-onto' : ''}`}
            data-onto={told.id}
          >
            <Menu
              along="word"
              class="sheet-number"
              label={`Sheet ${told.number}, ${told.title}: commands`}
              commands={() =>
                sheetCommands(sheet, told, {
                  name: () => (naming.value = told.id),
                  copyTo: () => (copying.value = told),
                })
              }
            >
              {told.number}
            </Menu>
            <button
              type="button"
              {...along(told.id === shown)}
              class="word sheet-title"
              data-sheet={told.id}
              aria-current={told.id === shown ? 'page' : undefined}
              onClick={() => show(told.id)}
            >
              {told.title}
            </button>
            <StateNote told={told} />
            {naming.value === told.id && <SheetTitleForm told={told} onClose={() => (naming.value = '')} />}
          </li>
        ))}
      </ol>
      {copying.value && (
        <CopyToDesign
          title={`Copy the sheet “${copying.value.title}” to`}
          choose={(designs, design) => designs.copySheetTo(design, copying.value!.id)}
          onClose={() => (copying.value = undefined)}
        />
      )}
    </>
  );
}

/** What a sheet's own state is: a tick where all is well, so that what is not stands out; the whole set's stands in the head. */
function StateNote({ told: { state } }: { told: SheetTold }) {
  if (state.kind !== 'settled') return <span class={`sheet-note ${state.kind}`}>{state.words}</span>;
  return (
    <span class="sheet-note">
      <span aria-hidden="true">✓</span>
      <span class="unseen">{state.words}</span>
    </span>
  );
}

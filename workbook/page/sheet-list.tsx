import { useSheet } from '../store/context';

/** The sheets of the set by number and title; a press shows one. */
export function SheetList() {
  const sheet = useSheet();
  const { id: shown } = sheet.shownSheet.value;
  return (
    <nav class="sheet-list" aria-label="Sheets">
      {sheet.sheetList.value.map(({ id, number, title, state }) => (
        <button
          key={id}
          type="button"
          class="word"
          data-sheet={id}
          aria-current={id === shown ? 'page' : undefined}
          onClick={() => sheet.showSheet(id)}
        >
          {number} {title}
          {state.kind !== 'settled' && state.kind !== 'working' && (
            <span class={`sheet-state ${state.kind}`}> {state.words}</span>
          )}
        </button>
      ))}
    </nav>
  );
}

import { useSheet } from '../../store/context';

/** Adds to the set. */
export function SetCommands() {
  const sheet = useSheet();
  const add = (): void => {
    const title = `Sheet ${sheet.sheetList.peek().length + 1}`;
    sheet.addSheet(title);
  };
  return (
    <p class="set-commands">
      <button
        type="button"
        class="word"
        aria-haspopup="dialog"
        onClick={() => {
          sheet.choosingStudy.value = true;
        }}
      >
        Add a study
      </button>
      <button type="button" class="word" onClick={add}>
        Add a sheet
      </button>
    </p>
  );
}

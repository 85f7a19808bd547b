import { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import { AddStudy } from '../studies/add-study';

/** Adds to the set. */
export function SetCommands() {
  const sheet = useSheet();
  const add = (): void => {
    const title = `Sheet ${sheet.sheetList.peek().length + 1}`;
    sheet.addSheet(title);
  };
  return (
    <p class="set-commands">
      <AddStudy list="studies" {...along()} />
      <AddStudy list="lessons" {...along()} />
      <button type="button" {...along()} class="word" onClick={add}>
        Add a sheet
      </button>
    </p>
  );
}

import { goAlong } from '../../controls/along';
import { ItemList } from './item-list';
import { SetCommands } from './set-commands';
import { SheetList } from './sheet-list';

/** At the left of a wide window: the sheets of the set, and what stands on the open one. */
export function SetColumn() {
  return (
    <div class="set-column">
      <nav aria-labelledby="sheets-title" onKeyDown={goAlong}>
        <h2 id="sheets-title">Sheets</h2>
        <SheetList />
        <SetCommands />
      </nav>
      <nav aria-labelledby="items-title" onKeyDown={goAlong}>
        <h2 id="items-title">On this sheet</h2>
        <ItemList />
      </nav>
    </div>
  );
}

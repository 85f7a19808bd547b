import { TextEntry } from '../controls/text-entry';
import { useSheet } from '../store/context';
import { newerWaits } from '../store/newer-edition';
import type { Sheet } from '../store/sheet';

/** "2 of 6": which sheet of the set is shown. */
function sheetNumber({ sheetList, shownSheet }: Sheet): string {
  const { id } = shownSheet.value;
  const told = sheetList.value.find((each) => each.id === id);
  return `${told?.number ?? 1} of ${sheetList.value.length}`;
}

/** Title block after ISO 7200: what it was drawn with, design, who drew it, date, scale, sheet, units. */
export function TitleBlock() {
  const sheet = useSheet();
  const entry = (field: 'title' | 'drawn' | 'class' | 'date', label: string) => (
    <div class={`title-field title-${field}`}>
      <span class="title-label">{label}</span>
      <TextEntry
        path={`title-block.${field}`}
        label={`Title block, ${label}`}
        text={sheet.part(field) ?? ''}
        shown={sheet.part(field) ?? ''}
        placeholder="–"
        onCommit={(text) => sheet.changeHead({ [field]: field === 'class' && text.trim() === '' ? null : text }, label)}
        onUndoBeyond={sheet.undo}
      />
      {field === 'title' && sheet.part('invented') && (
        <span class="aside">Invented: no such model, maker or club exists.</span>
      )}
    </div>
  );
  return (
    <footer class="title-block">
      <div class="title-field title-product">
        <span class="title-label">drawn with</span>
        <span class="title-plain">Tetherwright</span>
        <span class="aside" role="status">
          {newerWaits.value && 'A newer edition is here. It is taken when this page is opened next.'}
        </span>
      </div>
      {entry('title', 'design')}
      {entry('drawn', 'drawn')}
      {entry('class', 'class')}
      {entry('date', 'date')}
      <div class="title-field title-scale">
        <span class="title-label">scale</span>
        <span class="title-plain">see drawing</span>
      </div>
      <div class="title-field title-sheet">
        <span class="title-label">sheet</span>
        <span class="title-plain">
          {sheetNumber(sheet)}
          <span class="title-of"> {sheet.shownSheet.value.title}</span>
        </span>
      </div>
      <label class="title-field title-units">
        <span class="title-label">units</span>
        <select
          value={sheet.part('units')}
          onChange={(event) => {
            const units = event.currentTarget.value === 'inch_pound' ? 'inch_pound' : 'metric';
            sheet.changeHead({ units }, 'units');
          }}
        >
          <option value="metric">metric</option>
          <option value="inch_pound">inch and pound</option>
        </select>
        <span class="on-paper">{sheet.part('units') === 'inch_pound' ? 'inch and pound' : 'metric'}</span>
      </label>
    </footer>
  );
}

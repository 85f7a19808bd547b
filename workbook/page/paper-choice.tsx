import type { Signal } from '@preact/signals';
import { isPaper, type Paper, paperChoices } from './paper';

/** On which paper the sheet lies on the screen; it is printed black on white whatever is chosen. */
export function PaperChoice({ paper }: { paper: Signal<Paper> }) {
  return (
    <label class="paper-choice">
      <span>Paper</span>
      <select
        value={paper.value}
        onChange={(event) => {
          const picked = event.currentTarget.value;
          if (isPaper(picked)) paper.value = picked;
        }}
      >
        {paperChoices.map(({ paper: each, words }) => (
          <option key={each} value={each}>
            {words}
          </option>
        ))}
      </select>
    </label>
  );
}

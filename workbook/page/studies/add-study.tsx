import type { along } from '../../controls/along';
import { useSheet } from '../../store/context';

/** The words that open the list of studies. */
export function AddStudy(place: ReturnType<typeof along>) {
  const sheet = useSheet();
  return (
    <button
      type="button"
      {...place}
      class="word"
      aria-haspopup="dialog"
      onClick={() => {
        sheet.choosingStudy.value = true;
      }}
    >
      Add a study
    </button>
  );
}

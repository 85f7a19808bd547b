import type { along } from '../../controls/along';
import { useSheet } from '../../store/context';
import type { StudyList } from '../../store/studies';
import { studyWords } from './words';

/** The words that open the list of studies, or that of lessons. */
export function AddStudy({ list, ...place }: ReturnType<typeof along> & { readonly list: StudyList }) {
  const sheet = useSheet();
  return (
    <button
      type="button"
      {...place}
      class="word"
      aria-haspopup="dialog"
      onClick={() => {
        sheet.choosingStudy.value = list;
      }}
    >
      {studyWords[list].open}
    </button>
  );
}

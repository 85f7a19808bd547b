import { useSheet } from '../../store/context';

/** The words that open the list of studies. */
export function AddStudy() {
  const sheet = useSheet();
  return (
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
  );
}

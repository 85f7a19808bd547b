import { useSheet } from '../store/context';
import { fileName, saveText } from '../store/files';

/** What went wrong outside the cells: a file that was refused, a store that keeps nothing, an engine that failed. */
export function Notices() {
  const sheet = useSheet();
  const notices = sheet.notices.value;
  return (
    <div class="notices" role="alert">
      {notices.map((notice) => (
        <div key={notice.title} class="notice">
          <p>
            <strong>{notice.title}</strong>
          </p>
          {notice.sentences.length > 0 && (
            <ul>
              {notice.sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          )}
          {notice.text !== undefined && (
            <button type="button" class="word" onClick={() => saveText(notice.text ?? '', fileName('kept sheet'))}>
              Save it to a file as it is
            </button>
          )}
          <button type="button" class="word" onClick={() => sheet.dismiss(notice)}>
            Put away
          </button>
        </div>
      ))}
    </div>
  );
}

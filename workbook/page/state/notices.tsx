import { useSheet } from '../../store/context';
import { fileName, saveText } from '../../store/files';
import type { Notice } from '../../store/sheet';

/** What went wrong outside the cells (a file that was refused, a store that keeps nothing, an engine that failed), and what has just been removed. */
export function Notices() {
  const sheet = useSheet();
  const wrong = sheet.notices.value.filter(({ after, good }) => after === undefined && !good);
  const done = sheet.notices.value.filter(({ after, good }) => good || after === sheet.document.value);
  return (
    <>
      <div class="notices" role="alert">
        {wrong.map((notice) => (
          <NoticeOf key={notice.title} notice={notice} />
        ))}
      </div>
      <div class="notices done" role="status">
        {done.map((notice) => (
          <NoticeOf key={notice.title} notice={notice} />
        ))}
      </div>
    </>
  );
}

function NoticeOf({ notice }: { notice: Notice }) {
  const sheet = useSheet();
  return (
    <div class="notice">
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
        <button type="button" class="word" onClick={() => saveText(notice.text ?? '', fileName('kept design'))}>
          Save it to a file as it is
        </button>
      )}
      {notice.after && (
        <button type="button" class="word" onClick={notice.restore ?? sheet.undo}>
          {notice.restore ? 'Bring it back' : 'Take it back'}
        </button>
      )}
      <button type="button" class="word" onClick={() => sheet.dismiss(notice)}>
        Close
      </button>
    </div>
  );
}

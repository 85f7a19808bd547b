import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { StudyTold } from '../../../engine/index';
import { useSheet } from '../../store/context';
import type { StudyList } from '../../store/studies';
import { StudyPreview } from './study-preview';
import { studyWords } from './words';

/** Questions that a builder asks, each ready to be put on the open design as a sheet; what it adds is said before it does. */
export function StudyDialog({ list: which }: { list: StudyList }) {
  const sheet = useSheet();
  const words = studyWords[which];
  const dialog = useRef<HTMLDialogElement>(null);
  const list = useSignal<readonly StudyTold[]>([]);
  const chosen = useSignal<StudyTold | undefined>(undefined);
  useEffect(() => {
    dialog.current?.showModal();
    void sheet.studyList(which).then((told) => {
      list.value = told;
    });
  }, [sheet, list, which]);
  const close = (): void => {
    sheet.choosingStudy.value = undefined;
  };
  return (
    <dialog ref={dialog} class="open-dialog study-dialog" aria-labelledby="study-title" onClose={close}>
      <div class="dialog-head">
        <h2 id="study-title">{chosen.value?.question ?? words.open}</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {chosen.value ? (
        <StudyPreview
          study={chosen.value}
          back={words.back}
          onBack={() => {
            chosen.value = undefined;
          }}
          onDone={() => dialog.current?.close()}
        />
      ) : (
        <>
          {words.about === '' ? <ToLessons /> : <p>{words.about}</p>}
          <ul>
            {list.value.map((study) => (
              <li key={study.name}>
                <button
                  type="button"
                  class="word"
                  data-study={study.name}
                  aria-describedby={`tells-${study.name}`}
                  disabled={study.unfit !== ''}
                  onClick={() => {
                    chosen.value = study;
                  }}
                >
                  {study.question}
                </button>
                <p class="aside" id={`tells-${study.name}`}>
                  {study.unfit || study.tells}
                </p>
              </li>
            ))}
          </ul>
        </>
      )}
    </dialog>
  );
}

/** The way from the list of studies to that of lessons. */
function ToLessons() {
  const sheet = useSheet();
  return (
    <p>
      <button
        type="button"
        class="word done"
        onClick={() => {
          sheet.choosingStudy.value = 'lessons';
        }}
      >
        Lessons
      </button>{' '}
      for juniors begin with a guess.
    </p>
  );
}

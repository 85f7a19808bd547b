import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { MAKE, type StudyAnswer, type StudyTold } from '../../../engine/index';
import { useSheet } from '../../store/context';

interface Props {
  readonly study: StudyTold;
  /** What the press says that goes back to the list. */
  readonly back: string;
  onBack(): void;
  onDone(): void;
}

/** What a study puts on this design, what it has to be told, and the press that puts it there. */
export function StudyPreview({ study, back, onBack, onDone }: Props) {
  const sheet = useSheet();
  const answers = useSignal<Readonly<Record<string, string>>>({});
  const preview = useSignal<StudyAnswer | undefined>(undefined);
  const refused = useSignal('');
  const put = useRef<HTMLButtonElement>(null);
  useEffect(() => {
    let gone = false;
    void sheet.previewStudy(study.name, answers.value).then((answer) => {
      if (!gone) preview.value = answer;
    });
    return () => {
      gone = true;
    };
  }, [sheet, study, answers.value, preview]);
  const told = preview.value;
  useEffect(() => put.current?.focus(), [told !== undefined]);
  const place = async (): Promise<void> => {
    const message = await sheet.putStudy(study, answers.peek());
    refused.value = message ?? '';
    if (message === undefined) onDone();
  };
  return (
    <>
      <p>{study.tells}</p>
      {!told && <p role="status">Looking at your design …</p>}
      {told?.ok === false && <p class="form-problem">{told.message}</p>}
      {told?.ok && (
        <>
          {told.asks.map((ask) => (
            <label key={ask.as} class="study-ask">
              <span>{ask.question}</span>
              <select
                value={ask.taken}
                onChange={(event) => {
                  answers.value = { ...answers.peek(), [ask.as]: event.currentTarget.value };
                }}
              >
                {ask.options.map(({ name, title }) => (
                  <option key={name} value={name}>
                    {title}
                  </option>
                ))}
              </select>
            </label>
          ))}
          <h3>What it does to this design</h3>
          <ul class="study-says">
            <li>Adds one sheet with {piecesOn(told)} pieces. Undo removes it again.</li>
            {told.says.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
            {told.lacks.map(({ as, sentence, offer }) => (
              <li key={as}>
                {sentence}{' '}
                <button
                  type="button"
                  class="word done"
                  data-make={as}
                  onClick={() => {
                    answers.value = { ...answers.peek(), [as]: MAKE };
                    // The press goes away with what it made.
                    put.current?.focus();
                  }}
                >
                  {offer}
                </button>
              </li>
            ))}
          </ul>
        </>
      )}
      <p class="form-problem" role="alert">
        {refused.value}
      </p>
      <p class="commands">
        <button ref={put} type="button" class="word done" disabled={!told?.ok} onClick={() => void place()}>
          Put it on this design
        </button>
        <button type="button" class="word" onClick={onBack}>
          {back}
        </button>
      </p>
    </>
  );
}

const piecesOn = ({ document, sheet }: StudyAnswer & { readonly ok: true }): number =>
  document.sheets.find(({ id }) => id === sheet)?.pieces.length ?? 0;

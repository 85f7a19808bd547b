import { useSignal } from '@preact/signals';
import { GUESS_WAYS, GUESS_WORDS, type GuessCell, type GuessOption, guessOptionPath } from '../../../engine/index';
import { TextEntry } from '../../controls/text-entry';
import { WordsEntry } from '../../controls/words-entry';
import { useSheet } from '../../store/context';
import { FormRow, UnitRow, WordsRow } from '../rows/index';
import { Pick } from '../shared/pick';
import { RowFaults } from '../shared/row-faults';

const WAYS: Readonly<Record<GuessCell['way'], string>> = {
  number: 'a number that is typed',
  choice: 'one of some answers',
  line: 'a line drawn on a chart',
};
const WORDS: Readonly<Record<(typeof GUESS_WORDS)[number], string>> = {
  question: 'Question',
  why: 'Why',
  try_this: 'What to try',
  instructor: 'For the instructor',
};

/** What is asked, how it is guessed and what answers it. */
export function GuessForm({ cell }: { cell: GuessCell }) {
  const sheet = useSheet();
  const change = (to: Partial<GuessCell>): void => sheet.changeCell({ ...cell, ...to });
  return (
    <>
      {GUESS_WORDS.map((words) => (
        <EditedWords key={words} cell={cell} words={words} />
      ))}
      <div class="set-up-fields">
        <Pick
          id={`${cell.id}-way`}
          label="It is guessed as"
          value={cell.way}
          options={GUESS_WAYS.map((value) => ({ value, title: WAYS[value] }))}
          onPick={(way) => change({ way: way as GuessCell['way'], guesses: [] })}
        />
        {cell.way === 'line' && (
          <Pick
            id={`${cell.id}-series`}
            label="Drawn over the trial series"
            value={cell.series}
            options={sheet.cells.value.flatMap((each) =>
              each.kind === 'trial_series' && each.axes.length === 1 ? [{ value: each.name, title: each.title }] : [],
            )}
            onPick={(series) => change({ series, guesses: [] })}
          />
        )}
      </div>
      <FormRow word="Answer" about="A result or a formula; the design computes it.">
        <TextEntry
          path={cell.name}
          label={`${cell.title}, what answers it`}
          text={cell.of}
          shown={cell.of}
          placeholder="needed"
          fault={sheet.faultAt(cell.name)}
          faultElsewhere
          onCommit={(text) => sheet.setText(cell.name, text)}
          onUndoBeyond={sheet.undo}
        />
      </FormRow>
      {cell.way === 'number' && (
        <UnitRow
          label={`Unit of ${cell.title}`}
          unit={cell.unit}
          blank="as it comes out"
          onPick={(unit) => change({ unit: unit as GuessCell['unit'] })}
        />
      )}
      {cell.way === 'choice' && <Options cell={cell} onChange={(options) => change({ options, guesses: [] })} />}
    </>
  );
}

function EditedWords({ cell, words }: { cell: GuessCell; words: (typeof GUESS_WORDS)[number] }) {
  const sheet = useSheet();
  const editing = useSignal(false);
  const keep = (text: string): void => sheet.changeCell({ ...cell, [words]: text });
  return (
    <FormRow word={WORDS[words]}>
      {editing.value ? (
        <div>
          <WordsEntry
            label={`${WORDS[words]}, words of ${cell.title}`}
            text={cell[words]}
            onCommit={keep}
            onDone={(text) => {
              editing.value = false;
              if (text !== undefined) keep(text);
            }}
          />
        </div>
      ) : (
        <button
          type="button"
          class="word quiet"
          onClick={() => {
            editing.value = true;
          }}
        >
          {cell[words].trim() === '' ? 'Write these words' : 'Edit these words'}
          <span class="unseen">: {WORDS[words]}</span>
        </button>
      )}
    </FormRow>
  );
}

function Options({ cell, onChange }: { cell: GuessCell; onChange(options: readonly GuessOption[]): void }) {
  const sheet = useSheet();
  const { options } = cell;
  return (
    <fieldset class="guess-set-options">
      <legend>Answers: right is the first within whose ends the computed number lies</legend>
      {options.map((option, k) => {
        const path = guessOptionPath(cell, k);
        const end = (which: 'low' | 'high', word: string) => (
          <FormRow word={word}>
            <TextEntry
              path={`${path}.${which}`}
              label={`“${option.words}”, right ${word}`}
              text={option[which]}
              shown={option[which] === '' ? '' : sheet.entry(`${path}.${which}`)}
              placeholder="no end"
              fault={sheet.faultAt(`${path}.${which}`)}
              faultElsewhere
              onCommit={(text) => sheet.setText(`${path}.${which}`, text)}
              onUndoBeyond={sheet.undo}
            />
          </FormRow>
        );
        return (
          <div key={k}>
            <WordsRow
              word={`${k + 1}`}
              label={`Words of answer ${k + 1}`}
              path={`${path}#words`}
              text={option.words}
              onCommit={(words) => onChange(options.with(k, { ...option, words }))}
            />
            {end('low', 'from')}
            {end('high', 'to')}
            <RowFaults paths={[`${path}.low`, `${path}.high`]} />
            <button type="button" class="word quiet" onClick={() => onChange(options.toSpliced(k, 1))}>
              Remove<span class="unseen"> answer {k + 1}</span>
            </button>
          </div>
        );
      })}
      <button
        type="button"
        class="word"
        onClick={() => onChange([...options, { words: 'new answer', low: '', high: '' }])}
      >
        Add an answer
      </button>
    </fieldset>
  );
}

import { type Signal, useSignal } from '@preact/signals';
import type { Designs } from '../../store/designs';
import type { Design } from '../../store/keep/index';
import { Compare } from './compare';

interface Props {
  readonly kept: readonly Design[];
  /** Ids. */
  readonly ticked: Signal<ReadonlySet<string>>;
  readonly designs: Designs;
}

/** What can be done with several designs: those that are ticked, or all. */
export function Together({ kept, ticked, designs }: Props) {
  const problem = useSignal<string | undefined>(undefined);
  const chosen = kept.filter(({ id }) => ticked.value.has(id));
  const comparing = useSignal(false);
  const [first, second] = chosen;
  const two = chosen.length === 2;
  const saved = chosen.length > 0 ? chosen : kept;
  return (
    <>
      <p class="commands">
        <button
          type="button"
          class="word"
          onClick={async () => {
            problem.value = await designs.saveTogether(saved.map(({ id }) => id));
          }}
        >
          {savingWords(chosen.length, kept.length)}
        </button>
        <button
          type="button"
          class="word"
          aria-expanded={two && comparing.value}
          disabled={!two}
          onClick={() => {
            comparing.value = !comparing.value;
          }}
        >
          Compare the two that are ticked
        </button>
      </p>
      <p class="aside">Opened anywhere, such a file adds its designs to those that are there and overwrites none.</p>
      {two && comparing.value && <Compare first={first!} second={second!} designs={designs} />}
      {problem.value && <p class="form-problem">{problem.value}</p>}
    </>
  );
}

/** What the press that saves says. */
const savingWords = (chosen: number, all: number): string => {
  if (chosen === 0) return `Save all ${all} as one file`;
  return chosen === 1 ? 'Save the ticked one as a file' : `Save the ${chosen} ticked as one file`;
};

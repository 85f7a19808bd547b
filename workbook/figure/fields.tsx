import { useSignal } from '@preact/signals';
import { useId } from 'preact/hooks';

interface ChoiceProps<T extends string> {
  readonly legend: string;
  readonly name: string;
  readonly value: T;
  readonly options: readonly { readonly value: T; readonly words: string }[];
  onPick(value: T): void;
}

/** One of a few, all in sight. */
export function Choice<T extends string>({ legend, name, value, options, onPick }: ChoiceProps<T>) {
  return (
    <fieldset class="figure-choice">
      <legend>{legend}</legend>
      {options.map((option) => (
        <label key={option.value}>
          <input type="radio" name={name} checked={option.value === value} onChange={() => onPick(option.value)} />
          {option.words}
        </label>
      ))}
    </fieldset>
  );
}

interface NumberProps {
  readonly label: string;
  readonly value: number;
  readonly least: number;
  readonly most: number;
  onTake(value: number): void;
}

/** A number between two others; what is none is said and not taken. */
export function NumberRow({ label, value, least, most, onTake }: NumberProps) {
  const id = useId();
  const wrong = useSignal<string | undefined>(undefined);
  return (
    <p class="figure-number">
      <label for={id}>{label}</label>
      <input
        id={id}
        class="text-entry"
        inputMode="decimal"
        value={wrong.value ?? String(value)}
        aria-invalid={wrong.value !== undefined}
        aria-describedby={wrong.value === undefined ? undefined : `${id}-wrong`}
        onChange={({ currentTarget }) => {
          const typed = Number(currentTarget.value.replace(',', '.').trim() || Number.NaN);
          const sound = typed >= least && typed <= most;
          wrong.value = sound ? undefined : currentTarget.value;
          if (sound) onTake(typed);
        }}
      />
      {wrong.value !== undefined && (
        <span class="fault-flag fault" id={`${id}-wrong`} role="alert">
          {numberFault(wrong.value, least, most)}
        </span>
      )}
    </p>
  );
}

const numberFault = (text: string, least: number, most: number): string =>
  `“${text}” can’t be taken. Type a number from ${least} to ${most}.`;

/** Words that can be changed. */
export function WordsRow({ label, text, onTake }: { label: string; text: string; onTake(text: string): void }) {
  const id = useId();
  return (
    <div class="figure-words">
      <label for={id}>{label}</label>
      <textarea id={id} rows={3} value={text} onChange={({ currentTarget }) => onTake(currentTarget.value)} />
    </div>
  );
}

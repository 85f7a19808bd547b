import type { Between } from '../../../engine/index';
import { BETWEEN_WORDS, columnsBy, DECIMAL_WORDS, type Decimal, type Separators, seenIn } from './separators';

interface Props {
  readonly id: string;
  readonly text: string;
  readonly picked: Separators;
  onPick(picked: Separators): void;
}

/** The separators of a pasted text: what is seen of them is shown, and a person has the last word. */
export function SeparatorsPick({ id, text, picked, onPick }: Props) {
  return (
    <div class="separators">
      <Radios<Between>
        id={`${id}-between`}
        title="Between fields"
        words={BETWEEN_WORDS.map(([sign, word]) => [sign, `${word} (${counted(columnsBy(text, sign))})`])}
        value={picked.between}
        onPick={(between) => onPick({ ...picked, between })}
      />
      <Radios<Decimal>
        id={`${id}-decimal`}
        title="Decimals"
        words={DECIMAL_WORDS}
        value={picked.decimal}
        onPick={(decimal) => onPick({ ...picked, decimal })}
      />
      <p class="aside">{seenWords(seenIn(text))}</p>
    </div>
  );
}

const counted = (columns: number): string => (columns === 1 ? '1 column' : `${columns} columns`);

/** What the text shows of itself, in a sentence. */
export function seenWords({ between, decimal }: Separators): string {
  if (!between) return 'The text doesn’t show what stands between its fields. Choose it.';
  const fields = `${BETWEEN_WORDS.find(([sign]) => sign === between)![1]}s between fields`;
  if (!decimal) return `The text shows ${fields}, but not which sign its decimals have. Choose it.`;
  const decimals = decimal === '.' ? 'a point' : 'a comma';
  return `The text shows ${fields} and ${decimals} for decimals. Choose otherwise if that is wrong.`;
}

function Radios<T extends string>(props: {
  id: string;
  title: string;
  words: readonly (readonly [T, string])[];
  value: T | undefined;
  onPick(value: T): void;
}) {
  const { id, title, words, value, onPick } = props;
  return (
    <fieldset class="part-shapes">
      <legend class="set-up-word">{title}</legend>
      {words.map(([sign, word]) => (
        <label key={sign} class={sign === value ? 'picked' : ''}>
          <input type="radio" name={id} checked={sign === value} onChange={() => onPick(sign)} />
          {word}
        </label>
      ))}
    </fieldset>
  );
}

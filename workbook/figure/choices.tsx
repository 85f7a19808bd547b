import type { Signal } from '@preact/signals';
import type { OfferedFigure } from '../store/figures';
import type { Look } from './colours';
import { Choice } from './fields';

/** Widths of one column and of two, mm. */
export const WIDTHS = [85, 175] as const;

export function WidthChoice({ name, width }: { name: string; width: Signal<number> }) {
  return (
    <Choice
      legend="Width"
      name={name}
      value={String(width.value)}
      options={WIDTHS.map((mm) => ({ value: String(mm), words: `${mm}\u00a0mm` }))}
      onPick={(mm) => {
        width.value = Number(mm);
      }}
    />
  );
}

export function LookChoice({ name, look }: { name: string; look: Signal<Look> }) {
  return (
    <Choice
      legend="Colours"
      name={name}
      value={look.value}
      options={[
        { value: 'colour', words: 'in colour' },
        { value: 'black', words: 'black on white, for a photocopier' },
      ]}
      onPick={(value) => {
        look.value = value;
      }}
    />
  );
}

/** Figures that stand together; `room`: how many more there may be. */
export function FiguresChoice(props: {
  legend: string;
  offered: readonly OfferedFigure[];
  picked: Signal<readonly OfferedFigure[]>;
  room: number;
}) {
  const { legend, offered, picked, room } = props;
  return (
    <fieldset class="figure-with">
      <legend>{legend}</legend>
      {offered.map((figure, k) => (
        <label class="tick" key={k}>
          <input
            type="checkbox"
            checked={picked.value.includes(figure)}
            disabled={!picked.value.includes(figure) && room <= 0}
            onChange={({ currentTarget }) => {
              const rest = picked.value.filter((each) => each !== figure);
              picked.value = currentTarget.checked ? [...rest, figure] : rest;
            }}
          />
          {figure.title}
        </label>
      ))}
    </fieldset>
  );
}

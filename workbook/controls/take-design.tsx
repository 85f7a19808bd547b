import type { Signal } from '@preact/signals';
import { useSheet } from '../store/context';
import type { Place, Taker } from '../store/taker';

interface TakeProps {
  readonly taker: Taker;
  readonly design: readonly Place[];
  onClose(): void;
}

/** What can be done with a design that a point or a row stands for. */
export function TakeDesign({ taker, design, onClose }: TakeProps) {
  const done = (take: Taker['set']) => () => {
    take(design);
    onClose();
  };
  return (
    <fieldset class="take-design">
      <legend>{taker.title(design)}</legend>
      <button type="button" class="word" onClick={done(taker.variant)}>
        Take this design as a variant
      </button>
      <button type="button" class="word" onClick={done(taker.set)}>
        Set the design to it
      </button>
      <button type="button" class="word quiet" onClick={onClose}>
        Close
      </button>
    </fieldset>
  );
}

/** The same for the row that was pressed in a table, while one is. */
export function TakeRow({ taken }: { taken: Signal<readonly Place[] | undefined> }) {
  const { taker } = useSheet();
  if (!taken.value) return null;
  return (
    <TakeDesign
      taker={taker}
      design={taken.value}
      onClose={() => {
        taken.value = undefined;
      }}
    />
  );
}

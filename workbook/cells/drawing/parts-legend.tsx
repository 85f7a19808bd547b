import type { DrawingCell } from '../../../engine/index';
import { goTo } from '../../controls/go-to';
import type { PlacedPart } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { Tick } from '../shared/tick';
import { partWords } from './placed-parts';

/** Whether the parts are drawn. */
export function PartsTick({ cell }: { cell: DrawingCell }) {
  const sheet = useSheet();
  const { parts: _, ...without } = cell;
  return (
    <Tick on={cell.parts === true} onChange={(on) => sheet.arrange(on ? { ...cell, parts: true } : without)}>
      Parts to scale
    </Tick>
  );
}

/** What the boxes and discs are, and what is said of the one that is taken. */
export function PartsLegend({ parts, taken }: { parts: readonly PlacedPart[]; taken: string | undefined }) {
  const sheet = useSheet();
  const part = parts.find(({ path }) => path === taken);
  const cell = part && sheet.cellHolding(`${part.path}.x`);
  return (
    <div class="parts-legend">
      <p class="aside">
        Parts of the tables: boxes are to scale; a dashed disc is a part without lengths, its area is its share of the
        moment about the CG.
      </p>
      <p class="aside" role="status" data-part-words>
        {part && partWords(sheet, part)}
      </p>
      {part && cell !== undefined && (
        <button
          type="button"
          class="word"
          onClick={(event) => {
            event.currentTarget.closest('dialog')?.close();
            goTo(sheet, { cell, path: `${part.path}.x` });
          }}
        >
          Go to its row
        </button>
      )}
    </div>
  );
}

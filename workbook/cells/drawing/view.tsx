import './style.css';
import { useSignal } from '@preact/signals';
import { useContext } from 'preact/hooks';
import type { DrawingCell } from '../../../engine/index';
import { goTo } from '../../controls/go-to';
import { SaveFigure } from '../../controls/save-figure';
import { type Arrangement, type PartsHand, type Place, type PlacedPart, ScaleDrawing } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { FigureWidth } from '../../store/figures';
import { printing } from '../../store/printing';
import { placeTexts } from '../parts/place';
import { Tick } from '../shared/tick';
import { movedTexts } from './move-part';
import { partWords, placedParts } from './placed-parts';

interface Props {
  readonly cell: DrawingCell;
  readonly arrangement?: Arrangement;
}

/** Plan and side view of the present design, with the baseline as a ghost; its parts to scale, and where a part is placed by a press. */
export function DrawingView({ cell, arrangement }: Props) {
  const sheet = useSheet();
  const taken = useSignal<string | undefined>(undefined);
  const snapshot = sheet.snapshot.value;
  const picking = sheet.picking.value;
  const inFigure = useContext(FigureWidth) !== undefined;
  if (!snapshot) return null;
  const { title } = cell;
  const pick = (place: Place, metresPerPixel: number): void => {
    if (!picking) return;
    sheet.picking.value = undefined;
    sheet.setTexts(placeTexts(picking.path, place, metresPerPixel, sheet.units()), `place of ${picking.title}`);
  };
  const at = (axis: string): number => sheet.value(`${picking?.path}.${axis}`);
  const strip = arrangement === 'strip';
  const looked = strip || inFigure || printing.value;
  const parts = cell.parts ? placedParts(sheet) : undefined;
  const hand: PartsHand = {
    taken,
    words: (part) => partWords(sheet, part),
    move(part, place, metresPerPixel) {
      const texts = movedTexts(sheet, part, place, metresPerPixel);
      if (texts.size > 0) sheet.dragTexts(texts, `place of ${part.title}`);
    },
    rest: sheet.rest,
  };
  return (
    <>
      <ScaleDrawing
        shapes={snapshot.drawing}
        ghost={snapshot.ghost}
        names={sheet.names.value}
        values={snapshot.values}
        title={title}
        arrangement={printing.value || inFigure ? 'paper' : arrangement}
        spot={picking && { x: at('x'), y: at('y'), z: at('z') }}
        onPick={picking && pick}
        parts={parts}
        hand={looked ? undefined : hand}
      />
      {parts && !strip && !inFigure && <PartsLegend parts={parts} taken={looked ? undefined : taken.value} />}
      {!strip && (
        <div class="drawing-words">
          {!looked && (
            <Tick on={cell.parts === true} onChange={(on) => sheet.arrange(withParts(cell, on))}>
              Parts to scale
            </Tick>
          )}
          <SaveFigure title={title} draw={() => <DrawingView cell={cell} />} />
        </div>
      )}
    </>
  );
}

function withParts({ parts: _, ...cell }: DrawingCell, on: boolean): DrawingCell {
  return on ? { ...cell, parts: true } : cell;
}

/** What the boxes and discs are, and what is said of the one that is taken. */
function PartsLegend({ parts, taken }: { parts: readonly PlacedPart[]; taken: string | undefined }) {
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
        <button type="button" class="word" onClick={() => goTo(sheet, { cell, path: `${part.path}.x` })}>
          Go to its row
        </button>
      )}
    </div>
  );
}

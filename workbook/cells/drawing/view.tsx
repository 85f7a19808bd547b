import './style.css';
import { useContext } from 'preact/hooks';
import type { DrawingCell } from '../../../engine/index';
import { along } from '../../controls/along';
import { SaveFigure } from '../../controls/save-figure';
import { type Arrangement, type Place, ScaleDrawing } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { FigureWidth } from '../../store/figures';
import { largeAsked } from '../../store/large-drawing';
import { printing } from '../../store/printing';
import { placeTexts } from '../parts/place';
import { usePartsHand } from './move-part';
import { PartsLegend, PartsTick } from './parts-legend';
import { placedParts } from './placed-parts';
import { PlanImage, usePlanImage } from './traced-plan';

interface Props {
  readonly cell: DrawingCell;
  readonly arrangement?: Arrangement;
}

/** Plan and side view of the present design, with the baseline as a ghost; its parts to scale, and where a part is placed by a press. */
export function DrawingView({ cell, arrangement }: Props) {
  const sheet = useSheet();
  const hand = usePartsHand();
  const snapshot = sheet.snapshot.value;
  const picking = sheet.picking.value;
  const inFigure = useContext(FigureWidth) !== undefined;
  const plan = printing.value && cell.plan?.printed ? cell.plan : undefined;
  const { image } = usePlanImage(cell.plan?.printed ? cell.plan : undefined);
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
        hand={looked || !parts ? undefined : hand}
        under={
          plan && image !== undefined ? (frame) => <PlanImage plan={plan} image={image} frame={frame} /> : undefined
        }
      />
      {parts && !strip && !inFigure && <PartsLegend parts={parts} taken={looked ? undefined : hand.taken.value} />}
      {!inFigure && (
        <div class="drawing-words">
          {!looked && <PartsTick cell={cell} />}
          {!printing.value && <Large cell={cell} />}
          {!strip && <SaveFigure title={title} draw={() => <DrawingView cell={cell} />} />}
        </div>
      )}
    </>
  );
}

/** One view by itself. */
function Large({ cell }: { cell: DrawingCell }) {
  return (
    <button
      type="button"
      class="word quiet large-word"
      {...along()}
      onClick={() => {
        largeAsked.value = cell.id;
      }}
    >
      Open large<span class="unseen"> {cell.title}: parts, outlines, a picture of your plan</span>
    </button>
  );
}

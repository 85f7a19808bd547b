import './style.css';
import { type Signal, useSignal } from '@preact/signals';
import { useContext, useMemo } from 'preact/hooks';
import type { DrawingCell } from '../../../engine/index';
import { along } from '../../controls/along';
import { SaveFigure } from '../../controls/save-figure';
import { type Arrangement, type PartsHand, type Place, ScaleDrawing, useFetched } from '../../drawing/index';
import { useSheet } from '../../store/context';
import { FigureWidth } from '../../store/figures';
import { printing } from '../../store/printing';
import type { Sheet } from '../../store/sheet';
import { placeTexts } from '../parts/place';
import type { LargeDrawing } from './large/index';
import { movedTexts } from './move-part';
import { PartsLegend, PartsTick } from './parts-legend';
import { partWords, placedParts } from './placed-parts';
import { PlanImage, usePlanImage } from './traced-plan';

interface Props {
  readonly cell: DrawingCell;
  readonly arrangement?: Arrangement;
}

/** Plan and side view of the present design, with the baseline as a ghost; its parts to scale, and where a part is placed by a press. */
export function DrawingView({ cell, arrangement }: Props) {
  const sheet = useSheet();
  const taken = useSignal<string | undefined>(undefined);
  const hand = useMemo(() => handOf(sheet, taken), [sheet, taken]);
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
      {parts && !strip && !inFigure && <PartsLegend parts={parts} taken={looked ? undefined : taken.value} />}
      {!inFigure && (
        <div class="drawing-words">
          {!looked && <PartsTick cell={cell} />}
          {!printing.value && <Large cell={cell} hand={hand} />}
          {!strip && <SaveFigure title={title} draw={() => <DrawingView cell={cell} />} />}
        </div>
      )}
    </>
  );
}

/** A part that a hand moves sets its texts, as one step. */
const handOf = (sheet: Sheet, taken: Signal<string | undefined>): PartsHand => ({
  taken,
  words: (part) => partWords(sheet, part),
  move(part, place, metresPerPixel) {
    const texts = movedTexts(sheet, part, place, metresPerPixel);
    if (texts.size > 0) sheet.dragTexts(texts, `place of ${part.title}`);
  },
  rest: sheet.rest,
});

/** One view by itself, fetched when it is asked for first. */
function Large({ cell, hand }: { cell: DrawingCell; hand: PartsHand }) {
  const open = useSignal(false);
  return (
    <>
      <button
        type="button"
        class="word quiet large-word"
        {...along()}
        onClick={() => {
          open.value = true;
        }}
      >
        Open large<span class="unseen"> {cell.title}: parts, outlines, a picture of your plan</span>
      </button>
      {open.value && (
        <LargeHere
          cell={cell}
          hand={hand}
          onClose={() => {
            open.value = false;
          }}
        />
      )}
    </>
  );
}

function LargeHere(props: Parameters<typeof LargeDrawing>[0]) {
  const Dialog = useFetched(
    () => largeDrawing,
    async () => {
      largeDrawing = (await import('./large/index')).LargeDrawing;
    },
  );
  return Dialog ? <Dialog {...props} /> : null;
}
let largeDrawing: typeof LargeDrawing | undefined;

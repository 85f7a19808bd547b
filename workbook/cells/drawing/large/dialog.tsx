import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { DrawingCell, TracedPlan } from '../../../../engine/index';
import { type Frame, ink, type PartsHand, type Place, ScaleDrawing } from '../../../drawing/index';
import { useSheet } from '../../../store/context';
import { usePartsHand } from '../move-part';
import { PartsLegend, PartsTick } from '../parts-legend';
import { placedParts } from '../placed-parts';
import { PlanImage, usePlanImage } from '../traced-plan';
import { cornerPlace, placesOf, withAdded, withInserted, withMoved } from './corner-places';
import { CornersOverlay } from './corners-overlay';
import { MoveOverlay } from './move-overlay';
import { keepTracing, OutlineTools, type Tracing } from './outline-tools';
import { onDrawing, roomOfPlan } from './placing';
import { type Placing, PlanTools, pressed } from './plan-tools';

type Shown = 'plan' | 'side';
const VIEWS: readonly (readonly [Shown, string])[] = [
  ['plan', 'Plan'],
  ['side', 'Side view'],
];

interface Props {
  readonly cell: DrawingCell;
  onClose(): void;
}

/** One view of the drawing as large as the window: its parts, outlines drawn by their corners, a picture of the plan under it. */
export function LargeDrawing({ cell, onClose }: Props) {
  const sheet = useSheet();
  const hand = usePartsHand();
  const dialog = useRef<HTMLDialogElement>(null);
  const view = useSignal<Shown>(cell.plan?.view ?? 'plan');
  const tracing = useSignal<Tracing | undefined>(undefined);
  const placing = useSignal<Placing | undefined>(undefined);
  useEffect(() => {
    dialog.current?.showModal();
  }, []);
  const { image, missing } = usePlanImage(cell.plan);
  const plan = cell.plan?.view === view.value ? cell.plan : undefined;
  const lay = (laid: TracedPlan): void => sheet.arrange({ ...cell, plan: laid });
  const turn = (to: Shown): void => {
    view.value = to;
    tracing.value = undefined;
    placing.value = undefined;
  };
  return (
    <dialog
      ref={dialog}
      class="open-dialog large-drawing"
      aria-labelledby="large-drawing-title"
      onClose={onClose}
      onCancel={(event) => {
        // Escape first leaves what is being done.
        if (!tracing.value && !placing.value) return;
        event.preventDefault();
        tracing.value = undefined;
        placing.value = undefined;
      }}
    >
      <div class="dialog-head">
        <h2 id="large-drawing-title">{cell.title}</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <div class="large-room">
        <div class="large-sheet">
          <LargeView {...{ cell, hand, image, plan, tracing, placing }} view={view.value} onLay={lay} />
        </div>
        <div class="large-tools">
          <fieldset class="large-views">
            <legend>View</legend>
            {VIEWS.map(([each, title]) => (
              <label key={each}>
                <input type="radio" name="large-view" checked={view.value === each} onChange={() => turn(each)} />
                {title}
              </label>
            ))}
          </fieldset>
          <PartsTick cell={cell} />
          <section aria-label="Outlines">
            <h3>Outlines</h3>
            <OutlineTools
              view={view.value}
              tracing={tracing}
              onBegin={() => {
                placing.value = undefined;
              }}
            />
          </section>
          <section aria-label="Picture of the plan">
            <h3>Picture of your plan</h3>
            <PlanTools
              cell={cell}
              view={view.value}
              placing={placing}
              missing={missing}
              onLay={lay}
              onBegin={() => {
                tracing.value = undefined;
              }}
            />
          </section>
        </div>
      </div>
    </dialog>
  );
}

interface ViewProps {
  readonly cell: DrawingCell;
  readonly hand: PartsHand;
  readonly view: Shown;
  readonly image: string | undefined;
  readonly plan: TracedPlan | undefined;
  readonly tracing: { value: Tracing | undefined };
  readonly placing: { value: Placing | undefined };
  onLay(plan: TracedPlan): void;
}

const AT_DATUM = { x: 0, y: 0, z: 0 };

function LargeView({ cell, hand, view, image, plan, tracing, placing, onLay }: ViewProps) {
  const sheet = useSheet();
  const snapshot = sheet.snapshot.value;
  if (!snapshot) return null;
  const set = sheet.units();
  const traced = tracing.value;
  const placed = traced ? undefined : placing.value;
  const points = placed && placed.does !== 'move' && plan ? placed.points : undefined;
  const press = (place: Place): void => {
    const at = onDrawing(place);
    if (traced) addCorner(traced, place);
    else if (placed && plan) {
      const next = pressed(plan, placed, at);
      placing.value = next.placing;
      if (next.plan) onLay(next.plan);
    }
  };
  const addCorner = (now: Tracing, place: Place): void => {
    const corner = cornerPlace(now.outline, place);
    if (!corner) return;
    const { texts, at } = now.anew
      ? { texts: withAdded(now.texts, corner, now.outline, set), at: now.texts.length }
      : withInserted(now.texts, corner, now.outline, set);
    keep({ ...now, texts, taken: at }, true);
  };
  const keep = (next: Tracing, rests: boolean, byKeys = false): void => {
    tracing.value = next;
    keepTracing(sheet, next, rests, byKeys);
  };
  const over = (frame: Frame) => {
    if (placed?.does === 'move' && plan) return <MoveOverlay frame={frame} plan={plan} set={set} onLay={onLay} />;
    if (points) return <Pressed frame={frame} view={view} points={points} />;
    if (!traced) return null;
    return (
      <CornersOverlay
        frame={frame}
        outline={traced.outline}
        places={placesOf(traced.texts, traced.outline, set)}
        unit={set === 'metric' ? 'mm' : 'in'}
        hand={{
          taken: traced.taken,
          take: (taken) => {
            tracing.value = { ...tracing.value!, taken };
          },
          move: (k, place) => {
            const now = tracing.value!;
            keep({ ...now, texts: withMoved(now.texts, k, place, now.outline, set) }, false);
          },
          rest: (byKeys) => keep(tracing.value!, true, byKeys),
          remove: (k) => {
            const now = tracing.value!;
            if (!now.anew && now.texts.length <= now.outline.least) return;
            keep({ ...now, texts: now.texts.toSpliced(k, 1), taken: undefined }, true);
          },
        }}
      />
    );
  };
  const pointing = traced !== undefined || points !== undefined;
  const byCross = traced?.anew === true || points !== undefined;
  const parts = cell.parts ? placedParts(sheet) : undefined;
  return (
    <>
      <ScaleDrawing
        shapes={snapshot.drawing.filter((shape) => shape.view === view)}
        names={sheet.names.value}
        values={snapshot.values}
        title={cell.title}
        also={plan && image !== undefined ? roomOfPlan(plan) : undefined}
        under={
          plan && image !== undefined ? (frame) => <PlanImage plan={plan} image={image} frame={frame} /> : undefined
        }
        over={over}
        spot={byCross ? AT_DATUM : undefined}
        onPick={pointing ? press : undefined}
        parts={parts}
        hand={parts && placed?.does !== 'move' ? hand : undefined}
      />
      {parts && <PartsLegend parts={parts} taken={hand.taken.value} />}
    </>
  );
}

/** The points that were pressed, and the line between them. */
function Pressed({
  frame,
  view,
  points,
}: {
  readonly frame: Frame;
  readonly view: Shown;
  readonly points: Placing['points'];
}) {
  const { origin } = frame.views[view]!;
  const at = points.map(({ right, down }) => ({ x: origin.x + right * frame.scale, y: origin.y + down * frame.scale }));
  return (
    <g stroke={ink('focus')} stroke-width={1.8} fill="none" data-pressed={points.length}>
      {at.map(({ x, y }) => (
        <path key={`${x} ${y}`} d={`M${x - 6},${y}h12M${x},${y - 6}v12`} />
      ))}
      {at.length === 2 && <path d={`M${at[0]!.x},${at[0]!.y}L${at[1]!.x},${at[1]!.y}`} stroke-dasharray="6 3" />}
    </g>
  );
}

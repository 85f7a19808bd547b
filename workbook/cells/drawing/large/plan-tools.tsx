import { type Signal, useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { type DrawingCell, formatQuantity, readEntry, type TracedPlan } from '../../../../engine/index';
import { useSheet } from '../../../store/context';
import { keepPicture } from '../../../store/keep/index';
import { Tick } from '../../shared/tick';
import { takePicture } from './picture-file';
import { firstPlace, movedTo, type OnDrawing, scaledBy, straightened, turnedBy } from './placing';

/** What presses on the drawing do to the picture. */
export interface Placing {
  readonly does: 'scale' | 'datum' | 'move';
  /** Points that were pressed. */
  readonly points: readonly OnDrawing[];
}

interface Props {
  readonly cell: DrawingCell;
  readonly view: TracedPlan['view'];
  readonly placing: Signal<Placing | undefined>;
  /** The picture is in neither the file nor this browser. */
  readonly missing: boolean;
  /** Changes how it lies: nothing to compute. */
  onLay(plan: TracedPlan): void;
  /** Presses on the drawing are for the picture from now on. */
  onBegin(): void;
}

/** A picture of the builder's own plan, laid under a view, scaled by two points, moved and turned. */
export function PlanTools({ cell, view, placing, missing, onLay, onBegin }: Props) {
  const { plan } = cell;
  if (!plan || plan.view !== view) return <TakePlan cell={cell} view={view} />;
  return (
    <div class="plan-tools">
      <p>
        “{plan.name}”{' '}
        {plan.image === undefined ? 'is kept beside the design, in this browser only' : 'is kept in the file'}. It is
        never sent anywhere.
      </p>
      {missing && (
        <p role="alert">
          The picture “{plan.name}” belongs to this design and isn’t on this machine: it was too fine for the file and
          lies in the browser of whoever laid it there. Remove it here and lay it anew.
        </p>
      )}
      <Placed plan={plan} placing={placing} onLay={onLay} onBegin={onBegin} />
      <RemovePlan cell={cell} />
    </div>
  );
}

function TakePlan({ cell, view }: Pick<Props, 'cell' | 'view'>) {
  const sheet = useSheet();
  const whole = useSignal(false);
  const said = useSignal('');
  const take = async (file: File): Promise<void> => {
    said.value = 'Reading the picture.';
    try {
      const { image, width, height } = await takePicture(file, whole.value);
      const kept = whole.value ? `${cell.id} ${Date.now()}` : undefined;
      if (kept !== undefined) await keepPicture(kept, image);
      const plan: TracedPlan = {
        ...{ view, name: file.name, width, height, opacity: 0.5 },
        ...(kept === undefined ? { image } : { kept }),
        ...firstPlace({ width, height }, view, sheet.snapshot.value?.drawing ?? []),
      };
      said.value = '';
      sheet.changeCell({ ...cell, plan });
    } catch (error) {
      said.value = error instanceof Error ? error.message : String(error);
    }
  };
  return (
    <div class="plan-tools">
      <label class="plan-file">
        Lay a picture of your plan under this view (PNG, JPEG or WebP)
        <input
          type="file"
          accept="image/png,image/jpeg,image/webp"
          onChange={({ currentTarget }) => {
            const [file] = currentTarget.files ?? [];
            if (file) void take(file);
            currentTarget.value = '';
          }}
        />
      </label>
      <Tick
        on={whole.value}
        onChange={(on) => {
          whole.value = on;
        }}
      >
        Keep it as fine as it is, in this browser alone
      </Tick>
      <p class="aside">
        It stays on this machine. In the file it takes 300{'\u00a0'}kB at most and is made coarser for that.
        {cell.plan && ` It takes the place of “${cell.plan.name}” under the other view.`}
      </p>
      <p role="status">{said.value}</p>
    </div>
  );
}

function RemovePlan({ cell }: { cell: DrawingCell }) {
  const sheet = useSheet();
  return (
    <button
      type="button"
      class="word"
      onClick={() => {
        const { plan: _, ...without } = cell;
        sheet.changeCell(without);
      }}
    >
      Remove the picture
    </button>
  );
}

const WORDS: Readonly<Record<Placing['does'], string>> = {
  scale: 'Press two points on the picture whose distance you know.',
  datum: 'Press where the leading edge of the wing meets the centreline: that point comes to lie at the datum.',
  move: 'Drag the picture; by keys the arrows move it, with Shift ten times as far.',
};

function Placed({
  plan,
  placing,
  onLay,
  onBegin,
}: { plan: TracedPlan } & Pick<Props, 'placing' | 'onLay' | 'onBegin'>) {
  const now = placing.value;
  const begin = (does: Placing['does']): void => {
    onBegin();
    placing.value = now?.does === does ? undefined : { does, points: [] };
  };
  return (
    <>
      <p class="commands">
        <button type="button" class="word" aria-pressed={now?.does === 'scale'} onClick={() => begin('scale')}>
          Scale by two points
        </button>
        <button type="button" class="word" aria-pressed={now?.does === 'datum'} onClick={() => begin('datum')}>
          Put its datum
        </button>
        <button type="button" class="word" aria-pressed={now?.does === 'move'} onClick={() => begin('move')}>
          Move it
        </button>
      </p>
      <p role="status">
        {now && (now.points.length === 1 ? 'And the second point.' : now.points.length === 0 ? WORDS[now.does] : '')}
      </p>
      {now?.does === 'scale' && now.points.length === 2 && (
        <TwoPoints plan={plan} from={now.points[0]!} to={now.points[1]!} placing={placing} onLay={onLay} />
      )}
      <Turn plan={plan} onLay={onLay} />
      <label class="plan-opacity">
        How strong it shows
        <input
          type="range"
          min={0.1}
          max={1}
          step={0.05}
          value={plan.opacity}
          onInput={({ currentTarget }) => onLay({ ...plan, opacity: Number(currentTarget.value) })}
        />
      </label>
      <Tick
        on={plan.printed === true}
        onChange={(on) => {
          const { printed: _, ...rest } = plan;
          onLay(on ? { ...rest, printed: true } : rest);
        }}
      >
        Print it with the drawing
      </Tick>
    </>
  );
}

interface TwoPointsProps extends Pick<Props, 'placing' | 'onLay'> {
  readonly plan: TracedPlan;
  readonly from: OnDrawing;
  readonly to: OnDrawing;
}

function TwoPoints({ plan, from, to, placing, onLay }: TwoPointsProps) {
  const sheet = useSheet();
  const unit = sheet.units() === 'metric' ? 'mm' : 'in';
  const entry = useRef<HTMLInputElement>(null);
  const said = useSignal('');
  const now = formatQuantity(Math.hypot(to.right - from.right, to.down - from.down), unit);
  const done = (laid: TracedPlan): void => {
    placing.value = undefined;
    onLay(laid);
  };
  const scale = (): void => {
    const read = readEntry(entry.current?.value ?? '', unit, sheet.units());
    if (!read.ok) said.value = read.fault.message;
    else {
      const laid = scaledBy(plan, from, to, read.si);
      if (laid) done(laid);
      else said.value = 'The two points lie in one place, or their distance is not above 0. Press them again.';
    }
  };
  return (
    <form
      class="two-points"
      onSubmit={(event) => {
        event.preventDefault();
        scale();
      }}
    >
      <label>
        Their distance on the model, {unit} (now {now})
        <input ref={entry} type="text" class="text-entry" name="distance" autocomplete="off" />
      </label>
      <button type="submit" class="word">
        Scale it so
      </button>
      <button type="button" class="word" onClick={() => done(straightened(plan, from, to))}>
        Turn it so that they lie level or upright
      </button>
      <p role="alert">{said.value}</p>
    </form>
  );
}

function Turn({ plan, onLay }: { plan: TracedPlan; onLay(plan: TracedPlan): void }) {
  const said = useSignal('');
  return (
    <label class="plan-turn">
      Turned clockwise
      <input
        type="text"
        class="text-entry"
        autocomplete="off"
        value={formatQuantity((plan.angle * Math.PI) / 180, '°')}
        onChange={({ currentTarget }) => {
          const read = readEntry(currentTarget.value, '°');
          said.value = read.ok ? '' : read.fault.message;
          if (read.ok) onLay(turnedBy(plan, plan, (read.si * 180) / Math.PI - plan.angle));
        }}
      />
      <span role="alert">{said.value}</span>
    </label>
  );
}

/** What a press does while the picture is being placed: the plan as it lies then, or one point more. */
export function pressed(plan: TracedPlan, placing: Placing, at: OnDrawing): { plan?: TracedPlan; placing?: Placing } {
  if (placing.does === 'datum') return { plan: movedTo(plan, at, { right: 0, down: 0 }) };
  return { placing: { ...placing, points: placing.points.length === 1 ? [placing.points[0]!, at] : [at] } };
}

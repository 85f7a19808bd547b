import type { JSX } from 'preact';
import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { formatQuantity } from '../../engine/index';
import { ink, LABEL_SIZE, useWidth } from '../drawing/index';
import { useSheet } from '../store/context';
import { fontFamily } from '../theme/tokens';
import type { PictureProps } from './props';
import { layOutTank } from './tank-layout';
import { readTankOutlines, type TankOutlines } from './tank-outlines';
import { TankViewPicture } from './tank-view';
import { type TankTold, tankSentences } from './tank-words';

const PLAIN_WIDTH = 560;
const LARGEST = 1400;
/** Of the large picture: least height, and what the slide and the words take of the window. */
const LEAST_HEIGHT = 320;
const BESIDE = 260;

const FULL = 1;
/** Where each slide stands, so that a picture that is drawn anew shows the same. */
const shares = new Map<string, number>();

/** The tank in its section with the fuel as it lies in flight and on the ground; a slide says how much is left. */
export function TankPicture({ cell, trace }: PictureProps): JSX.Element {
  const outlines = readTankOutlines(trace);
  const [host, width] = useWidth(PLAIN_WIDTH);
  const [share, slide] = useState(shares.get(cell.id) ?? FULL);
  const setShare = (to: number): void => {
    shares.set(cell.id, to);
    slide(to);
  };
  const [large, setLarge] = useState(false);
  const sheet = useSheet();
  const unit = trace.columns[0]!.unit;
  const told = {
    surfaceAngle: sheet.shown(`${cell.name}.surface_angle`),
    unusable: sheet.shown(`${cell.name}.unusable`),
    set: sheet.units(),
  };
  const shown = { outlines, share, unit, told, title: cell.title, onShare: setShare };
  return (
    <figure class="tank-picture" ref={host}>
      <Fuel {...shown} width={width} />
      <p>
        <button type="button" class="word" onClick={() => setLarge(true)}>
          See it large
        </button>
      </p>
      {large && <Large {...shown} onClose={() => setLarge(false)} />}
    </figure>
  );
}

interface FuelProps {
  readonly outlines: TankOutlines;
  /** Place of the slide, from empty to filled. */
  readonly share: number;
  readonly unit: string;
  readonly title: string;
  readonly told: TankTold;
  /** Of the picture, where there is more room than in a column. */
  readonly mostHeight?: number;
  onShare(share: number): void;
}

export function Fuel({
  outlines,
  share,
  unit,
  title,
  told,
  mostHeight,
  width,
  onShare,
}: FuelProps & { width: number }): JSX.Element {
  const fuel = `fuel-${useId()}`;
  const slide = useId();
  const most = outlines.levels.length - 1;
  const level = outlines.levels[Math.round(share * most)]!;
  const left = formatQuantity(level.left, unit);
  const layout = layOutTank(outlines, width, mostHeight);
  const all = [...outlines.still, ...level.outlines];
  const sentences = tankSentences(level.outlines, left, told);
  return (
    <>
      <svg
        role="img"
        aria-label={`How the fuel lies in ${title}. ${sentences.join(' ')}`}
        width={width}
        height={layout.height}
        viewBox={`0 0 ${width} ${layout.height}`}
        font-family={fontFamily}
        font-size={LABEL_SIZE}
        fill={ink('ink')}
      >
        <defs>
          <pattern id={fuel} width={14} height={8} patternUnits="userSpaceOnUse">
            <path
              d="M0,2h6M7,6h6"
              stroke={`var(--series-blue, ${ink('ink')})`}
              stroke-width={0.9}
              stroke-opacity={0.7}
            />
          </pattern>
        </defs>
        {layout.views.map((at) => (
          <TankViewPicture
            key={at.view}
            at={at}
            outlines={all.filter(({ view }) => view === at.view)}
            fuel={fuel}
            set={told.set}
          />
        ))}
      </svg>
      <div class="tank-slide">
        <label for={slide}>Fuel left</label>
        <input
          id={slide}
          type="range"
          min={0}
          max={most}
          step={1}
          value={Math.round(share * most)}
          aria-valuetext={left}
          onInput={({ currentTarget }) => onShare(Number(currentTarget.value) / most)}
        />
        <output for={slide} aria-live="off">
          {left}
        </output>
      </div>
      <figcaption class="chart-caption">{sentences.join(' ')}</figcaption>
    </>
  );
}

/** The same over the whole window. */
function Large({ onClose, ...shown }: FuelProps & { onClose(): void }): JSX.Element {
  const dialog = useRef<HTMLDialogElement>(null);
  const [host, width] = useWidth(PLAIN_WIDTH);
  useEffect(() => dialog.current?.showModal(), []);
  return (
    <dialog
      class="open-dialog tank-large"
      ref={dialog}
      aria-label={`How the fuel lies in ${shown.title}`}
      onClose={onClose}
    >
      <div ref={host}>
        <Fuel
          {...shown}
          width={Math.min(width, LARGEST)}
          mostHeight={Math.max(LEAST_HEIGHT, window.innerHeight - BESIDE)}
        />
      </div>
      <p>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </p>
    </dialog>
  );
}

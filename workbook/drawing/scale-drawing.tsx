import { type Signal, signal } from '@preact/signals';
import type { JSX } from 'preact';
import { useMemo, useRef } from 'preact/hooks';
import type { Shape } from '../../engine/index';
import { fontFamily } from '../theme/tokens';
import { arrowHead, type DimensionLine } from './dimensions';
import type { DrawnShape } from './drawn-shapes';
import { type Arrangement, type Frame, PIXELS_PER_METRE, type Place, placeAt } from './frame';
import type { Segment } from './geometry';
import { ink, LABEL_SIZE, LINE_HEIGHT, type LineKindName, SMALL_SIZE } from './ink';
import type { DrawnLabel } from './labels';
import { GhostSign } from './marks';
import { type PartsHand, PartsOverlay } from './parts-overlay';
import { layOutPicture, type Picture } from './picture';
import { type PlacedPart, roomOf } from './placed-part';
import { pathOf, round, ShapeLine, stroke } from './shape-line';
import { Crosses, lengthWords, placeWords, type Spot } from './spot';
import { pictureSummary } from './summary';
import { textWidth } from './text-width';
import { useWidth } from './use-width';
import type { Names } from './values';

export interface ScaleDrawingProps {
  /** The present design and, where there is a baseline, the baseline's. */
  readonly shapes: readonly Shape[];
  readonly ghost?: readonly Shape[] | undefined;
  readonly names: Names;
  readonly values: Float64Array;
  /** What is drawn: the first words of the summary that is read aloud. */
  readonly title: string;
  /** `column`: views one under the other; `strip`: side by side, low; `paper`: to a standard scale. */
  readonly arrangement?: Arrangement;
  /** Parts that are drawn to their size, and what a hand does to them. */
  readonly parts?: readonly PlacedPart[] | undefined;
  readonly hand?: PartsHand | undefined;
  /** What else the frame has to hold, and what is drawn under the model and over it. */
  readonly also?: readonly Shape[] | undefined;
  readonly under?: ((frame: Frame) => JSX.Element | null) | undefined;
  readonly over?: ((frame: Frame) => JSX.Element | null) | undefined;
  /** A part that is being placed: where it is now. Presses on the drawing are places for it. */
  readonly spot?: Spot | undefined;
  /** A press while a part is being placed; `metresPerPixel` says how fine it can be. */
  readonly onPick?: ((place: Place, metresPerPixel: number) => void) | undefined;
  /** Fixed width in pixels; missing: as wide as the place it stands in. */
  readonly width?: number;
}

function GhostLine({ shape }: { shape: DrawnShape }): JSX.Element {
  const at = shape.points[0]!;
  if (shape.kind === 'mark') return <GhostSign at={at} />;
  const attributes = { ...stroke('ghost', ink('muted')), fill: 'none' };
  return shape.kind === 'circle' ? (
    <circle cx={round(at.x)} cy={round(at.y)} r={round(shape.radius)} {...attributes} />
  ) : (
    <path d={pathOf(shape.points, shape.closed)} {...attributes} />
  );
}

const Line = ({ s, kind }: { s: Segment; kind: LineKindName }): JSX.Element => (
  <line x1={round(s.x0)} y1={round(s.y0)} x2={round(s.x1)} y2={round(s.y1)} {...stroke(kind)} />
);

function Dimension({ d }: { d: DimensionLine }): JSX.Element {
  return (
    <g data-dimension={d.key}>
      {d.extensions.map((s) => (
        <Line key={`${s.x0} ${s.y0}`} s={s} kind="thin" />
      ))}
      <path d={pathOf([d.from, d.to], false)} fill="none" {...stroke('thin')} />
      <path d={pathOf(arrowHead(d.from, d.to), true) + pathOf(arrowHead(d.to, d.from), true)} fill={ink('ink')} />
      <text x={round(d.textAt.x)} y={round(d.textAt.y)} text-anchor="middle">
        {d.text}
      </text>
    </g>
  );
}

/** Room of a line that stays free above its letters, px. */
const OVER_LETTERS = 2;

/** Every line of the drawing ends where words lie over it. */
function Label({ label }: { label: DrawnLabel }): JSX.Element {
  const { box, leader } = label.placed;
  const x =
    label.anchor === 'start' ? box.left + 2 : label.anchor === 'end' ? box.right - 2 : (box.left + box.right) / 2;
  return (
    <g data-label={label.placed.key}>
      {leader && <Line s={leader} kind="thin" />}
      {label.lines.map((line, k) => {
        const width = textWidth(line, LABEL_SIZE);
        const left = label.anchor === 'start' ? x : label.anchor === 'end' ? x - width : x - width / 2;
        return (
          <rect
            key={line}
            x={round(left - 1)}
            y={round(box.top + k * LINE_HEIGHT + OVER_LETTERS)}
            width={round(width + 2)}
            height={LINE_HEIGHT - OVER_LETTERS}
            fill={ink('paper')}
          />
        );
      })}
      <text
        text-anchor={label.anchor}
        font-weight={label.bold ? 700 : undefined}
        stroke={ink('paper')}
        stroke-width={3}
        stroke-linejoin="round"
        paint-order="stroke"
      >
        {label.lines.map((line, k) => (
          <tspan key={line} x={round(x)} y={round(box.top + k * LINE_HEIGHT + LABEL_SIZE - 0.5)}>
            {line}
          </tspan>
        ))}
      </text>
    </g>
  );
}

/** Arrow to the pilot's side, and the cut across the lines. */
function ToThePilot({ picture }: { picture: Picture }): JSX.Element | null {
  if (!picture.arrow) return null;
  const { x0, y0, x1, y1 } = picture.arrow;
  return (
    <g data-mark="pilot">
      <path d={pathOf(picture.breaks, false)} fill="none" {...stroke('thin')} />
      <Line s={picture.arrow} kind="thin" />
      <path d={pathOf(arrowHead({ x: x1, y: y1 }, { x: x0, y: y0 }, 9), true)} fill={ink('ink')} />
    </g>
  );
}

/** Narrower than this the words of the drawing leave no room for a long line. */
const ROOM_FOR_LONG = 360;

/** Shows whether the printer has kept the size. */
function PaperRule({ frame, unit }: { frame: Frame; unit: string }): JSX.Element {
  const inches = unit === 'in';
  const short = frame.width < ROOM_FOR_LONG;
  const metres = (inches ? 0.0508 : 0.05) / (short ? 2 : 1);
  const [right, y] = [frame.width - 2, frame.height - 4];
  const left = right - metres * PIXELS_PER_METRE;
  const length = inches ? `${short ? 1 : 2} in` : `${short ? 25 : 50} mm`;
  return (
    <g data-rule={length}>
      <path d={`M${round(left)},${y - 6}V${y}H${right}V${y - 6}`} fill="none" {...stroke('thin')} />
      <text
        x={short ? right : (left + right) / 2}
        y={short ? y - 8 : y - 4}
        text-anchor={short ? 'end' : 'middle'}
        font-size={SMALL_SIZE}
      >
        {`this line is ${length} long on paper`}
      </text>
    </g>
  );
}

interface DrawingProps extends Pick<ScaleDrawingProps, 'title' | 'onPick' | 'parts' | 'hand' | 'under' | 'over'> {
  readonly picture: Picture;
  readonly spot: Signal<Spot> | undefined;
}

function Drawing({ picture, title, spot, onPick, parts, hand, under, over }: DrawingProps): JSX.Element {
  const { frame } = picture;
  const press = (event: {
    readonly currentTarget: SVGSVGElement;
    readonly clientX: number;
    readonly clientY: number;
  }): void => {
    const { left, top, width } = event.currentTarget.getBoundingClientRect();
    const shrunk = frame.width / width;
    const at = { x: (event.clientX - left) * shrunk, y: (event.clientY - top) * shrunk };
    const place = placeAt(frame, at);
    if (place) onPick?.(place, 1 / frame.scale);
  };
  return (
    <svg
      role={onPick || hand || over ? 'group' : 'img'}
      class={onPick ? 'picking' : undefined}
      onPointerUp={onPick ? press : undefined}
      aria-label={pictureSummary(title, picture)}
      width={frame.width}
      height={frame.height}
      viewBox={`0 0 ${frame.width} ${frame.height}`}
      font-family={fontFamily}
      font-size={LABEL_SIZE}
      fill={ink('ink')}
      style={{ display: 'block', maxWidth: '100%', height: 'auto', fontVariantNumeric: 'tabular-nums' }}
    >
      {under?.(frame)}
      {picture.shapes
        .filter((s) => s.kind !== 'mark')
        .map((shape) => (
          <ShapeLine key={shape.key} shape={shape} bare={under !== undefined} />
        ))}
      {picture.ghost.map((shape) => (
        <GhostLine key={shape.key} shape={shape} />
      ))}
      {picture.centrelines.map((s) => (
        <Line key={`${s.x0} ${s.y0}`} s={s} kind="centre" />
      ))}
      <ToThePilot picture={picture} />
      {picture.dimensions.map((d) => (
        <Dimension key={d.key} d={d} />
      ))}
      {picture.captions.map((c) => (
        <text key={c.text} x={round(c.at.x)} y={round(c.at.y)} font-size={SMALL_SIZE} fill={ink('muted')}>
          {c.text}
        </text>
      ))}
      {parts && <PartsOverlay frame={frame} parts={parts} unit={picture.unit} hand={hand} />}
      {picture.shapes
        .filter((s) => s.kind === 'mark')
        .map((shape) => (
          <ShapeLine key={shape.key} shape={shape} />
        ))}
      {picture.labels.map((label) => (
        <Label key={label.placed.key} label={label} />
      ))}
      {over?.(frame)}
      {spot && onPick && <Crosses frame={frame} spot={spot} unit={picture.unit} onTake={(place) => onPick(place, 0)} />}
      <text x={2} y={frame.height - 6} font-size={SMALL_SIZE} fill={ink('muted')}>
        {`scale 1 : ${frame.denominator}, sizes in ${picture.unit === 'in' ? 'inches' : picture.unit}`}
      </text>
      {frame.arrangement === 'paper' && <PaperRule frame={frame} unit={picture.unit} />}
    </svg>
  );
}

/** Where the cross is, seen and read aloud as it moves. */
function CrossPlace({ spot, unit }: { spot: Signal<Spot>; unit: string }): JSX.Element {
  const { x, y, z } = spot.value;
  return (
    <p class="aside" role="status">
      {`The cross is at ${placeWords({ x, y }, unit)}, height ${lengthWords(z, unit)}.`}
    </p>
  );
}

/** A part whose place has no answer yet starts at the datum. */
const known = (spot: Spot): Spot => ({ x: spot.x || 0, y: spot.y || 0, z: spot.z || 0 });

/** Plan and side view of the model to scale, with its marks and their values, over what moved since the baseline. */
export function ScaleDrawing(props: ScaleDrawingProps): JSX.Element {
  const [ref, measured] = useWidth(props.width ?? 340);
  const before = useRef<Picture | undefined>(undefined);
  const picture = layOutPicture({
    shapes: props.shapes,
    ghost: props.ghost,
    names: props.names,
    values: props.values,
    arrangement: props.arrangement ?? 'column',
    width: props.width ?? measured,
    also: [...(props.also ?? []), ...(props.parts ? roomOf(props.parts) : [])].filter(({ view }) =>
      props.shapes.some((shape) => shape.view === view),
    ),
    before: before.current,
  });
  before.current = picture;
  const { spot, onPick } = props;
  const starts = spot !== undefined;
  // The cross starts where the part is and goes its own way until the place is taken.
  const cross = useMemo(() => (spot ? signal(known(spot)) : undefined), [starts]);
  return (
    <div ref={ref}>
      {picture ? (
        <Drawing
          picture={picture}
          title={props.title}
          spot={cross}
          onPick={onPick}
          parts={props.parts}
          hand={onPick ? undefined : props.hand}
          under={props.under}
          over={props.over}
        />
      ) : (
        <p>Nothing to draw yet: give the sheet a wing, a body or an engine.</p>
      )}
      {picture && cross && <CrossPlace spot={cross} unit={picture.unit} />}
      {picture && picture.unplaced.length > 0 && <p>{`No room on the drawing for: ${picture.unplaced.join('; ')}.`}</p>}
    </div>
  );
}

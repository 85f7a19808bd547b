import type { JSX } from 'preact';
import { ink, LABEL_SIZE, lineKinds, type Point, SMALL_SIZE, useWidth } from '../drawing/index';
import { fontFamily } from '../theme/tokens';
import { type Positions, positionsOf } from './linkage-joints';
import { type Label, type LinkagePage, layOutLinkage, linkageWords, type Stroke } from './linkage-layout';
import type { PictureProps } from './props';

/** Bellcrank, pushrod, horn and elevator: with the handle upright as full lines, full up and full down as broken ones. */
export function LinkagePicture({ cell, trace }: PictureProps): JSX.Element | null {
  const positions = positionsOf(trace);
  return positions ? <LinkageFigure title={cell.title} positions={positions} /> : null;
}

interface FigureProps {
  readonly title: string;
  readonly positions: Positions;
  /** Fixed width in pixels; missing: as wide as the place it stands in. */
  readonly width?: number;
}

export function LinkageFigure({ title, positions, width }: FigureProps): JSX.Element {
  const [ref, measured] = useWidth(width ?? 340);
  const page = layOutLinkage(positions, width ?? measured);
  return (
    <div ref={ref} class="linkage">
      <LinkageSvg title={linkageWords(title, positions)} page={page} />
      <p class="aside">
        Full lines: handle upright. Dashed: full up; dashed and dotted: full down. Both views at one scale; leadouts and
        pushrod are cut.
      </p>
    </div>
  );
}

const round = (v: number): number => Math.round(v * 10) / 10;
const pathOf = (points: readonly Point[], closed = false): string =>
  `M${points.map((p) => `${round(p.x)},${round(p.y)}`).join('L')}${closed ? 'Z' : ''}`;

const Line = ({ stroke: { kind, points, closed } }: { stroke: Stroke }): JSX.Element => (
  <path
    d={pathOf(points, closed)}
    fill="none"
    stroke={ink('ink')}
    stroke-width={lineKinds[kind].width}
    stroke-dasharray={lineKinds[kind].dash || undefined}
    stroke-linejoin="round"
  />
);

function Words({ label: { text, bold, placed } }: { label: Label }): JSX.Element {
  const { box, leader } = placed;
  return (
    <g data-label={placed.key}>
      {leader && (
        <line
          x1={round(leader.x0)}
          y1={round(leader.y0)}
          x2={round(leader.x1)}
          y2={round(leader.y1)}
          stroke={ink('muted')}
          stroke-width={lineKinds.thin.width}
        />
      )}
      <text
        x={round((box.left + box.right) / 2)}
        y={round(box.bottom - 3)}
        text-anchor="middle"
        font-weight={bold ? 700 : undefined}
        stroke={ink('paper')}
        stroke-width={3}
        stroke-linejoin="round"
        paint-order="stroke"
      >
        {text}
      </text>
    </g>
  );
}

function LinkageSvg({ title, page }: { title: string; page: LinkagePage }): JSX.Element {
  return (
    <svg
      role="img"
      aria-label={title}
      width={page.width}
      height={page.height}
      viewBox={`0 0 ${page.width} ${page.height}`}
      font-family={fontFamily}
      font-size={LABEL_SIZE}
      fill={ink('ink')}
      style={{ display: 'block', maxWidth: '100%', height: 'auto', fontVariantNumeric: 'tabular-nums' }}
    >
      {page.strokes.map((stroke) => (
        <Line key={stroke.key} stroke={stroke} />
      ))}
      {page.dots.map(({ key, at, radius, filled }) => (
        <circle
          key={`${key} ${round(at.x)}`}
          cx={round(at.x)}
          cy={round(at.y)}
          r={radius}
          fill={filled ? ink('ink') : ink('paper')}
          stroke={ink('ink')}
          stroke-width={1.2}
        />
      ))}
      {page.captions.map(({ text, at }) => (
        <text key={text} x={round(at.x)} y={round(at.y)} font-size={SMALL_SIZE} fill={ink('muted')}>
          {text}
        </text>
      ))}
      {page.labels.map((label) => (
        <Words key={label.placed.key} label={label} />
      ))}
    </svg>
  );
}

import type { Arranged } from './arrange';
import { CROSS, type PaperMark } from './marks';
import type { Tiling } from './tiles';

/** A template small, with the frames of the sheets that it goes over. */
export function Preview({ arranged, tiling }: { arranged: Arranged; tiling: Tiling }) {
  const { width, height, marks } = arranged;
  const [wide, high] = tiling.frame;
  const [right, low] = tiling.tiles.reduce(
    ([x, y], { from }) => [Math.max(x, from[0] + wide), Math.max(y, from[1] + high)],
    [width, height],
  );
  return (
    <svg class="template-preview" viewBox={`0 0 ${right} ${low}`} aria-hidden="true">
      {tiling.tiles.map(({ row, column, from: [x, y] }) => (
        <rect key={`${row} ${column}`} class="template-sheet" x={x} y={y} width={wide} height={high} />
      ))}
      {marks.map((mark, k) => (
        <Mark key={k} mark={mark} />
      ))}
    </svg>
  );
}

function Mark({ mark }: { mark: PaperMark }) {
  if (mark.is === 'words') {
    const [x, y] = mark.at;
    return (
      <text x={x} y={y} font-size={mark.size} font-weight={mark.bold ? 700 : 400}>
        {mark.text}
      </text>
    );
  }
  if (mark.is === 'hole') {
    const [x, y] = mark.at;
    const arm = mark.diameter / 2 + CROSS;
    return (
      <>
        <path class="template-thin" d={`M${x - arm},${y}H${x + arm}M${x},${y - arm}V${y + arm}`} />
        <circle class="template-cut" cx={x} cy={y} r={mark.diameter / 2} />
      </>
    );
  }
  const d = `M${mark.points.map((point) => point.join()).join('L')}${mark.closed ? 'Z' : ''}`;
  if (mark.is === 'wire') return <path class="template-wire" d={d} />;
  return <path class={mark.is === 'cut' ? 'template-cut' : 'template-thin'} d={d} />;
}

import type { Point } from '../../drawing/index';

const short = (v: number): string => String(Math.round(v * 100) / 100);

/** Path through points in order; a point that is not a number breaks it, one by itself is a dot. */
export function curvePath(points: readonly Point[]): string {
  let path = '';
  let drawn = 0;
  const end = (): void => {
    if (drawn === 1) path += 'Z';
    drawn = 0;
  };
  for (const { x, y } of points) {
    if (!Number.isFinite(x + y)) {
      end();
      continue;
    }
    path += `${drawn === 0 ? 'M' : 'L'}${short(x)},${short(y)}`;
    drawn++;
  }
  end();
  return path;
}

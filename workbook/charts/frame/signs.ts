import type { Point } from '../../drawing/index';

const short = (v: number): string => String(Math.round(v * 100) / 100);
const R = 3;

/** Outlines of the signs by which clouds are told apart, beside their colour: disc, square, triangle, diamond, cross. */
const SIGNS: readonly (readonly (readonly [number, number])[])[] = [
  Array.from({ length: 8 }, (_, k) => [R * Math.cos((k * Math.PI) / 4), R * Math.sin((k * Math.PI) / 4)] as const),
  [
    [-R + 0.4, -R + 0.4],
    [R - 0.4, -R + 0.4],
    [R - 0.4, R - 0.4],
    [-R + 0.4, R - 0.4],
  ],
  [
    [0, -R - 0.5],
    [R + 0.4, R - 0.5],
    [-R - 0.4, R - 0.5],
  ],
  [
    [0, -R - 1],
    [R, 0],
    [0, R + 1],
    [-R, 0],
  ],
  [
    [-1, -R - 0.5],
    [1, -R - 0.5],
    [1, -1],
    [R + 0.5, -1],
    [R + 0.5, 1],
    [1, 1],
    [1, R + 0.5],
    [-1, R + 0.5],
    [-1, 1],
    [-R - 0.5, 1],
    [-R - 0.5, -1],
    [-1, -1],
  ],
];

/** One path with the n-th sign at every point. */
export const signsPath = (points: readonly Point[], n: number): string =>
  points
    .map(({ x, y }) => `M${SIGNS[n % SIGNS.length]!.map(([dx, dy]) => `${short(x + dx)},${short(y + dy)}`).join('L')}Z`)
    .join('');

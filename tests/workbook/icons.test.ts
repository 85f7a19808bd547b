import { readFileSync } from 'node:fs';
import { inflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { iconPng, icons } from '../../.ci/icons.mjs';

/** Red of a pixel of a PNG whose rows are not filtered. */
function redOf(png: Buffer, size: number): (x: number, y: number) => number {
  const length = png.readUInt32BE(33);
  expect(png.subarray(37, 41).toString('latin1')).toBe('IDAT');
  const rows = inflateSync(png.subarray(41, 41 + length));
  return (x, y) => rows[Math.floor(y) * (1 + 3 * size) + 1 + 3 * Math.floor(x)]!;
}

test.each(icons)('$file is a square of its size with the mark of a centre of gravity', ({ size, scale }) => {
  const png = iconPng({ size, scale });
  expect([png.readUInt32BE(16), png.readUInt32BE(20)]).toEqual([size, size]);
  const red = redOf(png, size);
  const at = (x: number, y: number): number =>
    red(size / 2 + (x * scale * size) / 64, size / 2 + (y * scale * size) / 64);
  const [paper, ink] = [0xfb, 0x22];
  // Quarters in ink at the upper right and lower left, as in the picture for the tab; the ring all around.
  expect([at(10, -10), at(-10, 10), at(10, 10), at(-10, -10)]).toEqual([ink, ink, paper, paper]);
  for (const [x, y] of [
    [22, 3],
    [-22, 3],
    [3, 22],
    [3, -22],
  ] as const)
    expect(at(x, y)).toBe(ink);
  expect(red(1, 1)).toBe(paper);
});

test('a system may cut a maskable icon down to four fifths, and the mark stays', () => {
  const { scale } = icons.find(({ purpose }) => purpose === 'maskable')!;
  expect((24 / 32) * scale).toBeLessThan(0.8);
});

test('the tab has the same mark', () => {
  const svg = readFileSync(new URL('../../workbook/public/icon.svg', import.meta.url), 'utf8');
  expect(svg).toContain('<circle cx="32" cy="32" r="22" fill="#fbf8f0" stroke="#22313a" stroke-width="4"/>');
  expect(svg).toContain('d="M32 32 V10 A22 22 0 0 1 54 32 Z M32 32 V54 A22 22 0 0 1 10 32 Z" fill="#22313a"');
});

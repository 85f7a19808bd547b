// The icons of an installed page, drawn by the build: the mark of a centre of gravity, as in workbook/public/icon.svg.
import { crc32, deflateSync } from 'node:zlib';

/** Red, green and blue of paper and of ink. @type {[paper: number, ink: number][]} */
const COLOURS = [
  [0xfb, 0x22],
  [0xf8, 0x31],
  [0xf0, 0x3a],
];
/** Of a picture 64 wide: the middle of the ring's line, and half of that line. */
const [RADIUS, HALF] = [22, 2];
/** Points tried along each side of a pixel. */
const FINE = 4;

/** Sizes, px; of a maskable one the system may cut everything beyond four fifths off, so its mark is smaller. */
export const icons = [
  { file: 'icon-180.png', size: 180, scale: 1, purpose: '' },
  { file: 'icon-192.png', size: 192, scale: 1, purpose: 'any' },
  { file: 'icon-512.png', size: 512, scale: 1, purpose: 'any' },
  { file: 'icon-maskable-512.png', size: 512, scale: 0.8, purpose: 'maskable' },
];

/**
 * Whether a point is inked; x to the right and y down from the middle of a picture 64 wide.
 * @param {number} x
 * @param {number} y
 */
function isInk(x, y) {
  const far = Math.hypot(x, y);
  if (far > RADIUS + HALF) return false;
  return far > RADIUS - HALF || x * y < 0;
}

/**
 * How much of a pixel is inked: all or nothing where its corners agree, else by points within it.
 * @param {number} left
 * @param {number} top
 * @param {number} side
 */
function shareOf(left, top, side) {
  const corners = [0, side].flatMap((dx) => [0, side].map((dy) => isInk(left + dx, top + dy)));
  if (corners.every((ink) => ink === corners[0])) return corners[0] ? 1 : 0;
  let inked = 0;
  for (let k = 0; k < FINE * FINE; k++) {
    const [dx, dy] = [((k % FINE) + 0.5) / FINE, (Math.floor(k / FINE) + 0.5) / FINE];
    if (isInk(left + dx * side, top + dy * side)) inked++;
  }
  return inked / (FINE * FINE);
}

/**
 * One icon as a PNG (ISO/IEC 15948), eight bits of red, green and blue.
 * @param {{ size: number, scale: number }} icon
 */
export function iconPng({ size, scale }) {
  const rows = Buffer.alloc(size * (1 + 3 * size));
  const unit = 64 / size / scale;
  for (let y = 0; y < size; y++) {
    for (let x = 0; x < size; x++) {
      const share = shareOf((x - size / 2) * unit, (y - size / 2) * unit, unit);
      const at = y * (1 + 3 * size) + 1 + 3 * x;
      for (const [c, [paper, ink]] of COLOURS.entries()) rows[at + c] = Math.round(paper * (1 - share) + ink * share);
    }
  }
  const head = Buffer.alloc(13);
  head.writeUInt32BE(size, 0);
  head.writeUInt32BE(size, 4);
  head.set([8, 2, 0, 0, 0], 8);
  return Buffer.concat([
    Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]),
    chunk('IHDR', head),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}

/**
 * @param {string} name
 * @param {Buffer} data
 */
function chunk(name, data) {
  const body = Buffer.concat([Buffer.from(name, 'latin1'), data]);
  const out = Buffer.alloc(8 + body.length);
  out.writeUInt32BE(data.length, 0);
  body.copy(out, 4);
  out.writeUInt32BE(crc32(body), 4 + body.length);
  return out;
}

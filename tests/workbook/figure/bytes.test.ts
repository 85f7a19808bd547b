import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { crc32, deflateSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { withChunks } from '../../../workbook/figure/png-chunks';
import { readSfnt } from '../../../workbook/figure/sfnt';
import { thinFont } from '../../../workbook/figure/thin-font';
import { unpackWoff } from '../../../workbook/figure/woff';

const find = createRequire(import.meta.url);
const fileOf = (name: string): ArrayBuffer => {
  const bytes = readFileSync(find.resolve(name));
  return bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.byteLength) as ArrayBuffer;
};

test.each(['400', '700'])(
  'the typeface of weight %s is unpacked: every table has the sum that it says',
  async (weight) => {
    const font = await unpackWoff(fileOf(`@fontsource/b612/files/b612-latin-${weight}-normal.woff`));
    const view = new DataView(font.buffer);
    const count = view.getUint16(4);
    const tags: string[] = [];
    for (let k = 0; k < count; k++) {
      const at = 12 + 16 * k;
      const tag = String.fromCharCode(...font.subarray(at, at + 4));
      tags.push(tag);
      const [sum, offset, length] = [view.getUint32(at + 4), view.getUint32(at + 8), view.getUint32(at + 12)];
      expect(offset % 4).toBe(0);
      let found = 0;
      for (let n = 0; n < length; n += 4) {
        // The sum of the head leaves out its own field for the sum of the whole.
        if (tag === 'head' && n === 8) continue;
        let word = 0;
        for (let b = 0; b < 4; b++) word = word * 256 + (n + b < length ? font[offset + n + b]! : 0);
        found = (found + word) >>> 0;
      }
      expect(found, tag).toBe(sum);
    }
    expect(tags).toEqual(expect.arrayContaining(['cmap', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp']));
  },
);

test('a typeface is thinned to the outlines of some letters, with those that they are made of, and stays whole in all else', () => {
  const whole = fileOf('dejavu-fonts-ttf/ttf/DejaVuSans.ttf');
  const thin = thinFont(whole, new Set(['η', 'ά', '≤']));
  expect(thin.length).toBeLessThan(whole.byteLength / 4);
  const [before, after] = [readSfnt(whole), readSfnt(thin.buffer)];
  for (const name of ['cmap', 'hmtx', 'maxp', 'hhea']) expect([...after.get(name)!]).toEqual([...before.get(name)!]);
  const outlines = (tables: ReturnType<typeof readSfnt>): Map<number, string> => {
    const [glyf, loca] = [tables.get('glyf')!, tables.get('loca')!];
    const view = new DataView(loca.buffer, loca.byteOffset, loca.byteLength);
    const found = new Map<number, string>();
    for (let glyph = 0; glyph + 1 < loca.byteLength / 4; glyph++) {
      const bytes = glyf.subarray(view.getUint32(4 * glyph), view.getUint32(4 * glyph + 4));
      if (bytes.length > 0) found.set(glyph, Buffer.from(bytes).toString('base64'));
    }
    return found;
  };
  const [all, some] = [outlines(before), outlines(after)];
  // What stands for a missing letter, the three, and what ά is made of: α and its accent.
  expect(some.size).toBe(6);
  for (const [glyph, outline] of some) expect(outline).toBe(all.get(glyph));
});

test('what is no packed typeface is refused', async () => {
  await expect(unpackWoff(new ArrayBuffer(60))).rejects.toThrow(
    'This is no typeface packed as WOFF 1.0: its first four bytes are not “wOFF”.',
  );
});

test('a PNG says its dots an inch and what it shows, in chunks whose sums are right', () => {
  const chunk = (name: string, data: Uint8Array): Buffer => {
    const body = Buffer.concat([Buffer.from(name), data]);
    const [length, sum] = [Buffer.alloc(4), Buffer.alloc(4)];
    length.writeUInt32BE(data.length);
    sum.writeUInt32BE(crc32(body));
    return Buffer.concat([length, body, sum]);
  };
  const head = Buffer.from([0, 0, 0, 1, 0, 0, 0, 1, 8, 0, 0, 0, 0]);
  const dot = [chunk('IHDR', head), chunk('IDAT', deflateSync(Buffer.from([0, 255]))), chunk('IEND', Buffer.alloc(0))];
  const signature = Buffer.from([137, 80, 78, 71, 13, 10, 26, 10]);
  const png = Buffer.from(withChunks(Buffer.concat([signature, ...dot]), 300, 'Pull rises: η'));
  const told = Buffer.concat([
    signature,
    dot[0]!,
    chunk('pHYs', Buffer.from([0, 0, 0x2e, 0x23, 0, 0, 0x2e, 0x23, 1])),
    chunk('iTXt', Buffer.from('Description\0\0\0\0\0Pull rises: η')),
    ...dot.slice(1),
  ]);
  expect(png.equals(told)).toBe(true);
});

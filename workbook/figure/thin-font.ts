import { type FontTable, readSfnt, sumOf, tagOf, writeSfnt } from './sfnt';

/** Tables without which a browser takes no typeface, or which its outlines rest on. */
const KEPT = ['OS/2', 'cmap', 'cvt ', 'fpgm', 'glyf', 'head', 'hhea', 'hmtx', 'loca', 'maxp', 'name', 'post', 'prep'];
const TRUE_TYPE = 0x00010000;

/**
 * A TrueType typeface with the outlines of these letters alone: every other letter is blank. It is far smaller, and goes into a
 * file that shows only these.
 */
export function thinFont(file: ArrayBuffer, letters: ReadonlySet<string>): Uint8Array<ArrayBuffer> {
  const tables = readSfnt(file);
  const [glyf, loca, head] = [tables.get('glyf')!, viewOf(tables.get('loca')!), viewOf(tables.get('head')!)];
  const long = head.getInt16(50) === 1;
  const count = loca.byteLength / (long ? 4 : 2) - 1;
  const placeOf = (glyph: number): number => (long ? loca.getUint32(4 * glyph) : 2 * loca.getUint16(2 * glyph));
  const outline = (glyph: number): Uint8Array => glyf.subarray(placeOf(glyph), placeOf(glyph + 1));

  const kept = new Set([0]);
  const keep = (glyph: number): void => {
    if (kept.has(glyph)) return;
    kept.add(glyph);
    for (const part of partsOf(outline(glyph))) keep(part);
  };
  const find = lookUp(viewOf(tables.get('cmap')!));
  for (const letter of letters) keep(find(letter.codePointAt(0)!));

  const places = new DataView(new ArrayBuffer(4 * (count + 1)));
  const outlines: Uint8Array[] = [];
  let end = 0;
  for (let glyph = 0; glyph < count; glyph++) {
    places.setUint32(4 * glyph, end);
    if (!kept.has(glyph)) continue;
    outlines.push(outline(glyph));
    end += outline(glyph).length;
  }
  places.setUint32(4 * count, end);
  const newHead = new Uint8Array(tables.get('head')!);
  viewOf(newHead).setInt16(50, 1);
  const post = new Uint8Array(tables.get('post')!.subarray(0, 32));
  // Without the names of letters.
  viewOf(post).setUint32(0, 0x00030000);
  const made = new Map([
    ...tables,
    ...([
      ['glyf', joined(outlines, end)],
      ['loca', new Uint8Array(places.buffer)],
      ['head', newHead],
      ['post', post],
    ] as const),
  ]);
  return writeSfnt(
    TRUE_TYPE,
    KEPT.flatMap((name): FontTable[] => {
      const bytes = made.get(name);
      return bytes ? [{ tag: tagOf(name), sum: sumOf(bytes), bytes }] : [];
    }),
  );
}

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function joined(pieces: readonly Uint8Array[], length: number): Uint8Array {
  const out = new Uint8Array(length);
  let end = 0;
  for (const piece of pieces) {
    out.set(piece, end);
    end += piece.length;
  }
  return out;
}

/** Flags of the parts of an outline that is made of others. */
const WORDS = 1;
const SCALE = 8;
const MORE = 32;
const TWO_SCALES = 64;
const FOUR_SCALES = 128;

/** Letters that an outline is made of. */
function partsOf(outline: Uint8Array): readonly number[] {
  const view = viewOf(outline);
  const parts: number[] = [];
  if (outline.length === 0 || view.getInt16(0) >= 0) return parts;
  for (let at = 10, flags = MORE; flags & MORE; ) {
    flags = view.getUint16(at);
    parts.push(view.getUint16(at + 2));
    at += 4 + (flags & WORDS ? 4 : 2) + (flags & SCALE ? 2 : flags & TWO_SCALES ? 4 : flags & FOUR_SCALES ? 8 : 0);
  }
  return parts;
}

/** Finds a letter in the groups of a character map of format 12; 0 where it has none. */
function lookUp(cmap: DataView): (code: number) => number {
  const tables = Array.from({ length: cmap.getUint16(2) }, (_, k) => cmap.getUint32(4 + 8 * k + 4));
  const at = tables.find((place) => cmap.getUint16(place) === 12);
  if (at === undefined) throw new RangeError('This typeface has no character map of format 12.');
  const count = cmap.getUint32(at + 12);
  return (code) => {
    for (let k = 0; k < count; k++) {
      const group = at + 16 + 12 * k;
      const first = cmap.getUint32(group);
      if (code >= first && code <= cmap.getUint32(group + 4)) return cmap.getUint32(group + 8) + code - first;
    }
    return 0;
  };
}

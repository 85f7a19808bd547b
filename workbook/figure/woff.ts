/** Bytes of an entry in the directory of each format. */
const WOFF_ENTRY = 20;
const SFNT_ENTRY = 16;
const WOFF_HEAD = 44;
const SFNT_HEAD = 12;
const SIGNATURE = 0x774f4646;

/** A typeface packed as WOFF 1.0 (W3C Recommendation, 2012) as the TrueType file that was packed. RangeError where it is none. */
export async function unpackWoff(packed: ArrayBuffer): Promise<Uint8Array<ArrayBuffer>> {
  const view = new DataView(packed);
  if (packed.byteLength < WOFF_HEAD || view.getUint32(0) !== SIGNATURE) {
    throw new RangeError('This is no typeface packed as WOFF 1.0: its first four bytes are not “wOFF”.');
  }
  const count = view.getUint16(12);
  const tables = await Promise.all(
    Array.from({ length: count }, async (_, k) => {
      const at = WOFF_HEAD + k * WOFF_ENTRY;
      const [tag, offset, length, size, sum] = [0, 4, 8, 12, 16].map((place) => view.getUint32(at + place)) as [
        ...[number, number, number, number, number],
      ];
      const bytes = new Uint8Array(packed, offset, length);
      return { tag, sum, bytes: length < size ? await inflated(bytes) : bytes };
    }),
  );
  const whole = tables.reduce((end, { bytes }) => end + padded(bytes.length), SFNT_HEAD + count * SFNT_ENTRY);
  const out = new Uint8Array(whole);
  const head = new DataView(out.buffer);
  const power = 2 ** Math.floor(Math.log2(count));
  head.setUint32(0, view.getUint32(4));
  head.setUint16(4, count);
  head.setUint16(6, power * 16);
  head.setUint16(8, Math.log2(power));
  head.setUint16(10, (count - power) * 16);
  let end = SFNT_HEAD + count * SFNT_ENTRY;
  for (const [k, { tag, sum, bytes }] of tables.entries()) {
    for (const [n, value] of [tag, sum, end, bytes.length].entries()) {
      head.setUint32(SFNT_HEAD + k * SFNT_ENTRY + 4 * n, value);
    }
    out.set(bytes, end);
    end += padded(bytes.length);
  }
  return out;
}

const padded = (length: number): number => (length + 3) & ~3;

async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

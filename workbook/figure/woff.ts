import { writeSfnt } from './sfnt';

/** Bytes of an entry in its directory, and of what stands before that. */
const WOFF_ENTRY = 20;
const WOFF_HEAD = 44;
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
  return writeSfnt(view.getUint32(4), tables);
}

async function inflated(bytes: Uint8Array<ArrayBuffer>): Promise<Uint8Array<ArrayBuffer>> {
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream('deflate'));
  return new Uint8Array(await new Response(stream).arrayBuffer());
}

/** Bytes before the directory of a TrueType file, and of an entry in it. */
const HEAD = 12;
const ENTRY = 16;

/** A table of a TrueType or OpenType file (ISO/IEC 14496-22). */
export interface FontTable {
  /** Its name as a number: four letters. */
  readonly tag: number;
  /** Sum of its words. */
  readonly sum: number;
  readonly bytes: Uint8Array;
}

/** A file of these tables, in their order. */
export function writeSfnt(flavour: number, tables: readonly FontTable[]): Uint8Array<ArrayBuffer> {
  const count = tables.length;
  const whole = tables.reduce((end, { bytes }) => end + padded(bytes.length), HEAD + count * ENTRY);
  const out = new Uint8Array(whole);
  const head = new DataView(out.buffer);
  const power = 2 ** Math.floor(Math.log2(count));
  head.setUint32(0, flavour);
  head.setUint16(4, count);
  head.setUint16(6, power * 16);
  head.setUint16(8, Math.log2(power));
  head.setUint16(10, (count - power) * 16);
  let end = HEAD + count * ENTRY;
  for (const [k, { tag, sum, bytes }] of tables.entries()) {
    for (const [n, value] of [tag, sum, end, bytes.length].entries()) head.setUint32(HEAD + k * ENTRY + 4 * n, value);
    out.set(bytes, end);
    end += padded(bytes.length);
  }
  return out;
}

/** The tables of a file by their names. */
export function readSfnt(file: ArrayBuffer): ReadonlyMap<string, Uint8Array> {
  const view = new DataView(file);
  return new Map(
    Array.from({ length: view.getUint16(4) }, (_, k) => {
      const at = HEAD + k * ENTRY;
      const name = String.fromCharCode(...new Uint8Array(file, at, 4));
      return [name, new Uint8Array(file, view.getUint32(at + 8), view.getUint32(at + 12))] as const;
    }),
  );
}

export const tagOf = (name: string): number => [...name].reduce((tag, letter) => tag * 256 + letter.charCodeAt(0), 0);

/** Sum of the words of a table, which its last one is filled up for. */
export function sumOf(bytes: Uint8Array): number {
  let sum = 0;
  for (let n = 0; n < bytes.length; n += 4) {
    const word = [0, 1, 2, 3].reduce((all, b) => all * 256 + (bytes[n + b] ?? 0), 0);
    sum = (sum + word) >>> 0;
  }
  return sum;
}

const padded = (length: number): number => (length + 3) & ~3;

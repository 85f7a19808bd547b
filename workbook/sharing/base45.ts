/** The letters that a QR picture holds densest, in the order of RFC 9285. */
const LETTERS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:';
const BASE = LETTERS.length;

/** Bytes as letters: two of them as three letters, a last one as two (RFC 9285, base45). */
export function toBase45(bytes: Uint8Array): string {
  let text = '';
  for (let k = 0; k < bytes.length; k += 2) {
    const pair = k + 1 < bytes.length;
    let n = pair ? bytes[k]! * 256 + bytes[k + 1]! : bytes[k]!;
    for (let digit = 0; digit < (pair ? 3 : 2); digit++) {
      text += LETTERS[n % BASE];
      n = Math.floor(n / BASE);
    }
  }
  return text;
}

/** The bytes of such letters; undefined for what is none. */
export function fromBase45(text: string): Uint8Array<ArrayBuffer> | undefined {
  const bytes: number[] = [];
  for (let k = 0; k < text.length; k += 3) {
    const digits = [...text.slice(k, k + 3)].map((letter) => LETTERS.indexOf(letter));
    const n = digits.reduceRight((sum, digit) => sum * BASE + digit, 0);
    const most = digits.length === 3 ? 0xffff : 0xff;
    if (digits.length === 1 || digits.includes(-1) || n > most) return undefined;
    if (digits.length === 3) bytes.push(n >> 8);
    bytes.push(n & 0xff);
  }
  return Uint8Array.from(bytes);
}

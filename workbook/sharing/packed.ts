import { fromBase45, toBase45 } from './base45';

/** What every picture of a design begins with: what it is, which of how many, and what belongs together. */
const HEAD = /^TETHERWRIGHT ([0-9]+)\/([0-9]+) ([0-9A-Z]+):/;
/** Letters of one picture, so that a phone still reads it from a screen. */
const LETTERS_EACH = 1500;
/** More pictures than this are no longer read one after another by hand. */
export const MOST_PICTURES = 6;

/** A design as the texts of QR pictures, read in any order; undefined where it takes more of them than anybody shows. */
export async function packDesign(text: string): Promise<readonly string[] | undefined> {
  const plain = JSON.stringify(JSON.parse(text));
  const letters = toBase45(await through(new TextEncoder().encode(plain), new CompressionStream('deflate-raw')));
  const count = Math.ceil(letters.length / LETTERS_EACH);
  if (count > MOST_PICTURES) return undefined;
  const mark = markOf(letters);
  return Array.from({ length: count }, (_, k) => {
    const part = letters.slice(k * LETTERS_EACH, (k + 1) * LETTERS_EACH);
    return `TETHERWRIGHT ${k + 1}/${count} ${mark}:${part}`;
  });
}

/** What has been read of a design so far. */
export interface PartsRead {
  readonly mark: string;
  readonly count: number;
  /** Number of the picture, from 1 → its letters. */
  readonly parts: ReadonlyMap<number, string>;
}

/** Takes one more picture in; one of another design begins anew, and what is no such picture changes nothing. */
export function takePart(read: PartsRead | undefined, text: string): PartsRead | undefined {
  const found = HEAD.exec(text.trim());
  if (!found) return read;
  const [head, number, of, mark] = found as unknown as [string, string, string, string];
  const [k, count] = [Number(number), Number(of)];
  if (k < 1 || k > count || count > MOST_PICTURES) return read;
  const parts = read?.mark === mark && read.count === count ? read.parts : new Map<number, string>();
  return { mark, count, parts: new Map([...parts, [k, text.trim().slice(head.length)]]) };
}

/** Several texts that were pasted together, one a line. */
export const takePasted = (pasted: string): PartsRead | undefined =>
  pasted.split(/\r?\n/).reduce<PartsRead | undefined>((read, line) => takePart(read, line), undefined);

export const isWhole = ({ count, parts }: PartsRead): boolean => parts.size === count;

/** The text of the design of all pictures; undefined where they were misread. */
export async function unpackDesign({ mark, count, parts }: PartsRead): Promise<string | undefined> {
  const letters = Array.from({ length: count }, (_, k) => parts.get(k + 1) ?? '').join('');
  const bytes = markOf(letters) === mark ? fromBase45(letters) : undefined;
  if (!bytes) return undefined;
  try {
    return new TextDecoder().decode(await through(bytes, new DecompressionStream('deflate-raw')));
  } catch {
    return undefined;
  }
}

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream,
): Promise<Uint8Array<ArrayBuffer>> {
  const piped = new Blob([bytes]).stream().pipeThrough(stream);
  return new Uint8Array(await new Response(piped).arrayBuffer());
}

/** Tells pictures of one design from those of another, and a misread one. FNV-1a, 32 bits. */
function markOf(letters: string): string {
  let mark = 0x811c9dc5;
  for (let k = 0; k < letters.length; k++) mark = Math.imul(mark ^ letters.charCodeAt(k), 0x01000193);
  return (mark >>> 0).toString(36).toUpperCase();
}

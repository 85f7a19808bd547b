import { LARGEST_PICTURE } from '../../../../engine/index';

/** A file that is read at all, bytes: a scan of a plan at 300 dots an inch. */
const LARGEST_FILE = 40_000_000;
/** Side of a picture that is decoded at all, pixels. */
const LARGEST_SIDE = 20_000;

/** How the files of the kinds that are taken begin. */
const KINDS: readonly { readonly type: string; begins(bytes: Uint8Array): boolean }[] = [
  {
    type: 'image/png',
    begins: (b) => [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a].every((each, k) => b[k] === each),
  },
  { type: 'image/jpeg', begins: (b) => b[0] === 0xff && b[1] === 0xd8 && b[2] === 0xff },
  { type: 'image/webp', begins: (b) => ascii(b, 0) === 'RIFF' && ascii(b, 8) === 'WEBP' },
];
const ascii = (bytes: Uint8Array, from: number): string => String.fromCharCode(...bytes.slice(from, from + 4));

/** Why a file is no picture to lay under the drawing; undefined for one that may be. Only how it begins counts, not what it is called. */
export function refusalOf(name: string, size: number, begins: Uint8Array): string | undefined {
  if (size > LARGEST_FILE) {
    return `“${name}” has ${Math.round(size / 1e6)}\u00a0MB; a picture has ${LARGEST_FILE / 1e6}\u00a0MB at most. Scan it at fewer dots an inch, or save it smaller.`;
  }
  if (!KINDS.some((kind) => kind.begins(begins))) {
    return `“${name}” is no PNG, JPEG or WebP picture, and nothing else is taken: drawings that can carry a program are not. Save the plan as one of these.`;
  }
  return undefined;
}

/** A picture as it is kept: pixels alone, drawn anew, so that nothing else of its file is left. */
export interface TakenPicture {
  readonly image: string;
  readonly width: number;
  readonly height: number;
}

/** Longer sides at which a picture is tried, px, and how well it is packed, until it is small enough for the file. */
const SIDES = [2000, 1600, 1200, 900, 600];
const QUALITIES = [0.8, 0.6, 0.4];
/** A picture that is kept beside the design has this longer side at most, px. */
const WHOLE_SIDE = 5000;

/** Reads a picture. `whole`: as fine as it is, to be kept beside the design; else so small that the file can hold it. */
export async function takePicture(file: File, whole: boolean): Promise<TakenPicture> {
  const refused = refusalOf(file.name, file.size, new Uint8Array(await file.slice(0, 16).arrayBuffer()));
  if (refused) throw new Error(refused);
  const bitmap = await createImageBitmap(file).catch(() => undefined);
  if (!bitmap) throw new Error(`“${file.name}” can’t be read as a picture. Open it elsewhere and save it anew.`);
  const { width, height } = bitmap;
  try {
    if (width > LARGEST_SIDE || height > LARGEST_SIDE) {
      throw new Error(
        `“${file.name}” has ${width} × ${height} pixels; ${LARGEST_SIDE} a side is the most. Save it smaller.`,
      );
    }
    for (const side of whole ? [WHOLE_SIDE] : SIDES) {
      const canvas = shrunk(bitmap, side);
      for (const quality of QUALITIES) {
        const image = canvas.toDataURL('image/jpeg', quality);
        if (whole || image.length <= LARGEST_PICTURE) return { image, width: canvas.width, height: canvas.height };
      }
    }
  } finally {
    bitmap.close();
  }
  throw new Error(`“${file.name}” can’t be made small enough for the file. Keep it beside the design instead.`);
}

/** On white: what can be seen through would turn black. */
function shrunk(bitmap: ImageBitmap, side: number): HTMLCanvasElement {
  const by = Math.min(1, side / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * by));
  canvas.height = Math.max(1, Math.round(bitmap.height * by));
  const paint = canvas.getContext('2d');
  if (!paint) throw new Error('This browser can’t draw the picture. Try another one.');
  paint.fillStyle = 'white';
  paint.fillRect(0, 0, canvas.width, canvas.height);
  paint.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  return canvas;
}

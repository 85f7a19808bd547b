import plain from '@fontsource/b612/files/b612-latin-400-normal.woff?url';
import plainSmall from '@fontsource/b612/files/b612-latin-400-normal.woff2?url';
import bold from '@fontsource/b612/files/b612-latin-700-normal.woff?url';
import boldSmall from '@fontsource/b612/files/b612-latin-700-normal.woff2?url';
import signs from 'dejavu-fonts-ttf/ttf/DejaVuSans.ttf?url';

/** A face of a typeface. `small` is what a browser reads, `packed` what is unpacked for a PDF. */
interface Face {
  readonly family: string;
  readonly weight: 400 | 700;
  readonly small: string;
  readonly packed: string;
}

/** The sheet's own typeface. */
export const faces: readonly Face[] = [
  { family: 'B612', weight: 400, small: plainSmall, packed: plain },
  { family: 'B612', weight: 700, small: boldSmall, packed: bold },
];

/** What has the Greek letters and signs that it lacks. */
export const signFace = { family: 'DejaVu Sans', file: signs } as const;

/** Letters and signs that only it has, as the rule of the page says in fonts.css. */
export const SIGNS = /[\u02b0-\u02ff\u0370-\u03ff\u2070-\u209f\u2190-\u21ff\u2200-\u22ff\u25a0-\u25ff\u2700-\u27bf]/;

export async function fileAt(address: string): Promise<ArrayBuffer> {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error('A typeface of the figure could not be read. Load the page again.');
  return answer.arrayBuffer();
}

/** Bytes as base 64, in pieces that a call can take. */
export function base64(bytes: Uint8Array): string {
  const PIECE = 0x8000;
  let text = '';
  for (let from = 0; from < bytes.length; from += PIECE)
    text += String.fromCharCode(...bytes.subarray(from, from + PIECE));
  return btoa(text);
}

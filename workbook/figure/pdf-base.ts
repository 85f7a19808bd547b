import { jsPDF } from 'jspdf';
import { base64, faces, fileAt, signFace } from './fonts';
import { unpackWoff } from './woff';

export interface PdfWords {
  readonly title: string;
  /** What it shows, for those who don't see it. */
  readonly alt: string;
  /** Day of the design, "2026-11-28": the file says no other time, so that the same design has the same bytes. */
  readonly date: string;
}

interface PdfPaper {
  readonly unit: 'pt' | 'mm';
  /** Of its first page. */
  readonly width: number;
  readonly height: number;
}

/** A PDF that says what it is. `content`: what is in it as a text; its id goes by that, and by nothing else. */
export function newPdf({ unit, width, height }: PdfPaper, { title, alt, date }: PdfWords, content: string): jsPDF {
  const pdf = new jsPDF({
    ...{ unit, format: [width, height], orientation: width > height ? 'landscape' : 'portrait' },
    ...{ compress: true, putOnlyUsedFonts: true },
  });
  const day = /^\d{4}-\d{2}-\d{2}$/.test(date) ? date.replaceAll('-', '') : '20000101';
  pdf.setCreationDate(`D:${day}000000+00'00'`);
  pdf.setProperties({ title, subject: alt, creator: 'Tetherwright' });
  pdf.setFileId(idOf(content + day));
  pdf.setLanguage('en');
  return pdf;
}

/** Brings the sheet's own typeface. */
export async function addFaces(pdf: jsPDF): Promise<void> {
  for (const { family, weight, packed } of faces) {
    const name = `${family}-${weight}.ttf`;
    pdf.addFileToVFS(name, base64(await unpackWoff(await fileAt(packed))));
    pdf.addFont(name, family, weight === 700 ? 'bold' : 'normal');
  }
  pdf.setFont('B612', 'normal');
}

/** Brings the typeface of signs where these words have one that the other lacks; says whether. */
export async function addSigns(pdf: jsPDF, words: readonly string[]): Promise<boolean> {
  const letters = new Set(words.flatMap((text) => [...text]));
  if ([...letters].every((letter) => hasLetter(pdf, letter))) return false;
  pdf.addFileToVFS('signs.ttf', base64(new Uint8Array(await fileAt(signFace.file))));
  pdf.addFont('signs.ttf', signFace.family, 'normal');
  pdf.setFont('B612', 'normal');
  return true;
}

interface Metadata {
  characterToGlyph(code: number): number;
}

/** Whether the typeface that is set has a letter. */
export function hasLetter(pdf: jsPDF, letter: string): boolean {
  const { metadata } = pdf.getFont() as unknown as { readonly metadata: Metadata };
  return metadata.characterToGlyph(letter.codePointAt(0)!) !== 0;
}

/** A file has to have an id: one that goes by what is in it (FNV-1a, four times from other beginnings). */
function idOf(text: string): string {
  const parts = [0x811c9dc5, 0x01000193, 0x9e3779b9, 0x85ebca6b].map((start) => {
    let hash = start;
    for (let k = 0; k < text.length; k++) hash = Math.imul(hash ^ text.charCodeAt(k), 0x01000193);
    return (hash >>> 0).toString(16).padStart(8, '0').toUpperCase();
  });
  return parts.join('');
}

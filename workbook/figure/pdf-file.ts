import { jsPDF } from 'jspdf';
import { svg2pdf } from 'svg2pdf.js';
import { sizeInMm } from './compose';
import { base64, faces, fileAt, signFace } from './fonts';
import { paperUnderWords, spansOfSigns } from './pdf-text';
import { unpackWoff } from './woff';

const POINTS_PER_MM = 72 / 25.4;

export interface PdfWords {
  readonly title: string;
  /** What it shows, for those who don't see it. */
  readonly alt: string;
  /** Day of the design, "2026-11-28": the file says no other time, so that the same figure has the same bytes. */
  readonly date: string;
}

/** The figure as a PDF of one page of its size, with its typefaces in it: text stays text, lines stay lines. */
export async function pdfFile(figure: SVGSVGElement, { title, alt, date }: PdfWords): Promise<Uint8Array<ArrayBuffer>> {
  // In points: hatches are laid by them, whatever the unit of the page.
  const [width, height] = sizeInMm(figure).map((mm) => mm * POINTS_PER_MM) as [number, number];
  const pdf = new jsPDF({
    ...{ unit: 'pt', format: [width, height], orientation: width > height ? 'landscape' : 'portrait' },
    ...{ compress: true, putOnlyUsedFonts: true },
  });
  const svg = figure.cloneNode(true) as SVGSVGElement;
  await addFaces(pdf);
  paperUnderWords(svg);
  if (await addSigns(pdf, svg)) spansOfSigns(svg, (letter) => hasLetter(pdf, letter), signFace.family);
  const day = /^\d{4}-\d{2}-\d{2}$/.test(date) ? date.replaceAll('-', '') : '20000101';
  pdf.setCreationDate(`D:${day}000000+00'00'`);
  pdf.setProperties({ title, subject: alt, creator: 'Tetherwright' });
  pdf.setFileId(idOf(new XMLSerializer().serializeToString(svg) + day));
  pdf.setLanguage('en');
  await svg2pdf(svg, pdf, { x: 0, y: 0, width, height });
  return new Uint8Array(pdf.output('arraybuffer'));
}

async function addFaces(pdf: jsPDF): Promise<void> {
  for (const { family, weight, packed } of faces) {
    const name = `${family}-${weight}.ttf`;
    pdf.addFileToVFS(name, base64(await unpackWoff(await fileAt(packed))));
    pdf.addFont(name, family, weight === 700 ? 'bold' : 'normal');
  }
  pdf.setFont('B612', 'normal');
}

/** Brings the typeface of signs where the figure has one that the other lacks. */
async function addSigns(pdf: jsPDF, svg: SVGSVGElement): Promise<boolean> {
  const letters = new Set([...svg.querySelectorAll('text')].flatMap((text) => [...(text.textContent ?? '')]));
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
function hasLetter(pdf: jsPDF, letter: string): boolean {
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

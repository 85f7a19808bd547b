import { svg2pdf } from 'svg2pdf.js';
import { sizeInMm } from './compose';
import { signFace } from './fonts';
import { addFaces, addSigns, hasLetter, newPdf, type PdfWords } from './pdf-base';
import { paperUnderWords, spansOfSigns } from './pdf-text';

const POINTS_PER_MM = 72 / 25.4;

/** The figure as a PDF of one page of its size, with its typefaces in it: text stays text, lines stay lines. */
export async function pdfFile(figure: SVGSVGElement, words: PdfWords): Promise<Uint8Array<ArrayBuffer>> {
  // In points: hatches are laid by them, whatever the unit of the page.
  const [width, height] = sizeInMm(figure).map((mm) => mm * POINTS_PER_MM) as [number, number];
  const svg = figure.cloneNode(true) as SVGSVGElement;
  const pdf = newPdf({ unit: 'pt', width, height }, words, new XMLSerializer().serializeToString(svg));
  await addFaces(pdf);
  paperUnderWords(svg);
  const texts = [...svg.querySelectorAll('text')].map((text) => text.textContent ?? '');
  if (await addSigns(pdf, texts)) spansOfSigns(svg, (letter) => hasLetter(pdf, letter), signFace.family);
  await svg2pdf(svg, pdf, { x: 0, y: 0, width, height });
  return new Uint8Array(pdf.output('arraybuffer'));
}

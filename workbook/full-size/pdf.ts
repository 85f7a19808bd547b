import type { jsPDF } from 'jspdf';
import { signFace } from '../figure/fonts';
import { addFaces, addSigns, hasLetter, newPdf } from '../figure/pdf-base';
import { CROSS, type PaperMark } from './marks';
import type { TemplatePage } from './pages';

const POINTS_PER_MM = 72 / 25.4;

/** Thickness and dashes of lines, mm. */
const KINDS = {
  cut: { width: 0.25, dashes: [] },
  centre: { width: 0.13, dashes: [6, 1.5, 1, 1.5] },
  bend: { width: 0.13, dashes: [2, 1.2] },
  thin: { width: 0.1, dashes: [] },
  bar: { width: 0.25, dashes: [] },
} as const;
const WIRE_GREY = 205;

/** Templates as a PDF of their pages, true to size, with its typefaces in it. The same pages have the same bytes. */
export async function templatesPdf(
  pages: readonly TemplatePage[],
  words: { readonly title: string; readonly date: string },
): Promise<Uint8Array<ArrayBuffer>> {
  const [width, height] = pages[0]!.size;
  const told = { ...words, alt: `${words.title}: templates at full size.` };
  const pdf = newPdf({ unit: 'mm', width, height }, told, JSON.stringify(pages));
  await addFaces(pdf);
  const texts = pages.flatMap(({ inFrame, around }) =>
    [...inFrame, ...around].flatMap((mark) => (mark.is === 'words' ? [mark.text] : [])),
  );
  const signs = await addSigns(pdf, texts);
  for (const [k, { size, frame, inFrame, around }] of pages.entries()) {
    if (k > 0) pdf.addPage([...size], size[0] > size[1] ? 'landscape' : 'portrait');
    pdf.saveGraphicsState();
    pdf.rect(frame.x, frame.y, frame.width, frame.height, null).clip().discardPath();
    for (const mark of inFrame) draw(pdf, mark, signs);
    pdf.restoreGraphicsState();
    for (const mark of around) draw(pdf, mark, signs);
  }
  return new Uint8Array(pdf.output('arraybuffer'));
}

function draw(pdf: jsPDF, mark: PaperMark, signs: boolean): void {
  if (mark.is === 'words') {
    const lacking = signs && [...mark.text].some((letter) => !hasLetter(pdf, letter));
    if (lacking) pdf.setFont(signFace.family, 'normal');
    else if (mark.bold) pdf.setFont('B612', 'bold');
    pdf.setFontSize(mark.size * POINTS_PER_MM).text(mark.text, ...mark.at);
    pdf.setFont('B612', 'normal');
    return;
  }
  if (mark.is === 'hole') {
    const [x, y] = mark.at;
    const arm = mark.diameter / 2 + CROSS;
    pdf.setLineWidth(KINDS.thin.width).setLineDashPattern([], 0);
    pdf.line(x - arm, y, x + arm, y).line(x, y - arm, x, y + arm);
    if (mark.diameter > 0) pdf.setLineWidth(KINDS.cut.width).circle(x, y, mark.diameter / 2, 'S');
    return;
  }
  const wire = mark.is === 'wire';
  const { width, dashes } = mark.is === 'wire' ? { width: mark.width ?? 0, dashes: [] } : KINDS[mark.is];
  pdf
    .setLineWidth(width)
    .setLineDashPattern([...dashes], 0)
    .setLineJoin('round');
  pdf.setDrawColor(wire ? WIRE_GREY : 0);
  const [[x, y], ...rest] = mark.points as [readonly [number, number], ...(readonly [number, number])[]];
  pdf.moveTo(x, y);
  for (const point of rest) pdf.lineTo(...point);
  if (mark.closed) pdf.close();
  pdf.stroke();
  pdf.setDrawColor(0);
}

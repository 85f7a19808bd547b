import { fetched } from '../store/fetched';
import { fileName, saveFile, saveText } from '../store/files';
import type { PdfWords } from './pdf-base';

export const FORMATS = ['pdf', 'svg', 'png'] as const;
export type Format = (typeof FORMATS)[number];

export interface FigureFile extends PdfWords {
  readonly svg: SVGSVGElement;
  readonly format: Format;
  /** Of a PNG. */
  readonly dpi: number;
}

/** Hands the figure to the browser as a file to save. What makes a PDF comes when the first one is made. */
export async function saveFigure({ svg, format, dpi, ...words }: FigureFile): Promise<void> {
  const name = fileName(words.title, `.${format}`);
  if (format === 'svg') {
    const { svgFile } = await fetched(() => import('./svg-file'));
    saveText(await svgFile(svg), name, 'image/svg+xml');
  } else if (format === 'png') {
    const { pngFile } = await fetched(() => import('./png-file'));
    saveFile([await pngFile(svg, dpi, words.alt)], name, 'image/png');
  } else {
    const { pdfFile } = await fetched(() => import('./pdf-file'));
    saveFile([await pdfFile(svg, words)], name, 'application/pdf');
  }
}

/** Puts the figure on the clipboard as a picture. */
export async function copyFigure({ svg, dpi, alt }: Pick<FigureFile, 'svg' | 'dpi' | 'alt'>): Promise<void> {
  const { pngFile } = await fetched(() => import('./png-file'));
  const png = pngFile(svg, dpi, alt).then((bytes) => new Blob([bytes], { type: 'image/png' }));
  await navigator.clipboard.write([new ClipboardItem({ 'image/png': png })]);
}

import { sizeInMm } from './compose';
import { withChunks } from './png-chunks';
import { svgFile } from './svg-file';

const MM_PER_INCH = 25.4;

/** The figure as a PNG of so many dots an inch, which it says, with its alternative text. */
export async function pngFile(figure: SVGSVGElement, dpi: number, alt: string): Promise<Uint8Array<ArrayBuffer>> {
  const [wide, high] = sizeInMm(figure).map((mm) => Math.round((mm / MM_PER_INCH) * dpi)) as [number, number];
  const address = URL.createObjectURL(new Blob([await svgFile(figure)], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    const canvas = document.createElement('canvas');
    [canvas.width, canvas.height] = [wide, high];
    const paper = canvas.getContext('2d');
    if (!paper) throw new Error('This browser has no room for a picture of so many dots. Take fewer dots an inch.');
    paper.drawImage(image, 0, 0, wide, high);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
    if (!blob) throw new Error('This browser has no room for a picture of so many dots. Take fewer dots an inch.');
    return withChunks(new Uint8Array(await blob.arrayBuffer()), dpi, alt);
  } finally {
    URL.revokeObjectURL(address);
  }
}

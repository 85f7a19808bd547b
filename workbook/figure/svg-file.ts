import { base64, faces, fileAt, SIGNS, signFace } from './fonts';
import { thinFont } from './thin-font';

const SVG = 'http://www.w3.org/2000/svg';

/** The figure as the text of an SVG file, with the typeface in it: text stays text. */
export async function svgFile(figure: SVGSVGElement): Promise<string> {
  const copy = figure.cloneNode(true) as SVGSVGElement;
  const bold = copy.querySelector('[font-weight="700"]') !== null;
  const rules = await Promise.all(
    faces
      .filter(({ weight }) => weight === 400 || bold)
      .map(async ({ family, weight, small }) => {
        const bytes = base64(new Uint8Array(await fileAt(small)));
        return `@font-face{font-family:${family};font-weight:${weight};src:url(data:font/woff2;base64,${bytes}) format("woff2")}`;
      }),
  );
  const signs = new Set([...(copy.textContent ?? '')].filter((letter) => SIGNS.test(letter)));
  if (signs.size > 0) {
    const bytes = base64(thinFont(await fileAt(signFace.file), signs));
    rules.push(
      `@font-face{font-family:"${signFace.family}";src:url(data:font/ttf;base64,${bytes}) format("truetype")}`,
    );
  }
  const style = copy.ownerDocument.createElementNS(SVG, 'style');
  style.textContent = rules.join('');
  copy.querySelector('desc')!.after(style);
  return `${new XMLSerializer().serializeToString(copy)}\n`;
}

import { inflateSync } from 'node:zlib';

const MM_PER_POINT = 25.4 / 72;

/** A page of a PDF as its drawing commands have it, mm from its left top corner. */
export interface ReadPage {
  readonly width: number;
  readonly height: number;
  /** Runs of straight lines, each with the thickness in which it is drawn. */
  readonly runs: readonly { readonly points: readonly (readonly [number, number])[]; readonly width: number }[];
  /** Box that is left after clipping. */
  readonly clip: readonly [left: number, top: number, right: number, bottom: number];
}

/** Reads the lines of a PDF that has no transformations, as a printer would. */
export function readPdf(bytes: Uint8Array): readonly ReadPage[] {
  const file = Buffer.from(bytes).toString('latin1');
  const boxes = [...file.matchAll(/\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\.?\]/g)].map(([, w, h]) => [
    Number(w),
    Number(h),
  ]);
  const contents = [...file.matchAll(/\/Type \/Page\n[\s\S]*?\/Contents (\d+) 0 R/g)].map(([, id]) => id!);
  return contents.map((id, k) => {
    const start = file.indexOf('stream\n', file.indexOf(`\n${id} 0 obj`)) + 'stream\n'.length;
    const text = inflateSync(Buffer.from(file.slice(start, file.indexOf('\nendstream', start)), 'latin1')).toString();
    const [width, height] = boxes[k]!;
    return { ...linesOf(text, height!), width: width! * MM_PER_POINT, height: height! * MM_PER_POINT };
  });
}

function linesOf(text: string, height: number): Pick<ReadPage, 'runs' | 'clip'> {
  const runs: { points: (readonly [number, number])[]; width: number }[] = [];
  let [width, clip]: [number, ReadPage['clip']] = [0, [0, 0, 0, 0]];
  const stack: number[] = [];
  for (const word of text.split(/\s+/)) {
    if (word !== '' && Number.isFinite(Number(word))) {
      stack.push(Number(word));
      continue;
    }
    const place = (): readonly [number, number] => [stack[0]! * MM_PER_POINT, (height - stack[1]!) * MM_PER_POINT];
    if (word === 'm') runs.push({ points: [place()], width });
    if (word === 'l') runs.at(-1)!.points.push(place());
    if (word === 'w') width = stack[0]! * MM_PER_POINT;
    if (word === 're' && clip[2] === 0) {
      const [left, top] = place();
      const [wide, high] = [stack[2]! * MM_PER_POINT, -stack[3]! * MM_PER_POINT];
      clip = [left, top, left + wide, top + high];
    }
    if (word === 'cm') throw new RangeError('The page is transformed: its numbers are not those on paper.');
    stack.length = 0;
  }
  return { runs, clip };
}

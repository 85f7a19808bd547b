import type { Template } from '../../engine/index';
import { textWidth, wrapText } from '../drawing/index';
import { toldOnPaper, type UnitSet } from './figures';
import { CROSS, LINE, type PaperMark, type PaperPoint, TYPE } from './marks';

/** A template as one piece of paper, however large, mm. */
export interface Arranged {
  readonly width: number;
  readonly height: number;
  readonly marks: readonly PaperMark[];
}

interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

const MM = 1000;
const GAP = 8;
const EDGE = 3;
/** Width to which notes are broken, and views stand side by side, mm: it fits each paper upright. */
const ROW = 180;

/** The views of a template in rows, each with its title, and its notes below them. */
export function arrange({ views, notes }: Template, units: UnitSet): Arranged {
  const marks: PaperMark[] = [];
  const drawn = views.map(({ title, marks: own }) =>
    titled(
      title,
      own.map((mark) => onPaper(mark, units)),
    ),
  );
  const room = Math.max(ROW, ...drawn.map(({ width }) => width));
  let [x, y, deep, width] = [EDGE, EDGE, 0, 0];
  for (const view of drawn) {
    if (x > EDGE && x + view.width > EDGE + room) [x, y, deep] = [EDGE, y + deep + GAP, 0];
    const place = [x, y] as const;
    marks.push(...view.marks.map((mark) => moved(mark, ([left, top]) => [left + place[0], top + place[1]])));
    width = Math.max(width, x + view.width);
    deep = Math.max(deep, view.height);
    x += view.width + GAP;
  }
  y += deep + GAP;
  for (const text of notes.flatMap((note) => wrapText(toldOnPaper(note, units), TYPE, ROW))) {
    y += LINE;
    marks.push({ is: 'words', at: [EDGE, y], text, size: TYPE });
    width = Math.max(width, EDGE + textWidth(text, TYPE));
  }
  return { width: width + EDGE, height: y + EDGE, marks };
}

/** A view below its title, from 0 to its width and height. */
function titled(title: string, marks: readonly PaperMark[]): Arranged {
  const box = boxOf(marks);
  const top = LINE + GAP / 2;
  return {
    width: Math.max(box.right - box.left, textWidth(title, TYPE)),
    height: top + box.bottom - box.top,
    marks: [
      { is: 'words', at: [0, LINE], text: title, size: TYPE, bold: true },
      ...marks.map((mark) => moved(mark, ([x, y]) => [x - box.left, y - box.top + top])),
    ],
  };
}

type ViewMark = Template['views'][number]['marks'][number];

/** From metres, upward, to millimetres, downward. */
function onPaper(mark: ViewMark, units: UnitSet): PaperMark {
  const place = ([right, up]: readonly [number, number]): PaperPoint => [right * MM, -up * MM];
  if (mark.is === 'words') return { is: 'words', at: place(mark.at), text: toldOnPaper(mark, units), size: TYPE };
  if (mark.is === 'hole') return { is: 'hole', at: place(mark.at), diameter: mark.diameter * MM };
  const { width, points, ...rest } = mark;
  return { ...rest, points: points.map(place), ...(width === undefined ? {} : { width: width * MM }) };
}

function moved(mark: PaperMark, shift: (point: PaperPoint) => PaperPoint): PaperMark {
  return mark.is === 'words' || mark.is === 'hole'
    ? { ...mark, at: shift(mark.at) }
    : { ...mark, points: mark.points.map(shift) };
}

/** What a mark covers. */
export function boxOf(marks: readonly PaperMark[]): Box {
  const box = { left: Infinity, right: -Infinity, top: Infinity, bottom: -Infinity };
  const reach = ([x, y]: PaperPoint, by = 0): void => {
    box.left = Math.min(box.left, x - by);
    box.right = Math.max(box.right, x + by);
    box.top = Math.min(box.top, y - by);
    box.bottom = Math.max(box.bottom, y + by);
  };
  for (const mark of marks) {
    if (mark.is === 'hole') reach(mark.at, mark.diameter / 2 + CROSS);
    else if (mark.is === 'words') {
      reach([mark.at[0], mark.at[1] - mark.size]);
      reach([mark.at[0] + textWidth(mark.text, mark.size), mark.at[1]]);
    } else for (const point of mark.points) reach(point, (mark.width ?? 0) / 2);
  }
  return box;
}

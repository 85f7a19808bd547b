import type { Template } from '../../engine/index';
import { wrapText } from '../drawing/index';
import { arrange } from './arrange';
import type { UnitSet } from './figures';
import { LINE, type PaperLine, type PaperMark, TYPE } from './marks';
import { FOOT, MARGIN, OVERLAP, type Paper, type Tile, type Tiling, tile } from './tiles';

/** A page of a template, mm from its left top corner. */
export interface TemplatePage {
  readonly size: readonly [width: number, height: number];
  /** Within it stands what is cut off at its edges. */
  readonly frame: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
  readonly inFrame: readonly PaperMark[];
  /** Frame, foot and what tells where the next sheet lies. */
  readonly around: readonly PaperMark[];
}

export interface PageWords {
  readonly design: string;
  readonly date: string;
  readonly units: UnitSet;
}

export const CAUTION =
  'Print at actual size (100 %, not fitted to the page). Measure the bar on every sheet before you cut, drill or bend.';

/** The pages of templates, each template on pages of its own. */
export function pagesOf(templates: readonly Template[], paper: Paper, words: PageWords): readonly TemplatePage[] {
  return templates.flatMap((template) => {
    const arranged = arrange(template, words.units);
    const tiling = tile(arranged, paper);
    return tiling.tiles.map((each, k) => {
      const move = ([x, y]: readonly [number, number]) =>
        [x - each.from[0] + MARGIN, y - each.from[1] + MARGIN] as const;
      return {
        size: tiling.page,
        frame: { x: MARGIN, y: MARGIN, width: tiling.frame[0], height: tiling.frame[1] },
        inFrame: arranged.marks.map((mark) =>
          mark.is === 'words' || mark.is === 'hole'
            ? { ...mark, at: move(mark.at) }
            : { ...mark, points: mark.points.map(move) },
        ),
        around: [...frameOf(tiling), ...joins(tiling, each), ...foot(template.title, tiling, each, k, words)],
      };
    });
  });
}

const line = (is: PaperLine['is'], ...points: PaperLine['points']): PaperLine => ({ is, points });

const frameOf = ({ frame: [width, height] }: Tiling): PaperMark[] => [
  {
    is: 'thin',
    closed: true,
    points: [
      [MARGIN, MARGIN],
      [MARGIN + width, MARGIN],
      [MARGIN + width, MARGIN + height],
      [MARGIN, MARGIN + height],
    ],
  },
];

const ARM = 4;

/** Lines in the middle of what two sheets share, with crosses that come to lie on each other. */
function joins({ frame: [width, height], rows, columns }: Tiling, { row, column }: Tile): PaperMark[] {
  const marks: PaperMark[] = [];
  const half = OVERLAP / 2;
  const [left, top, right, low] = [MARGIN, MARGIN, MARGIN + width, MARGIN + height];
  const cross = (x: number, y: number): void => {
    marks.push(line('thin', [x - ARM, y], [x + ARM, y]), line('thin', [x, y - ARM], [x, y + ARM]));
  };
  const upright = [...(column > 0 ? [left + half] : []), ...(column < columns - 1 ? [right - half] : [])];
  const level = [...(row > 0 ? [top + half] : []), ...(row < rows - 1 ? [low - half] : [])];
  for (const x of upright) {
    marks.push(line('bend', [x, top], [x, low]));
    for (const share of [0.25, 0.75]) cross(x, top + share * height);
  }
  for (const y of level) {
    marks.push(line('bend', [left, y], [right, y]));
    for (const share of [0.25, 0.75]) cross(left + share * width, y);
  }
  return marks;
}

/** Lengths of the check bars, mm. */
const BAR = 100;
const INCH_BAR = 4 * 25.4;
const TICK = 1.5;
const WORDS_FROM = 112;

/** Title, which sheet this is, check bars and caution. */
function foot(title: string, tiling: Tiling, { row, column }: Tile, k: number, words: PageWords): PaperMark[] {
  const { page, rows, columns, tiles } = tiling;
  const top = page[1] - MARGIN - FOOT;
  const say = (text: string, x: number, y: number, bold?: true): PaperMark => ({
    ...{ is: 'words', at: [x, y], text, size: TYPE },
    ...(bold ? { bold } : {}),
  });
  const bar = (length: number, y: number, text: string): PaperMark[] => [
    line('bar', [MARGIN, y], [MARGIN + length, y]),
    line('bar', [MARGIN, y - TICK], [MARGIN, y + TICK]),
    line('bar', [MARGIN + length, y - TICK], [MARGIN + length, y + TICK]),
    say(text, MARGIN + 2, y - 1),
  ];
  const place =
    rows * columns === 1
      ? ''
      : `, row ${row + 1} of ${rows}, column ${column + 1} of ${columns}: cut on a dashed line, lay it on the next sheet’s`;
  const design = words.design || 'Untitled design';
  return [
    say(`${design}: ${title}`, MARGIN, top + LINE + 1, true),
    say(
      `${words.date === '' ? '' : `${words.date}. `}Full size. Sheet ${k + 1} of ${tiles.length}${place}.`,
      MARGIN,
      top + 2 * LINE + 1,
    ),
    ...bar(BAR, top + 16, 'Check bar: 100\u00a0mm'),
    ...(words.units === 'inch_pound' ? bar(INCH_BAR, top + 22, 'Check bar: 4\u00a0in') : []),
    ...wrapText(CAUTION, TYPE, page[0] - MARGIN - WORDS_FROM).map((text, n) =>
      say(text, WORDS_FROM, top + 3 * LINE + 1 + n * LINE),
    ),
  ];
}

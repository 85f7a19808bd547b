import { fromSI, type Part, type PartShape, type RowDescription, type UnitSet } from '../../../engine/index';

/** Of a shape: kinds of the trade that it is cut from, and which of its texts take thickness and width of one. */
interface Cut {
  readonly kinds: readonly string[];
  readonly texts: Readonly<Record<string, 'thickness' | 'width'>>;
}

const CUTS: Partial<Record<PartShape, Cut>> = {
  sheet: { kinds: ['sheets', 'ply'], texts: { thickness: 'thickness' } },
  rod: { kinds: ['dowels'], texts: { diameter: 'thickness' } },
  strip: { kinds: ['strips'], texts: { width: 'width', thickness: 'thickness' } },
  tapered: { kinds: ['sheets'], texts: { thickness: 'thickness' } },
  triangle: { kinds: ['triangles'], texts: { width: 'width', height: 'thickness' } },
  ribs: { kinds: ['sheets', 'ply'], texts: { thickness: 'thickness' } },
};

/** Sizes of the trade that a shape is cut from, those of the design's own units first. */
export function tradeSizes(shape: PartShape, rows: readonly RowDescription[], set: UnitSet): readonly RowDescription[] {
  const kinds = CUTS[shape]?.kinds ?? [];
  const fitting = rows.filter(({ group }) => kinds.includes(group));
  const own = fitting.filter((row) => unitOf(row) === (set === 'metric' ? 'mm' : 'in'));
  return [...own, ...fitting.filter((row) => !own.includes(row))];
}

/** What a part cut from a size of the trade says, as the trade writes it: 3/32 in, 2.5 mm. */
export function sizeTexts({ shape }: Part, row: RowDescription): readonly (readonly [field: string, text: string])[] {
  return Object.entries(CUTS[shape]?.texts ?? {}).map(([field, column]) => {
    return [field, sizeText(row.values[column]!, unitOf(row))] as const;
  });
}

const unitOf = ({ title }: RowDescription): 'mm' | 'in' => (title.endsWith(' mm') ? 'mm' : 'in');

/** Parts of an inch as rulers have them. */
const RULER = 64;

function sizeText(metres: number, unit: 'mm' | 'in'): string {
  const size = Number(fromSI(metres, unit).toPrecision(9));
  if (unit === 'mm') return `${size} mm`;
  const parts = Math.round(size * RULER);
  const [whole, rest] = [Math.floor(parts / RULER), parts % RULER];
  if (rest === 0) return `${whole} in`;
  let [over, under] = [rest, RULER];
  while (over % 2 === 0) [over, under] = [over / 2, under / 2];
  return `${whole === 0 ? '' : `${whole} `}${over}/${under} in`;
}

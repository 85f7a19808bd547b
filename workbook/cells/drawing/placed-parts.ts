import { type Part, partFields, textAt } from '../../../engine/index';
import { lengthWords, type PlacedPart } from '../../drawing/index';
import type { Sheet } from '../../store/sheet';

type Reads = Pick<Sheet, 'cells' | 'value' | 'shown' | 'name' | 'isComputed' | 'units' | 'document'>;

/** Shapes that are as round as they are thick. */
const ROUND: ReadonlySet<string> = new Set(['rod', 'tube']);

/** Every part of the design that has a place, as it is drawn. */
export function placedParts(sheet: Reads): PlacedPart[] {
  return sheet.cells.value.flatMap((cell) =>
    cell.kind === 'parts' ? cell.rows.flatMap((row) => placed(sheet, `${cell.name}.${row.name}`, row) ?? []) : [],
  );
}

function placed(sheet: Reads, path: string, row: Part): PlacedPart | undefined {
  const at = (axis: string): number => sheet.value(`${path}.${axis}`);
  const [x, y, z] = [at('x'), at('y') || 0, at('z') || 0];
  // What weighs nothing is not there.
  if (!Number.isFinite(x) || sheet.value(`${path}.mass`) === 0) return undefined;
  const size = sizeOf(row, at);
  const share = at('moment_share');
  return { path, title: row.title, at: { x, y, z }, size, round: ROUND.has(row.shape), share };
}

/** Typed lengths, the others from the shape: a stick as thick as it is, a sheet as thick as it is; nothing typed tells no size. */
function sizeOf(row: Part, at: (name: string) => number): PlacedPart['size'] {
  const typed = [at('size_x'), at('size_y'), at('size_z')];
  if (!typed.some((length) => length > 0)) return undefined;
  const has = new Set(partFields(row.shape).map(({ name }) => name));
  const thick = ['diameter', 'thickness', 'height'].flatMap((name) => (has.has(name) ? [at(name)] : []))[0] ?? 0;
  const [x, y, z] = typed.map((length) => (length > 0 ? length : thick || 0));
  return { x: x!, y: y!, z: z! };
}

/** How many texts a name is followed through: a part's station, the field it names, the slide that one names. */
const MOST_NAMES = 4;

/** The text that a length is set by: its own, or that of the one thing that it names; undefined where it is a formula. */
export function setBy(sheet: Pick<Reads, 'document' | 'name' | 'isComputed'>, path: string): string | undefined {
  let at = path;
  for (let k = 0; k < MOST_NAMES; k++) {
    const text = textAt(sheet.document.value, at)?.trim();
    if (text === undefined) return undefined;
    if (!sheet.isComputed(text, sheet.name(at)?.unit ?? '')) return at;
    if (!/^[\p{L}_][\w.]*$/u.test(text)) return undefined;
    at = text;
  }
  return undefined;
}

/** "Engine, 172 g: station −132 mm, 7 mm from the centreline, height 5 mm; 31 % of the moment, nose-heavy", and what holds it. */
export function partWords(sheet: Reads, part: PlacedPart): string {
  const unit = sheet.units() === 'metric' ? 'mm' : 'in';
  const { x, y, z } = part.at;
  const place = `station ${lengthWords(x, unit)}, ${lengthWords(y, unit)} from the centreline, height ${lengthWords(z, unit)}`;
  const share = Number.isFinite(part.share)
    ? `; ${Math.round(100 * Math.abs(part.share))}\u00a0% of the moment about the CG, ${part.share < 0 ? 'nose' : 'tail'}-heavy`
    : '';
  return [
    `${part.title}, ${sheet.shown(`${part.path}.mass`)}: ${place}${share}.`,
    sizeWords(part),
    ...heldWords(sheet, part),
  ]
    .filter(Boolean)
    .join(' ');
}

const sizeWords = ({ size }: PlacedPart): string =>
  size ? '' : 'Its lengths are not typed: it is drawn as a disc by its share of the moment.';

const AXES = [
  ['x', 'station'],
  ['y', 'distance from the centreline'],
  ['z', 'height'],
] as const;

/** Which of its lengths can't be dragged, and what else a drag sets. */
function heldWords(sheet: Reads, { path }: PlacedPart): string[] {
  return AXES.flatMap(([axis, word]): string[] => {
    const by = setBy(sheet, `${path}.${axis}`);
    if (by === undefined) {
      return [`Its ${word} is the formula “${textAt(sheet.document.value, `${path}.${axis}`)}” and is not dragged.`];
    }
    if (by === `${path}.${axis}`) return [];
    return [`Its ${word} is set by “${sheet.name(by)?.title ?? by}”, which a drag moves.`];
  });
}

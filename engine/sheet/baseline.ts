import type { BaselineDesign, Cell, CellKind, Document, Sheet } from './document';
import { putText, textAt } from './paths';
import { cellsOf } from './sheets';

/** Kinds of pieces that the design is made of: what they hold is compared with the baseline, and the baseline has its own. */
const DESIGN: ReadonlySet<CellKind> = new Set(['variables', 'choice', 'formula', 'model', 'parts']);
/** What is said of a design, measured on it, or asked about it is no part of it. */
const BESIDE: ReadonlySet<CellKind> = new Set([
  ...([
    'note',
    'log',
    'fit',
    'trial_series',
    'tolerances',
    'what_helps',
    'chart',
    'table',
    'drawing',
    'variants',
    'what_mends',
    'best_compromises',
    'weighing',
    'guess',
  ] as const),
]);
const SLIDE_LIMIT = /^(.*)\.(low|high|step)$/;

/** Whether the text at a path is part of the design: not what is said and asked of it, nor how far a slide goes. */
export function isCompared(document: Document, path: string): boolean {
  const [, ofSlide] = SLIDE_LIMIT.exec(path) ?? [];
  return !cellsOf(document).some(
    (cell) =>
      (BESIDE.has(cell.kind) && path.startsWith(`${cell.name}.`)) ||
      (cell.kind === 'variables' && cell.rows.some((row) => row.name === ofSlide)),
  );
}

/**
 * The document with one text replaced. The baseline stays the design that it was: where its text differs from the new one
 * it is kept, where they are the same again it is let go. Undefined where no text can stand at this path.
 */
export function withText(document: Document, path: string, text: string): Document | undefined {
  const before = textAt(document, path);
  const changed = before === undefined ? undefined : putText(document, path, text);
  if (before === undefined || !changed || !document.baseline || !isCompared(document, path)) return changed;
  const kept = document.baseline[path] ?? before;
  const { [path]: _, ...others } = document.baseline;
  return { ...changed, baseline: kept === text ? others : { ...others, [path]: kept } };
}

/** The design of the baseline; undefined where the document has none. Charts, studies and notes are those of today. */
export function baselineOf(document: Document): Document | undefined {
  const { baseline, baseline_design: then, ...present } = document;
  if (!baseline) return undefined;
  if (then) return { ...present, sheets: sheetsAsThen(present.sheets, then), rows: then.rows };
  let design: Document = present;
  for (const [path, text] of Object.entries(baseline)) {
    if (isCompared(document, path)) design = putText(design, path, text) ?? design;
  }
  return design;
}

export const isOfDesign = (cell: Cell): boolean => DESIGN.has(cell.kind);

/** Pieces of the baseline stand where they stand now; what is gone where it stood, else at the end of the first sheet. */
function sheetsAsThen(sheets: readonly Sheet[], then: BaselineDesign): readonly Sheet[] {
  const old = new Map(then.sheets.flatMap((sheet) => sheet.pieces.map((piece) => [piece.id, piece])));
  const here = new Set(sheets.flatMap((sheet) => sheet.pieces.map((piece) => piece.id)));
  const home = (id: string): string => sheets.find((sheet) => sheet.id === id)?.id ?? sheets[0]!.id;
  return sheets.map((sheet) => {
    const kept = sheet.pieces.flatMap((piece) => (isOfDesign(piece) ? (old.get(piece.id) ?? []) : piece));
    const gone = then.sheets
      .filter(({ id }) => home(id) === sheet.id)
      .flatMap(({ pieces }) => pieces.filter((piece) => !here.has(piece.id)));
    return { ...sheet, pieces: [...kept, ...gone] };
  });
}

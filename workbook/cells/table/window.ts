/** Height of a row, px: the same for all, so that any row's place is known without the others. A finger needs higher ones. */
export const ROW = 28;
export const FINGER_ROW = 46;
/** Browsers draw nothing beyond some height; a longer table is scrolled in larger steps. */
const MOST_HEIGHT = 8_000_000;
/** Rows beyond what is seen, so that a short scroll shows them at once. */
const BEYOND = 20;

/** The rows to draw, and the room that the others take. */
export interface RowWindow {
  readonly from: number;
  readonly to: number;
  /** px above the first and below the last of them. */
  readonly above: number;
  readonly below: number;
}

export function rowsAt(scrolled: number, height: number, rows: number, row = ROW): RowWindow {
  const whole = Math.min(rows * row, MOST_HEIGHT);
  const seen = Math.ceil(height / row);
  const last = Math.max(0, rows - seen);
  const most = Math.max(1, whole - height);
  const at = Math.min(Math.max(scrolled, 0), most);
  const exact = whole === rows * row ? at / row : (at / most) * last;
  const first = Math.min(Math.floor(exact), last);
  const from = Math.max(0, first - BEYOND);
  const to = Math.min(rows, first + seen + 1 + BEYOND);
  const drawn = (to - from) * row;
  const above = whole === rows * row ? from * row : Math.min(Math.max(0, at - (exact - from) * row), whole - drawn);
  return { from, to, above, below: Math.max(0, whole - above - drawn) };
}

/** Rows that are printed of a table: a page and a half. */
const PRINTED = 60;

/** The rows to print of those that are there. */
export const rowsOnPaper = (from: number, known: number): RowWindow => ({
  from,
  to: from + Math.min(known, PRINTED),
  above: 0,
  below: 0,
});

/** How far to scroll so that row `to` is the first one seen. */
export function scrollTo(to: number, height: number, rows: number, row = ROW): number {
  const whole = Math.min(rows * row, MOST_HEIGHT);
  if (whole === rows * row) return to * row;
  const last = Math.max(1, rows - Math.ceil(height / row));
  return (Math.min(to, last) / last) * (whole - height);
}

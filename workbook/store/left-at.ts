/** Where somebody was on the design when the reference was opened. Both pages read it, so it lies where both see it. */
export interface LeftAt {
  readonly design: string;
  /** Id of the sheet. */
  readonly sheet: string;
  /** What led away, as people call it: a piece, else the sheet. */
  readonly from: string;
  /** How far the page was scrolled, px. */
  readonly y: number;
}

const KEPT = 'tetherwright.left-at';
/** The page of the design among the pages of the browser, and the address that leads back to where it was. */
export const DESIGN_PAGE = 'tetherwright-design';
export const BACK = '#back';

export function keepLeftAt(place: LeftAt): void {
  try {
    localStorage.setItem(KEPT, JSON.stringify(place));
  } catch {
    // The way back then leads to the design as it opens.
  }
}

/** Undefined where nobody has come from a design, or the browser keeps nothing. */
export function leftAt(): LeftAt | undefined {
  try {
    const place: unknown = JSON.parse(localStorage.getItem(KEPT) ?? 'null');
    return isLeftAt(place) ? place : undefined;
  } catch {
    return undefined;
  }
}

const isLeftAt = (place: unknown): place is LeftAt => {
  if (typeof place !== 'object' || place === null) return false;
  const { design, sheet, from, y } = place as Record<string, unknown>;
  return [design, sheet, from].every((word) => typeof word === 'string') && typeof y === 'number';
};

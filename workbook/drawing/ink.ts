import { tokens } from '../theme/tokens';

/** A colour of the sheet as a custom property, so that another paper changes it; the token itself stands in where no sheet surrounds the drawing. */
export const ink = (name: keyof typeof tokens): string => `var(--${name}, ${tokens[name]})`;

/** Type sizes in pixels. */
export const LABEL_SIZE = 11;
export const SMALL_SIZE = 10;
export const LINE_HEIGHT = LABEL_SIZE + 2;
/** Radius of the sign of a mark. */
export const MARK_RADIUS = 6;

/** Line kinds of technical drawing, by ISO 128-2: widths in pixels (thick to thin about 2 : 1) and dashes. */
export interface LineKind {
  readonly width: number;
  readonly dash: string;
}
export const lineKinds = {
  /** Visible outlines: continuous wide. */
  outline: { width: 1.8, dash: '' },
  /** Small visible parts, dimensions, leaders: continuous narrow. */
  thin: { width: 0.9, dash: '' },
  /** Hidden outlines: dashed narrow. */
  hidden: { width: 0.9, dash: '5 2.5' },
  /** Centrelines and lines of symmetry: long-dashed dotted narrow. */
  centre: { width: 0.8, dash: '12 3 1.5 3' },
  /** Where a movable part stood before: long-dashed double-dotted narrow. */
  ghost: { width: 0.9, dash: '9 2.5 1.5 2.5 1.5 2.5' },
} as const satisfies Record<string, LineKind>;
export type LineKindName = keyof typeof lineKinds;

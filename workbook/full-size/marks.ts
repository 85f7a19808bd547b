/** A place on paper, mm: to the right and down. */
export type PaperPoint = readonly [x: number, y: number];

export interface PaperLine {
  readonly is: 'cut' | 'centre' | 'bend' | 'wire' | 'thin' | 'bar';
  readonly points: readonly PaperPoint[];
  readonly closed?: true;
  /** Of a wire, mm. */
  readonly width?: number;
}

interface PaperHole {
  readonly is: 'hole';
  readonly at: PaperPoint;
  readonly diameter: number;
}

interface PaperWords {
  readonly is: 'words';
  /** Where their first letter stands on its line. */
  readonly at: PaperPoint;
  readonly text: string;
  /** Size of type, mm. */
  readonly size: number;
  readonly bold?: true;
}

/** What is drawn on paper, true to size. */
export type PaperMark = PaperLine | PaperHole | PaperWords;

export const TYPE = 3;
export const LINE = 4.2;
/** Arms of the cross that marks a middle, mm beyond the hole. */
export const CROSS = 2.5;

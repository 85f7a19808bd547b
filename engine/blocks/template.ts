/** A number within words: metres or radians. */
export interface TemplateFigure {
  readonly value: number;
  readonly as: 'length' | 'angle';
}

/** Words whose `{}` stand for their figures in turn. */
interface TemplateWords {
  readonly words: string;
  readonly figures?: readonly TemplateFigure[];
}

/** Two numbers of a view, metres: to the right and up. */
export type TemplatePoint = readonly [right: number, up: number];

/** `cut`: an outline; `centre`: a line to measure from; `bend`: where something is bent, ends behind or may stand; `thin`: a length that is told; `wire`: as thick as `width`. */
export interface TemplateLine {
  readonly is: 'cut' | 'centre' | 'bend' | 'thin' | 'wire';
  readonly points: readonly TemplatePoint[];
  readonly closed?: true;
  readonly width?: number;
}

/** A hole with its middle; of diameter 0 the middle alone. */
export interface TemplateHole {
  readonly is: 'hole';
  readonly at: TemplatePoint;
  readonly diameter: number;
}

interface TemplateLabel extends TemplateWords {
  readonly is: 'words';
  readonly at: TemplatePoint;
}

export type TemplateMark = TemplateLine | TemplateHole | TemplateLabel;

export interface TemplateView {
  readonly title: string;
  readonly marks: readonly TemplateMark[];
}

/** What is laid on the work at full size: its views, each true to size, and what to know before it is cut or bent. */
export interface Template {
  readonly title: string;
  readonly views: readonly TemplateView[];
  readonly notes: readonly TemplateWords[];
}

export const metres = (value: number): TemplateFigure => ({ value, as: 'length' });
export const radians = (value: number): TemplateFigure => ({ value, as: 'angle' });

/** A number of the only piece that takes from the one whose templates are asked for, as `kind.result`; NaN where there is none. */
export type Told = (path: string) => number;

import type { Shape } from '../../engine/index';
import type { LineKindName } from './ink';

/** How a part of the model is drawn and what it is called. */
export interface PartStyle {
  readonly line: LineKindName;
  /** Closed outlines are filled with paper and hide what lies under them. */
  readonly filled: boolean;
  /** Order of drawing, low first. */
  readonly layer: number;
  /** What a builder calls it: labels and the list of what moved. */
  readonly word: string;
}

const outline = (layer: number, word: string): PartStyle => ({ line: 'outline', filled: true, layer, word });
const thin = (layer: number, word: string, filled = false): PartStyle => ({ line: 'thin', filled, layer, word });
const hidden = (layer: number, word: string): PartStyle => ({ line: 'hidden', filled: false, layer, word });

const styles: Readonly<Record<string, PartStyle>> = {
  wing: outline(1, 'wing'),
  stabiliser: outline(1, 'stabiliser'),
  elevator: outline(1, 'elevator'),
  fin: outline(2, 'fin'),
  rudder: outline(2, 'rudder'),
  wire: thin(2, 'gear wire'),
  body: outline(3, 'body'),
  tank: thin(4, 'tank', true),
  fuel: thin(4, 'fuel'),
  bearers: hidden(4, 'bearers'),
  engine_rearmost: hidden(4, 'engine at its rearmost'),
  shutoff: thin(5, 'shutoff', true),
  strap: thin(5, 'strap', true),
  engine: outline(5, 'engine'),
  motor: outline(5, 'motor'),
  head: thin(5, 'cylinder head', true),
  silencer: thin(5, 'silencer', true),
  propeller: thin(6, 'propeller', true),
  wheel: outline(6, 'wheel'),
  bellcrank: hidden(7, 'bellcrank'),
  leadout: hidden(7, 'leadout'),
  line: thin(7, 'lines'),
  ground: thin(0, 'ground at rest'),
  guide: thin(8, 'guide'),
  neutral_point: thin(8, 'neutral point'),
  engine_station: thin(8, 'engine'),
  motor_station: thin(8, 'motor'),
  cg: thin(9, 'CG'),
};

/** What stands before the body as it is seen in a view: wing and tail from the side, fin and rudder from above. */
const BEFORE_BODY: Readonly<Record<Shape['view'], readonly string[]>> = {
  plan: ['fin', 'rudder'],
  side: ['wing', 'stabiliser', 'elevator'],
};
const BEFORE_BODY_LAYER = 4;

const unknown = (part: string): PartStyle => thin(5, part.replaceAll('_', ' '));

export const partWord = (part: string): string => (styles[part] ?? unknown(part)).word;

/** A part that this list does not know is drawn as a thin line under its own name. */
export function partStyle(part: string, view: Shape['view']): PartStyle {
  const style = styles[part] ?? unknown(part);
  return BEFORE_BODY[view].includes(part) ? { ...style, layer: BEFORE_BODY_LAYER } : style;
}

import { lineDragAt } from '../line-drag';
import type { Constants } from './constants';
import type { Balance } from './loads';

/** What the lines take and how they press at the guide at V (m/s) in calm air, with slopes, into `b`: `lineDragAt`, pressStill + pressTurning V². */
export function linesInCalm(c: Constants, { speed }: { readonly speed: number }, b: Balance): void {
  const read = b.engine;
  read[0] = speed / c.radius;
  lineDragAt(c.line, read, 0);
  b.lineDrag = read[0]!;
  b.lineDragSlope = read[1]! / c.radius;
  b.linePress = c.pressStill + c.pressTurning * speed * speed;
  b.linePressSlope = 2 * c.pressTurning * speed;
}

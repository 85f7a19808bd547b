import type { TraceAnswer } from '../../../engine/index';

/** How a lap lies to the compass. */
export interface Compass {
  /** The model flies with the compass, seen from above. */
  readonly clockwise: boolean;
  /** Compass bearing (rad) of an angle, which grows in the direction of flight from straight downwind. */
  bearing(angle: number): number;
}

const TURN = 2 * Math.PI;
const turned = (angle: number): number => angle - TURN * Math.floor(angle / TURN);

/** Reads it off what runs around the lap, which tells angle and bearing of its places; undefined where it doesn't. */
export function readCompass({ columns, present }: TraceAnswer): Compass | undefined {
  const angles = present[0];
  const bearings = present[columns.findIndex(({ name }) => name === 'bearing')];
  const [a, next] = [angles?.[0], angles?.[1]];
  const [b, then] = [bearings?.[0], bearings?.[1]];
  if (a === undefined || b === undefined || next === undefined || then === undefined) return undefined;
  // Two neighbouring places lie less than half a turn apart.
  const sense = turned(then - b) < Math.PI === turned(next - a) < Math.PI ? 1 : -1;
  return { clockwise: sense === 1, bearing: (angle) => turned(b + sense * (angle - a)) };
}

/** "90°", as a compass is read: whole degrees, 360° is 0°. */
export const bearingText = (bearing: number): string => `${Math.round((bearing * 360) / TURN) % 360}°`;

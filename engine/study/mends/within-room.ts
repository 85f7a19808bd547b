import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { followsFrom } from '../make/reach';
import { typedSlot } from '../run/axis';
import type { Lever, NumberLever } from './levers';
import { type Flier, flierOf, placeFor } from './solve';

/**
 * A lever that goes no further than there is room for along the body, where the design has a piece that tells how far aft the engine can
 * go. What moves with the lever, as a tank that follows the engine, has moved there.
 */
export function withinRoom(lever: Lever, live: Live): Lever {
  if (lever.is !== 'number' || lever.cost !== 'nothing') return lever;
  const { document, program } = live.compiled;
  const room = cellsOf(document).find(
    (cell) => cell.kind === 'model' && live.compiled.role(cell.of) === 'room' && program.slotOf.has(`${cell.name}.aft`),
  )?.name;
  if (room === undefined) return lever;
  const aft = `${room}.aft`;
  if (!followsFrom(program, typedSlot(lever.path, program)).has(program.slotOf.get(aft)!)) return lever;
  const flier = flierOf(live, lever, aft, []);
  try {
    return limited(lever, room, flier);
  } finally {
    flier.finish();
  }
}

/** How far from the end of its room a lever is looked at, to tell on which side there is none, m. */
const NEAR = 1e-6;

function limited(lever: NumberLever, room: string, flier: Flier): NumberLever {
  const { travel } = lever;
  const end = placeFor(lever, 0, flier);
  if (Number.isNaN(end)) return lever;
  const [before, behind] = flier.at([end - NEAR, end + NEAR]).result;
  const low = before! < 0 ? Math.max(travel[0], end) : travel[0];
  const high = behind! < 0 ? Math.min(travel[1], end) : travel[1];
  return low === travel[0] && high === travel[1] ? lever : { ...lever, travel: [low, high], room };
}

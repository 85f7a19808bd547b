import { formatQuantity, shownUnit, type TankView, type UnitSet } from '../../engine/index';
import { headIn, type TankOutline } from './tank-outlines';

export const VIEW_TITLES: Readonly<Record<TankView, string>> = {
  plan: 'In flight, from above',
  end: 'In flight, from behind',
  rest: 'On its wheels, from the side',
};

/** Head of the fuel in the units of the design. */
export const headWords = (pa: number, set: UnitSet): string => formatQuantity(pa, shownUnit('Pa', set));

/** What the head at rest does. */
export const restWords = (head: number): string =>
  head > 0 ? 'above the spray bar: floods the engine' : 'below the spray bar: drains back';

/** Words of the tank's own results, as the sheet shows them. */
export interface TankTold {
  readonly surfaceAngle: string;
  readonly unusable: string;
  readonly set: UnitSet;
}

/** What the picture says with so much fuel left. */
export function tankSentences(outlines: readonly TankOutline[], left: string, told: TankTold): string[] {
  const pressure = (pa: number): string => headWords(pa, told.set);
  const flight = headIn(outlines, 'end');
  const rest = headIn(outlines, 'rest');
  return [
    flight === undefined
      ? `With ${left} left the pickup is uncovered in flight: the engine draws air.`
      : `With ${left} left the head in flight is ${pressure(flight)}: ${flight >= 0 ? 'fuel is pressed to the engine' : 'the engine must suck'}.`,
    `The fuel stands at ${told.surfaceAngle} to the wing; the pickup uncovers at ${told.unusable}.`,
    rest === undefined
      ? 'At rest the pickup is uncovered.'
      : `At rest the head is ${pressure(rest)}: fuel stands ${rest > 0 ? 'above the spray bar and floods the engine' : 'below the spray bar and drains back'}.`,
  ];
}

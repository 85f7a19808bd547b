import { bound, formatQuantity, type NameInfo, type WeighedPart, type WeighingAnswer } from '../../../engine/index';

/** How the masses and stations of a table are written. */
export interface Written {
  mass(value: number): string;
  at(value: number): string;
  /** "± 3.2 mm". */
  band(value: number): string;
}

export function writtenAs(mass: NameInfo | undefined, x: NameInfo | undefined): Written {
  const [massUnit, unit] = [mass?.unit ?? 'g', x?.unit ?? 'mm'];
  return {
    mass: (value) => formatQuantity(value, massUnit),
    at: (value) => formatQuantity(value, unit),
    band: (value) => bound('±', formatQuantity(value, unit, { difference: true })),
  };
}

export const percent = (share: number): string => formatQuantity(share, '%');

/** "It is estimated at 240 g. On the scale it takes 81 % of the band with it: ± 1.4 mm is left. By itself it may weigh 151 g." */
export function partSentences(
  { estimate, share, band, mayWeigh }: WeighedPart,
  { mass, band: left }: Written,
): readonly string[] {
  return [
    `Estimated at ${mass(estimate)}.`,
    ...(share > LEAST_SHARE
      ? [`Weighing it takes ${percent(share)} of what is unsure about the CG: ${left(band)} is left.`]
      : []),
    ...(Number.isNaN(mayWeigh)
      ? []
      : [`If all the rest is as counted, the CG lies where it is wanted with ${mass(mayWeigh)}.`]),
  ];
}

/** Less than this is nothing to weigh a part for. */
const LEAST_SHARE = 0.005;

/** What the parts that are still to be weighed may come to; '' where nothing is wanted or nothing is left. */
export function restSentence({ rest, wanted, within }: WeighingAnswer, { mass, at, band }: Written): string {
  if (!rest) return '';
  const there = `the CG to lie at ${at(wanted)}${within > 0 ? ` ${band(within)}` : ''}`;
  const is = `What is not weighed yet is estimated at ${mass(rest.mass)} together`;
  if (rest.may.status === 'none')
    return `${is}; whatever it weighs, it does not bring ${there}. Something has to move.`;
  const { least, most } = rest.may;
  const goes =
    rest.mass < least ? ': as estimated it is too light' : rest.mass > most ? ': as estimated it is too heavy' : '';
  if (most === Number.POSITIVE_INFINITY) {
    const may = least === 0 ? 'may weigh anything' : `has to weigh ${mass(least)} or more`;
    return `${is}; it ${may} for ${there}${goes}.`;
  }
  const [low, high] = [mass(least), mass(most)];
  return `${is}; it may weigh ${low === high ? low : `${low} to ${high}`} for ${there}${goes}.`;
}

/** What the chart of the CG shows, in a sentence. */
export function historySentence({ history }: WeighingAnswer, { at, band }: Written): string {
  const [first, last] = [history[0]!, history.at(-1)!];
  if (history.length === 1) return `The CG when finished, by estimates alone: ${at(last.x)} ${band(last.band)}.`;
  const count = history.length === 2 ? 'one' : `${history.length - 1}`;
  return `The CG when finished: ${at(first.x)} ${band(first.band)} before any part was weighed, ${at(last.x)} ${band(last.band)} after ${count}.`;
}

import {
  formatNumber,
  formatQuantity,
  type HeardFlight,
  type NoLaps,
  shownUnit,
  type Told,
  type Unheard,
  type UnitSet,
} from '../../engine/index';

const WHY: Readonly<Record<Unheard, string>> = {
  short: 'The sound is shorter than 3\u00a0s. Take at least three laps.',
  silent: 'There is nothing but silence in it. See that the microphone is the right one and not covered.',
  coarse: 'The sound has too few samples a second for this rpm. Record it with 16,000 or more.',
  'no tone':
    'No engine stands out of the noise near the rpm expected. Go out of the wind, take a quieter moment, or expect another rpm.',
  higher:
    'Only every second or third line of the spectrum is loud: it may turn two or three times as fast as expected. Expect another rpm.',
  lower:
    'Lines halfway between are nearly as loud: it may turn half as fast as expected, or fire every second turn. Expect another rpm.',
  elsewhere: 'What is heard lies more than 30\u00a0% from the rpm expected. Expect another rpm.',
  near: 'The model passes so near that its pitch drops too fast. Stand farther from the circle.',
  unsteady:
    'The pitch doesn’t swing as that of one model on level laps. Take three level laps, with no second model as loud.',
};

const NO_LAPS: Readonly<Record<NoLaps, string>> = {
  'no swing': 'The pitch doesn’t swing, so laps can’t be told. Stand outside the circle for laps.',
  few: 'No whole lap of level flight is in it, so laps can’t be told.',
  unsure: 'Laps can’t be told to within a few hundredths of a second.',
};

/** A turn a second is 2π rad/s. */
export const shaftSpeedOf = (turns: number): number => 2 * Math.PI * turns;

/** "10,240 rpm ± 20 rpm": as many digits as the error leaves. */
export const rpmWords = ({ value, error }: Told): string =>
  `${formatQuantity(shaftSpeedOf(value), 'rpm', { significant: 4 })} ± ${formatQuantity(shaftSpeedOf(error), 'rpm', { significant: 1 })}`;

/** Hundredths of a second; thousandths of its error. */
export const lapWords = ({ value, error }: Told): string =>
  `${value.toFixed(2)}\u00a0s ± ${Math.max(0.001, error).toFixed(3)}\u00a0s`;

/** The radius of the design by that which is heard: further off than this, something else was heard. */
const OTHER_CIRCLE = 0.15;

/** What was heard, or why it can't be told, in sentences. `radius`: of the design in flight, m; NaN where it has none. */
export function heardSentences(heard: HeardFlight, set: UnitSet, radius: number): readonly string[] {
  const { turns, lap, laps } = heard;
  if (typeof turns === 'string') return [`Can’t tell. ${WHY[turns]}`];
  const said = [`Engine speed ${rpmWords(turns)}.`];
  if (typeof lap === 'string') said.push(NO_LAPS[lap]);
  else
    said.push(`Lap ${lapWords(lap)}, ${laps.length === 1 ? 'one lap' : `mean of ${formatNumber(laps.length)} laps`}.`);
  if (heard.speed && heard.radius) said.push(...circleSentences(heard.speed, heard.radius, set, radius));
  said.push('± is one standard deviation.');
  return said;
}

function circleSentences(speed: Told, heard: Told, set: UnitSet, design: number): readonly string[] {
  const length = (si: number): string => formatQuantity(si, shownUnit('m', set));
  const fast = formatQuantity(speed.value, shownUnit('km/h', set));
  const off = (si: number, unit: string): string => formatQuantity(si, shownUnit(unit, set), { significant: 1 });
  const said = `By its swing it flies at ${fast} ± ${off(speed.error, 'km/h')} on a circle of ${length(heard.value)} ± ${off(heard.error, 'm')} radius`;
  if (!(design > 0)) return [`${said}.`];
  const other = Math.abs(heard.value / design - 1) > OTHER_CIRCLE;
  const beside = `${said}; the design has ${length(design)}.`;
  return other
    ? [beside, 'That is another circle: was another model heard, or did the phone stand inside it?']
    : [beside];
}

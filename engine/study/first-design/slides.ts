import { fromSI, type UnitSet } from '../../units/index';
import { type asked, readAny } from './form';

/** How far a slide goes, and in which steps, in the unit of its row. */
export interface Slide {
  readonly unit: string;
  readonly low: string;
  readonly high: string;
  readonly step: string;
}

const slide = (unit: string, low: string, high: string, step: string): Slide => ({ unit, low, high, step });
const both = (metric: Slide, inch_pound: Slide): Readonly<Record<UnitSet, Slide>> => ({ metric, inch_pound });
const POWER = slide('W', '30 W', '1500 W', '5');

/** The usual slides, in the units of either set. */
export const SLIDES = {
  span: both(slide('mm', '400 mm', '2000 mm', '5'), slide('in', '16 in', '80 in', '0.25')),
  chord: both(slide('mm', '60 mm', '500 mm', '1'), slide('in', '2.5 in', '20 in', '0.05')),
  engine_station: both(
    slide('mm', '-1.4 × chord', '-0.4 × chord', '1'),
    slide('in', '-1.4 × chord', '-0.4 × chord', '0.05'),
  ),
  tip_weight: both(slide('g', '0 g', '80 g', '0.5'), slide('oz', '0 oz', '3 oz', '0.02')),
  line_length: both(slide('m', '5 m', '25 m', '0.05'), slide('ft', '16 ft', '82 ft', '0.25')),
  guide_x: both(slide('mm', '0 mm', 'chord', '0.5'), slide('in', '0 in', 'chord', '0.02')),
  displacement: both(slide('cm³', '0.3 cm³', '15 cm³', '0.1'), slide('in³', '0.02 in³', '0.9 in³', '0.005')),
  motor_power: both(POWER, POWER),
  ballast: both(slide('g', '0 g', '100 g', '0.5'), slide('oz', '0 oz', '3.5 oz', '0.02')),
} as const;

/** Of the pull test over the weight. */
export const PULL_TEST: Slide = slide('', '5', '60', '1');

/** A slide wide enough for what was typed. */
export function around(field: keyof typeof asked, typed: string, { unit, low, high, step }: Slide): Slide {
  const si = readAny(field, typed);
  const [least, most] = [readAny(field, low), readAny(field, high)];
  const text = (value: number): string => `${Number(fromSI(value, unit).toPrecision(2))} ${unit}`;
  return {
    unit,
    low: si * 0.7 < least ? text(si * 0.7) : low,
    high: si * 1.4 > most ? text(si * 1.4) : high,
    step,
  };
}

/** Way of the guide both ways from where the model flies well, in chords: further it drags its tail or its nose. Common practice, no source. */
const GUIDE_WAY = 0.15;

/** The slide of a guide that has found its place (m). */
export function guideSlide(at: number, chord: number, set: UnitSet): Slide {
  const { unit, step } = SLIDES.guide_x[set];
  const whole = set === 'metric' ? 1 : 0.05;
  const text = (value: number): string =>
    `${Number((Math.round(fromSI(value, unit) / whole) * whole || 0).toFixed(2))} ${unit}`;
  return { unit, low: text(at - GUIDE_WAY * chord), high: text(at + GUIDE_WAY * chord), step };
}

/** The slide of a weight that balances the model, wide enough for so much (kg) and some more. */
export function ballastSlide(most: number, set: UnitSet): Slide {
  const usual = SLIDES.ballast[set];
  const whole = set === 'metric' ? 50 : 1;
  const wide = Math.ceil((fromSI(most, usual.unit) * 1.2) / whole) * whole;
  return most * 1.2 > readAny('weight', usual.high) ? { ...usual, high: `${wide} ${usual.unit}` } : usual;
}

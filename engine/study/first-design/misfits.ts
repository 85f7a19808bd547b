import { STANDARD_GRAVITY } from '../../physics/index';
import { inUnitsOf, type UnitSet, unparted } from '../../units/index';
import type { FirstDesignForm, FormProblem } from './told';

/** What was typed, in SI, with rules in place of what was not. */
export interface Sizes {
  readonly span: number;
  readonly chord: number;
  /** Of the engine, or of the engine that does the work of the motor, m³. */
  readonly displacement: number;
  readonly lineLength: number;
  readonly lapTime: number | undefined;
}

/** From the pilot's axis to the grip, and from the guide to the middle of the model, m (common practice, no source). */
const REACH = 1.1;

const CM3 = 1e-6;

/** Limits of what goes together (common practice, no source). */
const ASPECT = [2, 16] as const;
const AREA_PER_DISPLACEMENT = [0.8e-2 / CM3, 20e-2 / CM3] as const;
const LINE_PER_SPAN = [4, 60] as const;
/** From lines that hardly hang straight to a racer at its fastest. */
const PULL_PER_WEIGHT = [1.1, 50] as const;

const round = (x: number, digits = 3): string => String(Number(x.toPrecision(digits)));

/** Entries that are sensible each alone and make no model together. */
export function misfitsOf(sizes: Sizes, drive: FirstDesignForm['drive'], set: UnitSet): FormProblem[] {
  const { span, chord, displacement, lineLength, lapTime } = sizes;
  const problems: FormProblem[] = [];
  const outside = (x: number, [low, high]: readonly [number, number]): boolean => x < low || x > high;

  const aspect = span / chord;
  if (outside(aspect, ASPECT)) {
    problems.push({
      field: 'chord',
      message: `Mean chord: the span is ${round(aspect)} times the chord, and ${ASPECT[0]} to ${ASPECT[1]} times is taken. Look at span and chord.`,
    });
  }
  const area = span * chord;
  if (aspect >= ASPECT[0] && aspect <= ASPECT[1] && outside(area / displacement, AREA_PER_DISPLACEMENT)) {
    const [least, most] = [area / AREA_PER_DISPLACEMENT[1] / CM3, area / AREA_PER_DISPLACEMENT[0] / CM3];
    const found = inUnitsOf(`for a wing of ${round(area * 100)} dm²`, set, 3);
    problems.push(
      drive === 'engine'
        ? {
            field: 'displacement',
            message: `Engine: ${found} ${inUnitsOf(`from ${round(least, 2)} cm³ to ${round(most, 2)} cm³ is taken, and ${round(displacement / CM3, 2)} cm³ was typed`, set)}. Look at engine, span and chord.`,
          }
        : {
            field: 'motor_power',
            message: unparted(
              `Motor: ${found} from ${round(least * WATTS, 2)} W to ${round(most * WATTS, 2)} W is taken, and ${round((displacement / CM3) * WATTS, 3)} W was typed. Look at motor, span and chord.`,
            ),
          },
    );
  }
  if (outside(lineLength / span, LINE_PER_SPAN)) {
    const [low, high] = LINE_PER_SPAN;
    problems.push({
      field: 'line_length',
      message: `Line length: the lines are ${round(lineLength / span, 2)} times the span, and ${low} to ${high} times is taken. Look at line length and span.`,
    });
  }
  if (lapTime !== undefined) {
    const radius = lineLength + REACH;
    const speed = (2 * Math.PI * radius) / lapTime;
    const pull = speed ** 2 / (STANDARD_GRAVITY * radius);
    if (outside(pull, PULL_PER_WEIGHT)) {
      const [slow, fast] = PULL_PER_WEIGHT.map((g) => 2 * Math.PI * Math.sqrt(radius / (g * STANDARD_GRAVITY)));
      problems.push({
        field: 'lap_time',
        message: unparted(
          `Lap time: ${round(lapTime)} s on these lines is ${inUnitsOf(`${round(speed, 2)} m/s`, set)} and a pull of ${round(pull, 2)} times the weight; ${round(fast!, 2)} to ${round(slow!, 2)} s is taken. Look at lap time and line length.`,
        ),
      });
    }
  }
  return problems;
}

/** Watts of a motor that does the work of an engine of one cubic centimetre; the same rule stands in the sheet. */
export const WATTS = 370 / 4.1;

import { readCsv } from '../../engine/library/csv';
import movingText from './propeller_dynamic.csv?raw';
import bladeText from './propeller_geometry.csv?raw';
import stillText from './propeller_static.csv?raw';

/*
 * J. B. Brandt, R. W. Deters, G. K. Ananda, O. D. Dantsker and M. S. Selig, UIUC Propeller Database, volumes 1 to 4,
 * University of Illinois at Urbana-Champaign (AIAA 2011-1255, AIAA 2014-2151): measured in a wind tunnel, two blades. The copy had lost the closing
 * zeros of some revolutions at rest (307 for 3070); they are put back, which leaves every set in rising order.
 */
const INCH = 0.0254;
const DEGREE = Math.PI / 180;
const rowsOf = (text: string) =>
  readCsv(text).map(({ values }) => ({
    values,
    propeller: values.propeller_diameter_x_pitch_in!,
    number: (column: string): number => Number(values[column]),
  }));

export interface MeasuredState {
  /** Revolutions a minute. */
  readonly rpm: number;
  readonly J: number;
  readonly CT: number;
  readonly CP: number;
}

export interface BladeStation {
  readonly radiusShare: number;
  readonly chordShare: number;
  /** rad. */
  readonly angle: number;
}

export interface MeasuredPropeller {
  readonly name: string;
  /** m. */
  readonly diameter: number;
  /** As marked, m. */
  readonly pitch: number;
  readonly still: readonly MeasuredState[];
  /** J rising. */
  readonly moving: readonly MeasuredState[];
  /** Empty: not measured. */
  readonly blade: readonly BladeStation[];
}

const still = rowsOf(stillText);
const moving = rowsOf(movingText);
const blades = rowsOf(bladeText);

/** Every outline in the file, those that belong to no measured propeller too. */
export const outlines: readonly string[] = [...new Set(blades.map((row) => row.propeller))];

/** 9.05 in and 15° at 75 % radius of one propeller; 9.05 × 6.75 in of another; else the marks. */
function sizeOf(name: string): { diameter: number; pitch: number } {
  if (name.startsWith('NR640')) {
    const diameter = 9.05 * INCH;
    return { diameter, pitch: 0.75 * Math.PI * diameter * Math.tan(15 * DEGREE) };
  }
  const [, diameter, pitch] = /([\d.]+)x([\d.]+)/.exec(name)!;
  return { diameter: Number(diameter) * INCH, pitch: Number(pitch) * INCH };
}

export const measuredPropellers: readonly MeasuredPropeller[] = [...new Set(moving.map((row) => row.propeller))].map(
  (name) => {
    const own = (rows: typeof still): MeasuredState[] =>
      rows
        .filter((row) => row.propeller === name)
        .map(({ values, number }) => ({
          rpm: number('rpm'),
          J: values.J === undefined ? 0 : number('J'),
          CT: number('CT'),
          CP: number('CP'),
        }))
        .sort((a, b) => a.J - b.J || a.rpm - b.rpm);
    return {
      name,
      ...sizeOf(name),
      still: own(still),
      moving: own(moving),
      blade: blades
        .filter((row) => row.propeller === name)
        .map(({ number }) => ({
          radiusShare: number('r_over_R'),
          chordShare: number('c_over_R'),
          angle: number('beta_deg') * DEGREE,
        })),
    };
  },
);

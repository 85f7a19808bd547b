import {
  type ElevatorAir,
  FLAT_PLATE_SECTION_SLOPE,
  type HeldControl,
  hingeMoment,
  type LinkageState,
  tailLiftAfter,
} from '../../physics/index';
import type { air } from '../air/index';
import type { Columns } from '../block';
import type { flightResults } from '../flight/results';
import type { tailResults } from '../tail/results';
import type { controlResults } from './results';

interface Around {
  readonly air: Columns<typeof air.results>;
  readonly tail: Columns<typeof tailResults>;
  readonly flight: Columns<typeof flightResults>;
}
type Loads = Pick<
  Columns<typeof controlResults>,
  'hinge_incidence' | 'hinge_deflection' | 'friction' | 'pivot_torque_arm'
>;

/** Moment (N·m) that holds the elevator at an angle at a speed, its own having followed from the trim of level flight. */
export type HingeLaw = (elevator: number, speed: number) => number;

export function hingeLaw(m: Float64Array, loads: Loads, { air, tail, flight }: Around, i: number): HingeLaw {
  const at = (column: number): number => m[column + i]!;
  const elevatorAir: ElevatorAir = {
    area: at(tail.area),
    meanChord: at(tail.mean_chord),
    chordShare: at(tail.elevator_share),
    sectionSlope: FLAT_PLATE_SECTION_SLOPE,
    effect: at(tail.elevator_effect),
    byIncidence: at(loads.hinge_incidence),
    byDeflection: at(loads.hinge_deflection),
  };
  const pressure = (speed: number): number => 0.5 * at(air.density) * speed * speed;
  const level = at(flight.tail_lift) / (pressure(at(flight.speed)) * elevatorAir.area);
  const trimmed = at(flight.elevator);
  return (elevator, speed) => {
    const lift = tailLiftAfter(level, at(tail.lift_slope), elevatorAir.effect, elevator - trimmed);
    return hingeMoment(elevatorAir, pressure(speed), lift, elevator);
  };
}

/** What the bellcrank has to hold at a place of its travel for a hinge moment; `friction` adds that of the elevator against it. */
export function heldAt(
  m: Float64Array,
  loads: Loads,
  state: LinkageState,
  moment: number,
  friction: boolean,
  i: number,
): HeldControl {
  const own = friction ? Math.sign(moment) * m[loads.friction + i]! : 0;
  return {
    moment: (moment + own) * state.gain,
    upLever: state.upLever,
    downLever: state.downLever,
    pivotFriction: friction ? m[loads.pivot_torque_arm + i]! : 0,
  };
}

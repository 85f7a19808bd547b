import type { AnyBlock } from '../../blocks/block';
import { roleOf } from '../../sheet/links';
import type { Live } from '../../sheet/live';
import { cellsOf } from '../../sheet/sheets';
import { fromSI, writeQuantity } from '../../units/index';

/** What a design flies with now: SI value of a result of the first piece of a role, NaN where there is none. */
export type Flown = (role: string, result: string) => number;

export function flownBy(live: Live, blocks: readonly AnyBlock[]): Flown {
  const { compiled, state } = live;
  const links = blocks.map((block) => ({ kind: block.kind, role: block.role ?? block.kind, fields: [] }));
  const cells = cellsOf(compiled.document);
  return (role, result) => {
    const cell = cells.find((each) => roleOf(each, links) === role);
    return state.m[compiled.program.slotOf.get(`${cell?.name}.${result}`) ?? -1] ?? Number.NaN;
  };
}

/** Fields of an engine kind that make it fly as the design flies now; SI. What has no answer is left to its default. */
type Seeds = Readonly<Record<string, number>>;

/** Rpm without load over rpm in flight of a motor that has some reserve, and the motor's share of the resistance: guesses. */
const RESERVE = 1.25;
const MOTOR_SHARE = 2 / 3;
const PACK_VOLTAGE = 15.2;
const IDLE_CURRENT = 1;
/** Peak torque over the torque in flight, and where it lies: guesses. */
const TORQUE_RISE = 1.15;
const TORQUE_SHARE = 0.7;

const seedsOf: Readonly<Record<string, (flown: Flown) => Seeds>> = {
  thrust_law(flown) {
    const [atRest, thrust] = [flown('engine', 'thrust'), flown('flight', 'thrust')];
    return {
      static_thrust: atRest,
      shaft_speed: flown('flight', 'shaft_speed'),
      // The straight line through both.
      zero_thrust_speed: thrust < atRest ? flown('flight', 'speed') / (1 - thrust / atRest) : Number.NaN,
      torque: flown('flight', 'torque'),
    };
  },
  two_stroke(flown) {
    const [speed, torque] = [flown('flight', 'shaft_speed'), flown('flight', 'torque')];
    return {
      peak_torque: TORQUE_RISE * torque,
      torque_speed: TORQUE_SHARE * speed,
      peak_power: torque * speed,
      power_speed: speed,
      rated_density: flown('air', 'density'),
    };
  },
  electric(flown) {
    const [speed, torque] = [flown('flight', 'shaft_speed'), flown('flight', 'torque')];
    const perVolt = (RESERVE * speed) / PACK_VOLTAGE;
    const current = torque * perVolt + IDLE_CURRENT;
    const resistance = (PACK_VOLTAGE * (1 - 1 / RESERVE)) / current;
    return {
      voltage: PACK_VOLTAGE,
      idle_current: IDLE_CURRENT,
      speed_per_volt: perVolt,
      resistance: MOTOR_SHARE * resistance,
      pack_resistance: (1 - MOTOR_SHARE) * resistance,
    };
  },
  tachometer: (flown) => ({
    reading_1: flown('engine', 'shaft_speed'),
    diameter_1: flown('engine', 'propeller_diameter'),
    pitch_1: flown('engine', 'pitch'),
  }),
  measured_lap: (flown) => ({
    lap_time: flown('flight', 'lap_time'),
    known_mass: flown('parts', 'mass'),
    known_radius: flown('lines', 'guide_radius'),
    known_arm: flown('balance', 'cg_y') - flown('leadouts', 'guide_y'),
    known_height: flown('flight', 'height') - flown('flight', 'handle_height'),
    known_handle_reach: flown('lines', 'handle_reach'),
    known_count: flown('lines', 'count'),
    known_diameter: flown('lines', 'diameter'),
    known_linear_mass: flown('lines', 'linear_mass'),
    known_line_drag: flown('lines', 'drag_coefficient'),
    known_density: flown('air', 'density'),
    known_temperature: flown('air', 'temperature'),
    known_humidity: flown('air', 'humidity'),
    shaft_speed: flown('flight', 'shaft_speed'),
  }),
};

/** Digits of a number that is taken from a result. */
const DIGITS = 4;

/** The same as texts in the units of the design, for fields that the kind has and that may be so. */
export function seedTexts(block: AnyBlock, flown: Flown, inchPound: boolean): Readonly<Record<string, string>> {
  const texts: Record<string, string> = {};
  for (const [name, si] of Object.entries(seedsOf[block.kind]?.(flown) ?? {})) {
    const field = block.fields[name];
    if (!field || !('range' in field) || !Number.isFinite(si)) continue;
    const [least, most] = field.range ?? [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
    if (si >= least && si <= most) texts[name] = textOf(si, (inchPound && field.tradeUnit) || field.unit);
  }
  return texts;
}

/** A number of so many digits in a unit. */
export const textOf = (si: number, unit: string): string => {
  const shown = Number(fromSI(si, unit).toPrecision(DIGITS));
  return unit === '' ? writeQuantity(Number(si.toPrecision(DIGITS)), '') : `${shown} ${unit}`;
};

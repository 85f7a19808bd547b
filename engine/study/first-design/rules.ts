import { readPropellerSize } from '../../formula/index';
import { readAny } from './form';
import type { Rule } from './rule';
import { storeSizes, storeStation } from './store';
import type { FirstDesignForm } from './told';

type Drive = FirstDesignForm['drive'];

/** The model as it was when it was weighed: texts of all-up weight, of the parts beside the airframe, and of the wing area. */
export interface Weighed {
  readonly mass: string;
  readonly others: string;
  readonly area: string;
  /** The same to be read. */
  readonly said: { readonly others: string; readonly area: string };
}

/** Displacement that the rules of engine and propeller go by. */
const size = (drive: Drive): string => (drive === 'engine' ? 'displacement' : 'like_displacement');

/** Rpm in flight that a propeller is taken to turn when nothing is timed. */
const TURNS = '2 × pi × 43.4 m/s ÷ propeller_diameter';

export function propellerRules({ drive, propeller }: FirstDesignForm, timed: boolean): readonly Rule[] {
  const known = readPropellerSize(propeller);
  const motor: Rule = {
    name: 'like_displacement',
    text: '4.1 cm³ × motor_power ÷ 370 W',
    unit: 'cm³',
    says: 'A motor that takes 370 W does the work of an engine of 4.1 cm³.',
  };
  return [
    ...(drive === 'motor' ? [motor] : []),
    known
      ? { name: 'propeller_diameter', text: known.diameter, unit: 'mm', says: `Propeller: ${propeller} as typed.` }
      : {
          name: 'propeller_diameter',
          text: `9 in × (${size(drive)} ÷ 4.1 cm³)^(1 ÷ 3)`,
          unit: 'mm',
          says: 'Propeller: 9 in at 4.1 cm³, with the cube root of the displacement.',
        },
    ...(timed ? timedRules(known !== undefined) : guessedRules(known !== undefined)),
    known
      ? { name: 'propeller_pitch', text: known.pitch, unit: 'mm', says: '' }
      : {
          name: 'propeller_pitch',
          text: 'wanted_speed ÷ 0.85 × 2 × pi ÷ shaft_speed',
          unit: 'mm',
          says: 'Pitch: the model flies at 0.85 × rpm × pitch.',
        },
    ...(timed ? [] : [staticThrust]),
  ];
}

const guessedRules = (propellerKnown: boolean): readonly Rule[] => [
  {
    name: 'shaft_speed',
    text: TURNS,
    unit: 'rpm',
    says: 'Rpm in flight: 11 400 with 9 in, the smaller the propeller the faster.',
  },
  propellerKnown
    ? {
        name: 'wanted_speed',
        text: '0.85 × shaft_speed ÷ (2 × pi) × propeller_pitch',
        unit: 'm/s',
        says: 'Speed that the propeller is made for: 0.85 × rpm × pitch.',
      }
    : {
        name: 'wanted_speed',
        text: 'sqrt(2.8 × 9.81 m/s² × (line_length + 1.1 m))',
        unit: 'm/s',
        says: 'Speed for which the pitch is taken: pull in flight 2.8 times the weight.',
      },
];

const timedRules = (propellerKnown: boolean): readonly Rule[] => [
  {
    name: 'wanted_speed',
    text: '2 × pi × sqrt((engine.known_radius + engine.known_arm)^2 - engine.known_height^2) ÷ engine.lap_time',
    unit: 'm/s',
    says: `Speed ${propellerKnown ? 'that rpm follow from' : 'for which the pitch is taken'}: that of the timed lap.`,
  },
  propellerKnown
    ? {
        name: 'shaft_speed',
        text: 'wanted_speed ÷ 0.85 × 2 × pi ÷ propeller_pitch',
        unit: 'rpm',
        says: 'Rpm in flight: the timed lap was flown at 0.85 × rpm × pitch. A tachometer tells it better.',
      }
    : {
        name: 'shaft_speed',
        text: `max(${TURNS}, wanted_speed ÷ 0.85 × 2 × pi ÷ propeller_diameter)`,
        unit: 'rpm',
        says: 'Rpm in flight: 11 400 with 9 in, the smaller the propeller the faster; faster still where the pitch would be more than the diameter. A tachometer tells it better.',
      },
];

const staticThrust: Rule = {
  name: 'static_thrust',
  text: '0.085 × 1.225 kg/m³ × (shaft_speed ÷ (2 × pi))^2 × propeller_diameter^4',
  unit: 'N',
  says: 'Static thrust: 10 N from 9 in at 11 400 rpm, by the law of similar propellers. A spring scale tells it better.',
};

export function layoutRules({ drive, line_diameter, line_count }: FirstDesignForm): readonly Rule[] {
  return [
    { name: 'wing_area', text: 'span × chord', unit: 'dm²', says: 'Wing area: span × mean chord.' },
    {
      name: 'tail_area',
      text: '0.18 × wing_area',
      unit: 'dm²',
      says: 'Stabiliser and elevator: 18 % of the wing area, 4.4 times as wide as deep, elevator 38 % of the depth.',
    },
    { name: 'tail_span', text: 'sqrt(4.4 × tail_area)', unit: 'mm', says: '' },
    { name: 'tail_chord', text: 'tail_area ÷ tail_span', unit: 'mm', says: '' },
    {
      name: 'tail_edge',
      text: '0.25 × chord + 2.1 × chord - 0.25 × tail_chord',
      unit: 'mm',
      says: 'Tail arm: 2.1 chords from quarter chord to quarter chord.',
    },
    {
      name: 'fin_side',
      text: 'sqrt(0.055 × wing_area)',
      unit: 'mm',
      says: 'Fin and rudder: 5.5 % of the wing area, as high as deep.',
    },
    {
      name: 'body_depth',
      text: '0.37 × chord',
      unit: 'mm',
      says: 'Profile fuselage: 0.37 chords deep at the wing and 0.055 chords thick.',
    },
    {
      name: 'engine_length',
      text: `60 mm × (${size(drive)} ÷ 4.1 cm³)^(1 ÷ 3)`,
      unit: 'mm',
      says: `${drive === 'engine' ? 'Engine' : 'Motor'}: 60 mm long at 4.1 cm³, with the cube root of the displacement.`,
    },
    { name: 'nose', text: 'engine_station - 0.35 × engine_length', unit: 'mm', says: '' },
    {
      name: 'tail_end',
      text: 'tail_edge + tail_chord + 0.3 × fin_side',
      unit: 'mm',
      says: '',
    },
    storeStation(drive),
    {
      name: 'wheel_drop',
      text: 'propeller_diameter ÷ 2',
      unit: 'mm',
      says: 'Wheels: the axle half a propeller below the thrust line, 0.08 chords ahead of the wing.',
    },
    line_diameter === ''
      ? usualLines(drive, line_count)
      : {
          name: 'line_diameter',
          text: line_diameter,
          unit: 'mm',
          says: `Lines: ${countOf(line_count)} of stranded steel, ${line_diameter} as typed.`,
        },
  ];
}

const countOf = (count: string): string => (count === '' ? 'two' : count);

const usualLines = (drive: Drive, count: string): Rule => ({
  name: 'line_diameter',
  text: `${size(drive)} < 1.2 cm³ ? 0.25 mm : ${size(drive)} < 2.2 cm³ ? 0.30 mm : ${size(drive)} < 7 cm³ ? 0.38 mm : 0.46 mm`,
  unit: 'mm',
  says: `Lines: ${countOf(count)} of stranded steel, 0.25 mm up to 1.2 cm³, 0.30 mm up to 2.2 cm³, 0.38 mm up to 7 cm³, else 0.46 mm. The rule book of your class decides.`,
});

export function massRules(drive: Drive, weight: string, weighed: Weighed | undefined, store: number): readonly Rule[] {
  const engine: readonly Rule[] = [
    {
      name: 'engine_mass',
      text: '45 g × (displacement ÷ 1 cm³) + 20 g',
      unit: 'g',
      says: 'Engine with silencer and screws: 45 g/cm³ of its displacement and 20 g.',
    },
    { name: 'tank_volume', text: '15 × displacement', unit: 'mL', says: 'Tank: 15 times the displacement.' },
    {
      name: 'tank_mass',
      text: '0.45 g × (tank_volume ÷ 1 mL)',
      unit: 'g',
      says: 'Empty tank of tinplate: 0.45 g/cm³ of its volume.',
    },
  ];
  const motor: readonly Rule[] = [
    { name: 'motor_mass', text: '130 g × motor_power ÷ 370 W', unit: 'g', says: 'Motor with mount: 0.35 g a watt.' },
    {
      name: 'controller_mass',
      text: '30 g × motor_power ÷ 370 W',
      unit: 'g',
      says: 'Controller and cables: 0.08 g a watt.',
    },
    {
      name: 'battery_mass',
      text: '185 g × motor_power ÷ 370 W',
      unit: 'g',
      says: 'Battery for some six minutes: 0.5 g a watt.',
    },
  ];
  return [
    ...(drive === 'engine' ? engine : motor),
    ...storeSizes(drive, store),
    {
      name: 'propeller_mass',
      text: '28 g × (propeller_diameter ÷ 9 in)^3',
      unit: 'g',
      says: 'Propeller with nut: 28 g at 9 in, with the cube of the diameter.',
    },
    {
      name: 'controls_mass',
      text: '220 g/m² × wing_area',
      unit: 'g',
      says: 'Bellcrank, leadouts, guide, pushrod and horn: 2.2 g/dm² of wing.',
    },
    {
      name: 'gear_mass',
      text: '200 g/m² × wing_area',
      unit: 'g',
      says: 'Gear with wheels: 2 g/dm² of wing.',
    },
    airframeRule(drive, weight, weighed),
  ];
}

function airframeRule(drive: Drive, weight: string, weighed: Weighed | undefined): Rule {
  const name = 'airframe_mass';
  const unit = 'g';
  const shares =
    '50 % of it wing, 46 % fuselage, 4 % fin and rudder. Stabiliser and elevator weigh what their stock does.';
  if (weight === '') {
    return {
      name,
      text: '1820 g/m² × wing_area × (wing_area ÷ 22 dm²)^0.3',
      unit,
      says: `Wing, fuselage and fin with glue and finish: 18.2 g/dm² at 22 dm², a little more on a larger wing; ${shares}`,
    };
  }
  if (weighed) {
    return {
      name,
      text: `(${weighed.mass} - ${weighed.others}) × (wing_area ÷ ${weighed.area})^1.3`,
      unit,
      says: `Wing, fuselage and fin with glue and finish: ${weight} as weighed, less ${weighed.said.others} of all other parts when the design was begun; from ${weighed.said.area} on it grows with the wing. What is set, changed or weighed from now on adds to it. ${shares[0]!.toUpperCase()}${shares.slice(1)}`,
    };
  }
  // While the design is being trimmed, tip, nose and tail weight are part of what was weighed.
  return { name, text: `${readAny('weight', weight) * 1000} g - (${othersOf(drive).join(' + ')})`, unit, says: '' };
}

/** Names of all weights beside the airframe, without fuel. */
export const othersOf = (drive: Drive): readonly string[] => [
  ...drivePartNames(drive),
  'propeller_mass',
  'controls_mass',
  'gear_mass',
  'parts.stabiliser.mass',
  'parts.elevator.mass',
  'tip_weight',
  'nose_weight',
  'tail_weight',
];

const drivePartNames = (drive: Drive): readonly string[] =>
  drive === 'engine' ? ['engine_mass', 'tank_mass'] : ['motor_mass', 'controller_mass', 'battery_mass'];

import { bladeShapes } from '../../library/index';
import { DENSITY, RATE } from '../../units/index';
import type { Field, Option } from '../block';
import { AIRSPEED, ANGLE, degrees, GRAMS, MILLIMETRES, NEWTONS, PLAIN } from '../measures';

/** Where chord and angle may be typed, shares of the tip radius. */
export const TYPED_STATIONS = [0.3, 0.45, 0.6, 0.75, 0.9] as const;

const chord = (share: string): Field => ({
  ...MILLIMETRES,
  symbol: `c_${share}`,
  title: `Chord at ${share} %`,
  doc: `Breadth of the blade at ${share} % of the tip radius.`,
  default: Number.NaN,
  range: [0.001, 0.2],
  basis: 'Of the blade shape; typed ones scale the shape between them.',
  advanced: true,
});
const angle = (share: string): Field => ({
  ...ANGLE,
  symbol: `β_${share}`,
  title: `Blade angle at ${share} %`,
  doc: `Of the flat underside at ${share} % of the tip radius, to the plane of rotation.`,
  default: Number.NaN,
  range: [degrees(-5), degrees(70)],
  basis: 'By marked pitch and blade shape; typed ones shift the twist between them.',
  advanced: true,
});

const rpm = (symbol: string, title: string, doc: string): Field => ({
  dimension: RATE,
  unit: 'rpm',
  symbol,
  title,
  doc,
  default: Number.NaN,
  range: [50, 5000],
  basis: 'Not measured.',
  advanced: true,
});
const pull = (symbol: string, title: string, doc: string): Field => ({
  ...NEWTONS,
  symbol,
  title,
  doc,
  default: Number.NaN,
  range: [0.01, 500],
  basis: 'Not measured.',
  advanced: true,
});

/** What a builder reads off a propeller. */
export const propellerFields = {
  diameter: {
    ...MILLIMETRES,
    symbol: 'D',
    title: 'Diameter',
    doc: 'Tip to tip, as marked: 9 in of a 9×6.',
    default: 9 * 0.0254,
    range: [0.05, 0.6],
  } as Field,
  pitch: {
    ...MILLIMETRES,
    symbol: 'p',
    title: 'Pitch',
    doc: 'As marked: 6 in of a 9×6. Marks are off by half an inch now and then.',
    default: 6 * 0.0254,
    range: [0.01, 0.6],
  } as Field,
  shape: {
    option: bladeShapes.map((row) => row.name),
    default: 'sport',
    symbol: '',
    title: 'Blade shape',
    doc: `Outline and twist that look most like yours: ${bladeShapes.map((row) => `${row.name} (${row.title.toLowerCase()})`).join('; ')}.`,
  } as Option,
  blades: {
    ...PLAIN,
    symbol: 'B',
    title: 'Blades',
    doc: 'Number of blades.',
    default: 2,
    range: [1, 6],
    advanced: true,
  } as Field,
  angle_shift: {
    ...ANGLE,
    symbol: 'Δβ',
    title: 'Shift of the blade angle',
    doc: 'Added to all blade angles; the same as another zero-lift angle of its section. It makes up for what the marked pitch and the mean section don’t tell; 1° is some 10 % of thrust. A measured pull finds it.',
    default: Number.NaN,
    range: [degrees(-8), degrees(8)],
    basis: 'No shift, or what the measured pull needs.',
    advanced: true,
  } as Field,
  chord_factor: {
    ...PLAIN,
    symbol: 'f_c',
    title: 'Chord factor',
    doc: 'What all chords are multiplied by. A measured pull finds it.',
    default: Number.NaN,
    range: [0.5, 2],
    basis: '1, or what the measured pull needs.',
    advanced: true,
  } as Field,
  still_shaft_speed: rpm('n_0', 'Rpm in the pull at rest', 'By tachometer, while the scale showed the pull at rest.'),
  still_pull: pull(
    'P_m0',
    'Pull at rest, measured',
    'By spring scale on the model at rest. Stand behind the plane of the propeller and tie the model down.',
  ),
  flying_shaft_speed: rpm('n_1', 'Rpm in flight', 'By ear, tachometer or logger, in level laps of a known time.'),
  flying_speed: {
    ...AIRSPEED,
    symbol: 'V_m1',
    title: 'Airspeed of those laps',
    doc: '2π × radius over the lap time, in calm air.',
    default: Number.NaN,
    range: [1, 100],
    basis: 'Not measured.',
    advanced: true,
  } as Field,
  flying_pull: pull(
    'P_m1',
    'Pull in those laps',
    'What drag of model and lines took at that speed: the engine by the timed lap tells it as the thrust of the timed lap.',
  ),
  chord_30: chord('30'),
  chord_45: chord('45'),
  chord_60: chord('60'),
  chord_75: chord('75'),
  chord_90: chord('90'),
  angle_30: angle('30'),
  angle_45: angle('45'),
  angle_60: angle('60'),
  angle_75: angle('75'),
  angle_90: angle('90'),
  mass: {
    ...GRAMS,
    symbol: 'm',
    title: 'Mass',
    doc: 'Of the propeller, weighed. Sets its inertia.',
    default: Number.NaN,
    range: [0.0005, 1],
    basis: 'From the chords with 12 % thickness at the tip and more at the hub: a guess without a source.',
    advanced: true,
  } as Field,
  material_density: {
    dimension: DENSITY,
    unit: 'g/cm³',
    symbol: 'ρ_p',
    title: 'Density of its material',
    doc: 'For the mass where none is typed.',
    default: 1350,
    range: [100, 3000],
    basis: 'Glass-filled nylon, from memory; beech about 0.7 g/cm³.',
    advanced: true,
  } as Field,
} as const;

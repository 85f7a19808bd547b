import { bladeShapes } from '../../library/index';
import { DENSITY } from '../../units/index';
import type { Field, Option } from '../block';
import { ANGLE, degrees, GRAMS, MILLIMETRES, PLAIN } from '../measures';

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
    doc: 'Added to all blade angles. Where rpm or thrust was measured, the shift that explains it makes up for what the marked pitch and the mean section don’t tell; 1° is some 10 % of thrust.',
    default: 0,
    range: [degrees(-8), degrees(8)],
    advanced: true,
  } as Field,
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

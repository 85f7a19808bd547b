import type { Dimension } from '../../units/index';
import { AREA, AREAL_MASS, LENGTH, MASS, ONE, VOLUME } from '../../units/index';
import type { Part, PartShape } from '../document';

/** A text of a part row: a quantity, or the name of a material or a stack. */
export interface PartField {
  readonly name: string;
  readonly title: string;
  /** Within a sentence, where the title is no noun. */
  readonly words?: string | undefined;
  readonly symbol: string;
  readonly doc: string;
  /** Missing: the text is a name. */
  readonly dimension?: Dimension;
  readonly unit: string;
  /** SI value when nothing is typed; missing: something must be. */
  readonly blank?: number;
  readonly range?: readonly [number, number];
  /** Folded away until asked for. */
  readonly detail?: true;
  /** Written by itself when the part is weighed: what it was then of this other field or number. Laid only where it is written. */
  readonly asWeighed?: string;
}

const ANY: readonly [number, number] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
const FROM_NOTHING: readonly [number, number] = [0, Number.POSITIVE_INFINITY];
const NOTHING_TO_ALL: readonly [number, number] = [0, 1];
/** Farther from the datum than this is a slip of the unit. */
const STATION: readonly [number, number] = [-10, 10];

const mass: PartField = {
  name: 'mass',
  title: 'Mass',
  symbol: 'm',
  doc: 'Mass of the part; of one, where there are several. Negative: a cut-out.',
  dimension: MASS,
  unit: 'g',
  range: ANY,
};
const area: PartField = {
  name: 'area',
  title: 'Area',
  symbol: 'S',
  doc: 'Area of the sheet, both halves together. Negative: a cut-out.',
  dimension: AREA,
  unit: 'cm²',
  range: ANY,
};
const thickness: PartField = {
  name: 'thickness',
  title: 'Thickness',
  symbol: 't',
  doc: 'Thickness of the sheet, of a strip the smaller side.',
  dimension: LENGTH,
  unit: 'mm',
  range: FROM_NOTHING,
};
const material: PartField = {
  name: 'material',
  title: 'Material',
  symbol: '',
  doc: 'Name of a material, or of a choice among things that have a density.',
  unit: '',
};
const stack: PartField = {
  name: 'stack',
  title: 'Stack',
  symbol: '',
  doc: 'Name of a choice of stacks, or of one of its options.',
  unit: '',
};
const measured = (name: string, title: string, symbol: string, doc: string, blank?: number): PartField => ({
  name,
  title,
  symbol,
  doc,
  dimension: LENGTH,
  unit: 'mm',
  blank,
  range: FROM_NOTHING,
});
const share = (name: string, title: string, symbol: string, doc: string, blank?: number): PartField => ({
  name,
  title,
  symbol,
  doc,
  dimension: ONE,
  unit: '%',
  blank,
  range: NOTHING_TO_ALL,
});
const length = measured('length', 'Length', 'l', 'Length of it, of what is bent straightened.');
const diameter = measured('diameter', 'Diameter', 'd', 'Outer diameter.');
const wall = measured('wall', 'Wall', 't', 'Thickness of the wall of a tube.');
const width = measured('width', 'Width', 'a', 'Width of it, of a strip the larger side, of a triangle one leg.');
const height = measured('height', 'Height of the triangle', 'h', 'Above its width: the other leg.');
const AS_THERE = 'Blank: the same.';
const widthEnd = measured(
  'width_end',
  'Width at the other end',
  'a_2',
  `Where the sheet tapers in plan. ${AS_THERE}`,
  Number.NaN,
);
const thicknessEnd = measured(
  'thickness_end',
  'Thickness at the other end',
  't_2',
  `Where the sheet is sanded to a taper. ${AS_THERE}`,
  Number.NaN,
);
const chord = measured('chord', 'Chord', 'c', 'Chord of the first rib, or of the core at its root.');
const tipChord = measured(
  'tip_chord',
  'Chord at the tip',
  'c_2',
  `Chord of the last rib, or of the core at its tip. ${AS_THERE}`,
  Number.NaN,
);
const ratio = share(
  'section_thickness',
  'Section thickness',
  't/c',
  'Thickness of the wing section over its chord. A section of the library gives it.',
);
const cutAway = share(
  'cut_away',
  'Cut away',
  's',
  'Share of it that lightening holes, slots and notches take away.',
  0,
);
const wire: PartField = {
  name: 'wire',
  title: 'Wire, line or tube',
  symbol: '',
  doc: 'Name of a wire, a line or a tube, or of a choice among things that have a mass per length.',
  unit: '',
};
const volume: PartField = {
  name: 'volume',
  title: 'Volume',
  symbol: 'v',
  doc: 'Volume of the solid. Negative: a cut-out.',
  dimension: VOLUME,
  unit: 'cm³',
  range: ANY,
};

/** What a part was when it was weighed. Otherwise now, it counts as re-made. */
const asWeighed = (
  of: string,
  name: string,
  title: string,
  symbol: string,
  quantity: Pick<PartField, 'dimension' | 'unit'>,
): PartField => ({
  ...{ name, title, symbol, ...quantity },
  doc: 'Kept when the scale’s word is typed. Otherwise now, the part counts as re-made, by its estimate.',
  blank: Number.NaN,
  detail: true,
  asWeighed: of,
});
const thick = (of: string): PartField =>
  asWeighed(of, 'weighed_thickness', 'Thickness when weighed', 't_w', { dimension: LENGTH, unit: 'mm' });
const sheetWeighed = thick('thickness');
const stackWeighed = asWeighed('areal_mass', 'weighed_areal_mass', 'Mass per area when weighed', 'w_w', {
  dimension: AREAL_MASS,
  unit: 'g/m²',
});
const coatWeighed = asWeighed('coat', 'weighed_coat', 'Finish when weighed', 'w_fw', {
  dimension: AREAL_MASS,
  unit: 'g/m²',
});

const NEEDS: Readonly<Record<PartShape, readonly PartField[]>> = {
  point: [mass],
  sheet: [area, thickness, material],
  stack: [area, stack],
  rod: [length, diameter, material],
  solid: [volume, material],
  strip: [length, width, thickness, material],
  tube: [length, diameter, wall, material],
  tapered: [length, width, widthEnd, thickness, thicknessEnd, material],
  triangle: [length, width, height, material],
  ribs: [chord, tipChord, ratio, thickness, cutAway, material],
  core: [length, chord, tipChord, ratio, cutAway, material],
  run: [length, wire],
};

const station = (name: string, title: string, doc: string, blank?: number, words?: string): PartField => ({
  name,
  title,
  words,
  symbol: name,
  doc,
  dimension: LENGTH,
  unit: 'mm',
  blank,
  range: STATION,
});
const size = (axis: string, doc: string): PartField => ({
  name: `size_${axis}`,
  title: `Size along ${axis}`,
  symbol: `s_${axis}`,
  doc,
  dimension: LENGTH,
  unit: 'mm',
  blank: 0,
  range: FROM_NOTHING,
  detail: true,
});

const COMMON: readonly PartField[] = [
  {
    name: 'count',
    title: 'How many',
    words: 'number of them',
    symbol: 'n',
    doc: 'How many of them there are, together in one place. What the scale says is of all. Negative: cut-outs.',
    dimension: ONE,
    unit: '',
    blank: 1,
    range: ANY,
  },
  station('x', 'Station', 'Its centre of gravity aft of the wing root leading edge.'),
  station(
    'y',
    'From centreline',
    'Its centre of gravity from the fuselage centreline, outboard positive.',
    0,
    'distance from centreline',
  ),
  station('z', 'Height', 'Its centre of gravity above the reference line.', 0),
  {
    name: 'weighed',
    title: 'Weighed',
    words: 'weighed mass',
    symbol: 'm_w',
    doc: 'Mass on the scale, of all of them together. It replaces the estimate; blank until weighed.',
    dimension: MASS,
    unit: 'g',
    blank: Number.NaN,
    range: FROM_NOTHING,
  },
  size('x', 'Length fore and aft, for its own inertia.'),
  size('y', 'Length spanwise, for its own inertia.'),
  size('z', 'Height, for its own inertia.'),
  {
    name: 'coats_area',
    title: 'Finished area',
    symbol: 'S_f',
    doc: 'Area that is doped, painted or covered, both faces counted; of one, where there are several.',
    dimension: AREA,
    unit: 'cm²',
    blank: 0,
    range: FROM_NOTHING,
    detail: true,
  },
  {
    name: 'coat',
    title: 'Finish',
    symbol: 'w_f',
    doc: 'Mass per area of all coats together.',
    dimension: AREAL_MASS,
    unit: 'g/m²',
    blank: 0,
    range: FROM_NOTHING,
    detail: true,
  },
  {
    name: 'mass_tolerance',
    title: 'Uncertainty of the mass',
    symbol: 's_m',
    doc: 'One standard deviation. Blank: a tenth of an estimate, half a gram on the scale (common practice, no source).',
    dimension: MASS,
    unit: 'g',
    blank: Number.NaN,
    range: FROM_NOTHING,
    detail: true,
  },
  {
    name: 'station_tolerance',
    title: 'Uncertainty of the station',
    symbol: 's_x',
    doc: 'One standard deviation. Blank: 2 mm (common practice, no source).',
    dimension: LENGTH,
    unit: 'mm',
    blank: Number.NaN,
    range: FROM_NOTHING,
    detail: true,
  },
];

const WEIGHED: Partial<Record<PartShape, PartField>> = {
  sheet: sheetWeighed,
  stack: stackWeighed,
  rod: thick('diameter'),
  strip: sheetWeighed,
  tube: thick('wall'),
  tapered: sheetWeighed,
  ribs: sheetWeighed,
};

const fieldsOf = (shape: PartShape): readonly PartField[] => {
  const weighed = WEIGHED[shape];
  return [...NEEDS[shape], ...COMMON, ...(weighed ? [weighed] : []), coatWeighed];
};

const FIELDS: Readonly<Record<PartShape, readonly PartField[]>> = {
  point: fieldsOf('point'),
  sheet: fieldsOf('sheet'),
  stack: fieldsOf('stack'),
  rod: fieldsOf('rod'),
  solid: fieldsOf('solid'),
  strip: fieldsOf('strip'),
  tube: fieldsOf('tube'),
  tapered: fieldsOf('tapered'),
  triangle: fieldsOf('triangle'),
  ribs: fieldsOf('ribs'),
  core: fieldsOf('core'),
  run: fieldsOf('run'),
};

/** The texts of a part row of this shape, in reading order. */
export const partFields = (shape: PartShape): readonly PartField[] => FIELDS[shape];

const ALL = new Set([...Object.values(NEEDS).flat(), ...COMMON].map((field) => field.name));

/** Whether a part of some shape has this text: what one shape doesn't use is kept for the day the shape changes back. */
export const isPartField = (name: string): boolean => ALL.has(name);

/** Whether what is typed as its mass is the mass that counts: of several it is that of one. */
export const massIsTyped = ({ shape, fields }: Part): boolean =>
  shape === 'point' && (fields.count ?? '').trim() === '';

import { air } from '../../blocks/air/index';
import { moistAirDensity, PACK_EXPONENT, standardPressure } from '../../physics/index';
import type { BlockCell, Cell, CheckCell, FormulaCell, Variable } from '../../sheet/document';
import type { UnitSet } from '../../units/index';
import { partsOf } from './parts';
import type { Rule } from './rule';
import { layoutRules, massRules, propellerRules, type Weighed } from './rules';
import { around, PULL_TEST, SLIDES, type Slide } from './slides';
import { STORE_GOES, STORE_LENGTH, STORE_SIDE } from './store';
import { tailStock } from './tail-stock';
import type { FirstDesignForm } from './told';

/** What the trimming has found so far: texts of the variables that are set by it. */
export interface Trim {
  readonly engine_station: string;
  readonly tip_weight: string;
  readonly nose_weight: string;
  readonly tail_weight: string;
  readonly guide_x: string;
}

/** The timed lap and the set-up on which it was flown, as texts of the engine's fields. */
export type KnownLap = Readonly<Record<string, string>>;

/** What was measured, held as it was on the model that is begun, so that later changes tell. */
export interface Known {
  readonly lap?: KnownLap;
  /** The conditions of the timed lap in a sentence. */
  readonly timed?: string;
  readonly weighed?: Weighed;
  /** The flight pulls harder than ten times the weight. */
  readonly fast?: boolean;
  /** Length of tank or battery, in cube roots of its box, where there is no room for the usual one. */
  readonly store?: number;
  /** How far the leadout guide slides, once it has its place. */
  readonly guide?: Slide;
  /** How much weight in nose and tail there is room for on their slides, once it is known what may be advised. */
  readonly ballast?: { readonly nose: Slide; readonly tail: Slide };
}

const variable = (name: string, title: string, symbol: string, text: string, slide: Slide): Variable => ({
  ...{ name, title, symbol, text },
  ...slide,
});

const weightSlide = (typed: string, slide: Slide): Slide => around('weight', typed, slide);

const formula = (id: string, name: string, title: string, rules: readonly Rule[]): FormulaCell => ({
  kind: 'formula',
  id,
  name,
  title,
  folded: true,
  lines: rules.map(({ name: line, text, unit }) => ({ name: line, text, unit })),
});

const block = (id: string, name: string, title: string, kind: string, fields: BlockCell['fields']): BlockCell => ({
  kind: 'model',
  id,
  name,
  title,
  folded: true,
  of: kind,
  fields,
});

const check = (
  id: string,
  name: string,
  title: string,
  of: string,
  [low, high]: readonly [string, string],
  [below, above]: readonly [string, string],
): CheckCell => ({ kind: 'check', id, name, title, of, low, high, below, above });

/** Density of the air in which a design is begun: its thrust is that of this air. */
const AIR_OF_THE_DAY = `${moistAirDensity(
  standardPressure(air.fields.elevation.default),
  air.fields.temperature.default,
  air.fields.humidity.default,
).toFixed(4)} kg/m³`;

/** What moves when the engine does, each part by the share of the way that it goes, with what it weighs now. */
const MOVING = {
  engine: `parts.engine_part.mass + parts.propeller.mass + parts.nose_weight_part.mass + ${STORE_GOES} × (parts.tank.mass + parts.mass - parts.mass_empty) + 0.62 × parts.fuselage.mass`,
  motor: `parts.motor.mass + parts.propeller.mass + parts.nose_weight_part.mass + 0.7 × parts.controller.mass + ${STORE_GOES} × parts.battery.mass + 0.62 × parts.fuselage.mass`,
};

/** The cells of a first design, in reading order. */
export function cellsOf(form: FirstDesignForm, trim: Trim, known: Known, set: UnitSet): Cell[] {
  const { drive } = form;
  const rules = [
    propellerRules(form, known.lap !== undefined),
    layoutRules(form),
    massRules(drive, form.weight, known.weighed, known.store ?? STORE_LENGTH.usual),
  ] as const;
  return [
    {
      kind: 'note',
      id: 'c01',
      name: 'brief',
      title: 'A first design, to be corrected',
      text: briefOf(form, known),
    },
    {
      kind: 'variables',
      id: 'c02',
      name: 'set_these',
      title: 'Set these',
      rows: [
        variable('span', 'span', 'b', form.span, around('span', form.span, SLIDES.span[set])),
        variable('chord', 'mean chord', 'c', form.chord, around('chord', form.chord, SLIDES.chord[set])),
        variable('engine_station', `${drive} station`, 'x_e', trim.engine_station, SLIDES.engine_station[set]),
        variable(
          'tip_weight',
          'tip weight',
          'm_t',
          trim.tip_weight,
          weightSlide(trim.tip_weight, SLIDES.tip_weight[set]),
        ),
        variable(
          'line_length',
          'line length',
          'L',
          form.line_length,
          around('line_length', form.line_length, SLIDES.line_length[set]),
        ),
        variable('guide_x', 'leadout guide', 'x_g', trim.guide_x, known.guide ?? SLIDES.guide_x[set]),
        ...(known.fast ? [variable('pull_test', 'pull test over weight', 'k_t', '10', PULL_TEST)] : []),
      ],
    },
    {
      kind: 'variables',
      id: 'c03',
      name: 'known',
      title: drive === 'engine' ? 'Engine, and weights to balance with' : 'Motor, and weights to balance with',
      rows: [
        drive === 'engine'
          ? variable(
              'displacement',
              'displacement',
              'V_h',
              form.size,
              around('displacement', form.size, SLIDES.displacement[set]),
            )
          : variable(
              'motor_power',
              'electric power',
              'P_el',
              form.size,
              around('motor_power', form.size, SLIDES.motor_power[set]),
            ),
        variable(
          'nose_weight',
          'nose weight',
          'm_n',
          trim.nose_weight,
          known.ballast?.nose ?? weightSlide(trim.nose_weight, SLIDES.ballast[set]),
        ),
        variable(
          'tail_weight',
          'tail weight',
          'm_b',
          trim.tail_weight,
          known.ballast?.tail ?? weightSlide(trim.tail_weight, SLIDES.ballast[set]),
        ),
      ],
    },
    tailStock(form.tail_stock),
    {
      kind: 'trial_series',
      id: 'c04',
      name: 'balance_sweep',
      title: `CG along the ${drive} station`,
      folded: true,
      axes: [
        { of: 'engine_station', low: '', high: '', count: 25 },
        { of: 'tail_stock', low: '', high: '', count: 3 },
      ],
      wanted: ['balance.cg_share', 'balance.static_margin'],
    },
    {
      kind: 'chart',
      id: 'c05',
      name: 'balance_chart',
      title: `CG and static margin against ${drive} station`,
      chart: 'line',
      series: 'balance_sweep',
      across: 'engine_station',
      up: ['balance.cg_share', 'balance.static_margin'],
      lines: 'tail_stock',
    },
    {
      kind: 'trial_series',
      id: 'c06',
      name: 'pull_sweep',
      title: 'Pull and lap along the line length',
      folded: true,
      axes: [{ of: 'line_length', low: '0.8 × line_length', high: '1.2 × line_length', count: 25 }],
      wanted: ['flight.pull_per_weight', 'flight.lap_time'],
    },
    {
      kind: 'chart',
      id: 'c07',
      name: 'pull_chart',
      title: 'Pull and lap time against line length',
      chart: 'line',
      series: 'pull_sweep',
      across: 'line_length',
      up: ['flight.pull_per_weight', 'flight.lap_time'],
      lines: '',
    },
    check(
      'c08',
      'check_cg',
      'CG between 15 and 25 % of the mean chord',
      'balance.cg_share',
      ['15 %', '25 %'],
      ['nose-heavy: little elevator is left for landing', 'too far aft: it will not track'],
    ),
    check(
      'c09',
      'check_nose',
      'Nose straight or out',
      'flight.nose_out',
      ['0°', '4°'],
      ['nose in: move the leadout guide aft', 'drags its tail: move the leadout guide forward'],
    ),
    check(
      'c10',
      'check_pull',
      'Pull keeps the lines tight',
      'flight.pull_per_weight',
      ['1.5', ''],
      ['slack on the upwind side in a wind: shorter lines or more speed', ''],
    ),
    check(
      'c29',
      'check_pitch',
      'Speed under rpm × pitch',
      'flight.pitch_speed_share',
      ['', '100 %'],
      ['', 'faster than the propeller screws itself forward: look at rpm, pitch and lap time'],
    ),
    { kind: 'drawing', id: 'c11', name: 'sheet_drawing', title: 'Plan and side view' },
    {
      kind: 'note',
      id: 'c12',
      name: 'assumptions',
      title: 'What was assumed',
      text: assumptionsOf(drive, rules.flat()),
    },
    formula('c13', 'propeller_rules', `Propeller and thrust: common practice, no source`, rules[0]),
    formula('c14', 'layout_rules', 'Layout: common practice, no source', rules[1]),
    formula('c15', 'mass_rules', 'Weights: common practice, no source', rules[2]),
    ...blocksOf(form, known.lap),
    {
      kind: 'parts',
      id: 'c24',
      name: 'parts',
      title: 'Weight and balance',
      folded: true,
      fuel: '0.5',
      rows: partsOf(drive),
    },
    block('c25', 'balance', 'Balance', 'balance', {}),
    block('c26', 'ballast', 'Ballast', 'ballast', {
      engine_mass: MOVING[drive],
      nose_station: 'nose',
      tail_station: 'tail_end - 10 mm',
      tip_station: 'wing.outboard_span - 15 mm',
      line_press: 'flight.line_weight_at_guide',
      torque: 'flight.torque',
      lift: 'flight.lift',
    }),
    block('c27', 'flight', 'Level flight', 'flight', known.fast ? { test_factor: 'pull_test' } : {}),
  ];
}

function blocksOf({ drive, line_count }: FirstDesignForm, lap: KnownLap | undefined): BlockCell[] {
  const mount = {
    station: 'engine_station',
    height: '0 mm',
    propeller_diameter: 'propeller_diameter',
    pitch: 'propeller_pitch',
    engine_length: 'engine_length',
    engine_width: '0.55 × engine_length',
    bearer_front: 'nose',
    bearer_rear: '0.1 × chord',
  };
  const drawn: BlockCell['fields'] =
    drive === 'engine' ? { tank_volume: 'tank_volume' } : { density_exponent: String(PACK_EXPONENT) };
  return [
    block('c16', 'air', 'Air of the day', 'air', {}),
    block('c17', 'wing', 'Wing', 'wing', {
      inboard_span: '0.515 × span',
      outboard_span: '0.485 × span',
      root_chord: '1.07 × chord',
      inboard_tip_chord: '0.93 × chord',
      outboard_tip_chord: '0.93 × chord',
      section_speed: 'wanted_speed',
    }),
    block('c18', 'tail', 'Tail', 'tail', {
      span: 'tail_span',
      root_chord: 'tail_chord',
      tip_chord: 'tail_chord',
      edge: 'tail_edge',
      elevator_share: '38 %',
      fin_height: 'fin_side',
      fin_root_chord: 'fin_side',
      fin_tip_chord: 'fin_side',
      fin_edge: 'tail_end - fin_side',
      fin_base: '0.12 × chord',
    }),
    block('c19', 'body', 'Fuselage and drag', 'body', {
      nose_x: 'nose',
      nose_depth: '0.65 × body_depth',
      front_x: '0 mm',
      front_depth: 'body_depth',
      rear_x: '1.05 × chord',
      rear_depth: 'body_depth',
      tail_x: 'tail_end',
      tail_depth: '0.5 × body_depth',
      width: '0.055 × chord',
      wheel_diameter: '0.05 × span',
      wheel_width: '0.012 × span',
      wheel_track: '0.2 × span',
      wheel_x: '-0.08 × chord',
      wheel_z: '-wheel_drop',
      wire_length: '2.2 × wheel_drop',
      wire_diameter: '0.003 × span',
      head_width: drive === 'engine' ? '0.42 × engine_length' : '0 mm',
      head_height: drive === 'engine' ? '0.5 × engine_length' : '0 mm',
      silencer_diameter: drive === 'engine' ? '0.37 × engine_length' : '0 mm',
      tank_length: 'store_length',
      tank_width: 'store_width',
      tank_height: '1.28 × store_width',
      tank_x: 'store_station',
      tank_y: STORE_SIDE,
    }),
    lap
      ? block(
          'c20',
          'engine',
          drive === 'engine' ? 'Engine by the timed lap' : 'Motor by the timed lap',
          'measured_lap',
          {
            ...lap,
            ...mount,
            ...drawn,
            shaft_speed: 'shaft_speed',
          },
        )
      : block(
          'c20',
          'engine',
          drive === 'engine' ? 'Engine by its pull at rest' : 'Motor by its pull at rest',
          'thrust_law',
          {
            ...mount,
            ...drawn,
            static_thrust: 'static_thrust',
            read_density: AIR_OF_THE_DAY,
            shaft_speed: 'shaft_speed',
          },
        ),
    block('c21', 'leadouts', 'Leadouts', 'leadouts', {
      x: 'guide_x',
      pivot_x: 'guide_x',
      pivot_y: '-0.045 × span',
      bellcrank: 'max(40 mm, 0.075 × span)',
    }),
    block('c22', 'lines', 'Lines', 'lines', {
      ...(line_count === '' ? {} : { count: line_count }),
      diameter: 'line_diameter',
      length: 'line_length',
    }),
  ];
}

function driveOf({ drive, size }: FirstDesignForm): string {
  if (drive === 'motor') return `a motor that takes ${size}`;
  return size.startsWith('a ') ? size : `an engine of ${size}`;
}

function briefOf(form: FirstDesignForm, { timed, fast }: Known): string {
  const rest =
    form.weight === ''
      ? 'The weight is estimated.'
      : `It was weighed with ${form.weight}${form.drive === 'engine' ? ', tank empty,' : ''} as it is begun here; weights that are set or changed from now on add to that.`;
  const flown =
    form.lap_time === ''
      ? 'It has not flown: thrust is estimated from the size of the propeller.'
      : `A lap of ${form.lap_time} was timed, which tells the power.${form.drive === 'motor' ? ' What that piece says of fuel means nothing for a motor.' : ''}`;
  return [
    `A model of ${form.span} span with ${driveOf(form)} on lines of ${form.line_length}. ${rest} ${flown}`,
    ...(timed === undefined ? [] : [timed]),
    ...(fast ? [FAST] : []),
    'All other sizes and weights are rules of thumb (common practice, no source): they are listed under “What was assumed”, and each can be overwritten with what a ruler, a scale or a stopwatch tells. Weigh each part when it is finished and type it in the table of weight and balance.',
  ].join('\n\n');
}

/** Said of a model that pulls harder than the test with which every design is begun. */
const FAST =
  'It pulls harder in flight than a pull test of ten times its weight, which is a stop. Classes of such models ask for more: set “pull test over weight” below to what the rule book of your class says.';

function assumptionsOf(drive: FirstDesignForm['drive'], rules: readonly Rule[]): string {
  return [
    'Common practice, no source:',
    rules
      .filter((rule) => rule.says !== '')
      .map((rule) => `- ${rule.says}`)
      .join('\n'),
    `Also: the inboard wing is 3 % longer than the outboard one, the chord tapers by an eighth, the section is symmetrical and 12 % thick. Stabiliser and elevator are cut from the tail stock that is picked, painted with 60 g/m² on each face: balsa 5.5 % as thick as the tail is deep, a balsa core of 3.5 % between ply faces of 0.4 mm, or light ply of 3.3 %. The station of the ${drive}, tip weight and leadout guide were then set so that the CG lies at a fifth of the mean chord, the wings are level and the nose points a little out.`,
  ].join('\n\n');
}

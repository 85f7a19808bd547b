import type { Part } from '../../sheet/document';
import { STORE_SIDE } from './store';
import type { FirstDesignForm } from './told';

const point = (name: string, title: string, mass: string, x: string, more: Part['fields'] = {}): Part => ({
  name,
  title,
  shape: 'point',
  fields: { mass, x, y: '0 mm', z: '0 mm', ...more },
});

const MIDDLE = '(wing.outboard_span - wing.inboard_span) ÷ 2';

/** A share of the tail's area, cut from the tail stock and painted on both faces. */
const tailPart = (name: string, title: string, share: number, x: string): Part => ({
  name,
  title,
  shape: 'stack',
  fields: {
    stack: 'tail_stock',
    area: `${share} × tail_area`,
    coat: '60 g/m²',
    coats_area: `2 × ${share} × tail_area`,
    x,
    y: '0 mm',
    z: '0 mm',
    size_x: `${share} × tail_chord`,
    size_y: 'tail_span',
  },
});

/** Estimates of all parts, to be replaced by what is weighed. */
export function partsOf(drive: FirstDesignForm['drive']): Part[] {
  return [
    point('wing_part', 'Wing, covered', '0.5 × airframe_mass', '0.45 × chord', {
      y: MIDDLE,
      size_x: '0.9 × chord',
      size_y: 'span',
      size_z: '0.1 × chord',
    }),
    point('fuselage', 'Fuselage, painted', '0.46 × airframe_mass', 'nose + 0.38 × (tail_end - nose)', {
      size_x: 'tail_end - nose',
      size_y: '0.055 × chord',
      size_z: '0.8 × body_depth',
    }),
    tailPart('stabiliser', 'Stabiliser', 0.62, 'tail_edge + 0.31 × tail_chord'),
    tailPart('elevator', 'Elevator', 0.38, 'tail_edge + 0.81 × tail_chord'),
    point('fin', 'Fin and rudder', '0.04 × airframe_mass', 'tail_end - 0.5 × fin_side', {
      z: '0.12 × chord + 0.5 × fin_side',
      size_x: 'fin_side',
      size_z: 'fin_side',
    }),
    ...(drive === 'engine' ? engineParts : motorParts),
    point('propeller', 'Propeller with nut', 'propeller_mass', 'engine_station - 0.8 × engine_length', {
      size_y: 'propeller_diameter',
    }),
    point('bellcrank', 'Bellcrank with platform and pivot', '0.5 × controls_mass', 'guide_x', {
      y: '-0.045 × span',
      size_y: '0.07 × span',
    }),
    point('leadouts_part', 'Leadouts and guide', '0.15 × controls_mass', 'guide_x', {
      y: '-0.3 × span',
      size_y: '0.45 × span',
    }),
    point('pushrod', 'Pushrod, horn and hinges', '0.35 × controls_mass', '(guide_x + tail_edge) ÷ 2', {
      size_x: 'tail_edge - guide_x',
    }),
    point('gear', 'Gear with wheels', 'gear_mass', '-0.06 × chord', { z: '-0.75 × wheel_drop', size_y: '0.2 × span' }),
    point('tip_weight_part', 'Tip weight', 'tip_weight', '0.35 × chord', { y: 'wing.outboard_span - 15 mm' }),
    point('nose_weight_part', 'Nose weight', 'nose_weight', 'nose'),
    point('tail_weight_part', 'Tail weight', 'tail_weight', 'tail_end - 10 mm'),
  ];
}

const engineParts: readonly Part[] = [
  point('engine_part', 'Engine with silencer', 'engine_mass', 'engine_station', {
    y: '0.2 × engine_length',
    size_x: 'engine_length',
    size_y: 'engine_length',
    size_z: '0.6 × engine_length',
  }),
  point('tank', 'Tank, empty', 'tank_mass', 'store_station', { y: STORE_SIDE }),
  {
    name: 'fuel_load',
    title: 'Fuel, tank full',
    shape: 'solid',
    fuel: true,
    fields: {
      material: 'glow_fuel',
      volume: 'tank_volume',
      x: 'store_station',
      y: STORE_SIDE,
      z: '0 mm',
      size_x: 'store_length',
    },
  },
];

const motorParts: readonly Part[] = [
  point('motor', 'Motor with mount', 'motor_mass', 'engine_station', { size_x: 'engine_length' }),
  point('controller', 'Controller and cables', 'controller_mass', '0.7 × engine_station'),
  point('battery', 'Battery', 'battery_mass', 'store_station', {
    y: STORE_SIDE,
    size_x: 'store_length',
  }),
];

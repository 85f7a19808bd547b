import { CHARGE, CURRENT, FORCE, INERTIA, MOMENT, POWER, RATE, VOLUME, VOLUME_FLOW } from '../../units/index';
import type { Curve, Result } from '../block';
import { ANGLE, degrees, MILLIMETRES, PLAIN } from '../measures';

const curve = (dimension: Curve['dimension'], unit: string, symbol: string, title: string, doc: string): Curve => ({
  curve: 'airspeed',
  dimension,
  unit,
  symbol,
  title,
  doc,
});

/** What every kind of engine or motor with its propeller tells the other blocks. */
export const engineResults = {
  thrust: curve(FORCE, 'N', 'P', 'Thrust', 'Of the propeller against airspeed.'),
  torque: curve(MOMENT, 'N·m', 'Q', 'Torque', 'Of the propeller against airspeed; its reaction rolls the model.'),
  power: curve(POWER, 'W', 'W', 'Shaft power', 'Torque × shaft speed, against airspeed.'),
  shaft_speed: curve(RATE, 'rpm', 'n', 'Shaft speed', 'Against airspeed.'),
  fuel_flow: curve(VOLUME_FLOW, 'mL/min', 'q_f', 'Fuel flow', 'Against airspeed; nothing for an electric motor.'),
  current: curve(CURRENT, 'A', 'I_b', 'Pack current', 'Against airspeed; nothing for an engine.'),
  tank_volume: {
    dimension: VOLUME,
    unit: 'mL',
    tradeUnit: 'fl oz',
    symbol: 'V_t',
    title: 'Tank volume',
    doc: 'That the engine can use; nothing for an electric motor.',
    detail: true,
  },
  pack_charge: {
    dimension: CHARGE,
    unit: 'mAh',
    symbol: 'Q_b',
    title: 'Pack charge',
    doc: 'That may be used; nothing for an engine.',
    detail: true,
  },
  flow_spread: {
    ...PLAIN,
    symbol: 'k_f',
    title: 'How far the use may be off',
    doc: 'The true use of fuel or charge is taken to lie within this factor both ways.',
    detail: true,
  },
  station: {
    ...MILLIMETRES,
    symbol: 'x_e',
    title: 'Engine station',
    doc: 'Of the middle of the engine, aft of the wing root leading edge; ahead of it negative.',
  },
  offset_y: {
    ...MILLIMETRES,
    symbol: 'y_e',
    title: 'Engine from centreline',
    doc: 'Of the shaft at the engine, outboard positive.',
    detail: true,
  },
  height: {
    ...MILLIMETRES,
    symbol: 'z_e',
    title: 'Height of the thrust line',
    doc: 'Of the shaft at the engine, above the reference line.',
    detail: true,
  },
  side_thrust: {
    ...ANGLE,
    symbol: 'τ',
    title: 'Engine offset',
    doc: 'How far the shaft points outboard.',
    usual: [degrees(1), degrees(3)],
  },
  down_thrust: {
    ...ANGLE,
    symbol: 'η',
    title: 'Down thrust',
    doc: 'How far the shaft points down.',
    detail: true,
  },
  engine_length: {
    ...MILLIMETRES,
    symbol: 'l_e',
    title: 'Engine length',
    doc: 'From backplate to drive washer.',
    detail: true,
  },
  engine_width: { ...MILLIMETRES, symbol: 'w_e', title: 'Engine width', doc: 'Over the lugs.', detail: true },
  bearer_rear: {
    ...MILLIMETRES,
    symbol: 'x_b2',
    title: 'Rear of the bearers',
    doc: 'Aft of the wing root leading edge.',
    detail: true,
  },
  rotor_inertia: {
    dimension: INERTIA,
    unit: 'g·cm²',
    tradeUnit: 'oz·in²',
    symbol: 'I_p',
    title: 'Rotor inertia',
    doc: 'Of propeller, spinner and crankshaft about the shaft.',
    detail: true,
  },
  propeller_diameter: {
    ...MILLIMETRES,
    symbol: 'D',
    title: 'Propeller diameter',
    doc: 'Tip to tip.',
    detail: true,
  },
  pitch: { ...MILLIMETRES, symbol: 'p', title: 'Propeller pitch', doc: 'As marked.', detail: true },
} as const satisfies Readonly<Record<string, Result | Curve>>;

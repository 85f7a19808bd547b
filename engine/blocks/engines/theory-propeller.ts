import { TORQUE_SHARE_AT_REST } from '../../physics/index';
import type { Equation, Theory } from '../block';
import { AIRSPEED_KNOTS } from '../curve';
import { breathingEquation } from './breathing';
import { fuelEquation } from './theory-fuel';

const balanceOf = (torque: string): Equation => ({
  title: 'Rpm at every airspeed',
  text: `${torque} = C_P ρ n² D⁵/2π,  n = Ω/2π`,
  doc: `Engine against propeller, at ${AIRSPEED_KNOTS.length} airspeeds from ${AIRSPEED_KNOTS[0]} to ${AIRSPEED_KNOTS.at(-1)} m/s; flight reads between them by monotone cubics.`,
  source: 'Derivation: balance of torques on the shaft.',
});
const notModelled: readonly string[] = [
  'Change of power with mixture, plug, compression and heat, but for the density of the air.',
  'Swirl and slipstream on wing, tail and fin.',
];

export const twoStrokeTheory: Theory = {
  equations: [
    {
      title: 'Torque',
      text: 'Q(Ω_Q) = k_P Q_m,  dQ/dΩ = 0 there\nQ(Ω_W) = k_P W_m/Ω_W,  dQ/dΩ = −Q/Ω there',
      doc: `k_P the power factor. The cubic between the peaks of torque and power; above the second straight on, so that torque vanishes at twice its rpm; below the first a parabola that leaves ${TORQUE_SHARE_AT_REST} Q_m at rest.`,
      source: 'Derivation: definition of both peaks; the parabola is a guess.',
    },
    breathingEquation('m'),
    balanceOf('w Q(Ω)'),
    fuelEquation,
  ],
  notModelled,
};

export const tachometerTheory: Theory = {
  equations: [
    {
      title: 'Torque at a reading',
      text: 'Q_1 = C_P ρ n_1² D_1⁵/2π',
      doc: 'C_P at rest, by blade elements for the size and shape of the propeller read.',
      source: 'H. Glauert, Airplane Propellers, in W. F. Durand, Aerodynamic Theory IV; see the propeller.',
    },
    {
      title: 'Torque near the readings',
      text: 'one: Q = k_P Q_1 (2 − Ω/Ω_1)\ntwo: Q = k_P [Q_1 + (Q_2 − Q_1) (Ω − Ω_1)/(Ω_2 − Ω_1)]',
      doc: 'k_P the power factor. With one reading power is taken to have its peak there.',
      source: 'Derivation: tangent of constant power; straight line through two points.',
    },
    breathingEquation('1'),
    balanceOf('w Q(Ω)'),
    fuelEquation,
  ],
  notModelled: [
    ...notModelled,
    'Rpm far from the readings: the line holds near them.',
    'An error of the propeller model enters twice and largely cancels where the propeller flown is like the one read.',
  ],
};

export const electricTheory: Theory = {
  equations: [
    {
      title: 'Motor',
      text: 'I = (U − Ω/K_v)/(R + R_p)\nQ = (I − I_0)/K_v',
      doc: 'At full throttle.',
      source:
        'Three-constant model of a permanent-magnet motor: A. E. Fitzgerald, C. Kingsley and S. D. Umans, Electric Machinery, ch. 7 (from memory).',
    },
    {
      title: 'Rpm that is held',
      text: 'd (U − d I R_p) = I R + Ω/K_v,  I = Q K_v + I_0,  I_b = d I',
      doc: 'd share of the voltage that the controller passes on; where it would be above 1 the motor turns as fast as it can.',
      source: 'Derivation: energy, a controller without loss.',
    },
    balanceOf('Q(Ω)'),
    {
      title: 'Charge',
      text: 'I_b = Q_d/t_d where measured,  usable charge = k_b Q_b',
      doc: 'What the charger put back over the running time; else by the motor.',
      source: 'Definition; k_b 0.8 common practice, no source.',
    },
  ],
  notModelled: [
    'Heat: resistance that grows, magnets that weaken, limits of motor and controller.',
    'Voltage that falls as the pack empties: type that of the middle of the flight.',
    'Losses of the controller at part throttle.',
    ...notModelled.slice(1),
  ],
};

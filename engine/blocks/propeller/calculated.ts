import {
  advanceStepOf,
  newAnnulus,
  newAnnulusFlow,
  propellerMass,
  setAnnulus,
  solveAnnulus,
  soundSpeed,
  tabulatePropeller,
  tunedBlade,
} from '../../physics/index';
import { FORCE, LENGTH, overDimension } from '../../units/index';
import { air } from '../air/index';
import { block } from '../block';
import { ANGLE, MILLIMETRES, PLAIN, typedOr } from '../measures';
import { solverResults } from '../solver';
import { readBlade } from './blade';
import { propellerFields } from './fields';
import { lookFields, tableAt, writeLook } from './look';
import { propellerResults } from './results';
import { propellerTheory } from './theory';
import { tunedRow, tunedTo, tuningReasons, tuningResults } from './tuning';

const ring = newAnnulus();
const flow = newAnnulusFlow();

const bladeSolver = solverResults({
  of: 'Of the flow through every ring of the blade, at all speeds of the table',
  steps: 'Most of all rings.',
  residual: { ...PLAIN, doc: 'Of the equation of a ring, the largest of all.' },
});

/** Propeller by its marked size and the shape of its blades. */
export const propeller = block({
  kind: 'propeller',
  role: 'propeller',
  title: 'Propeller',
  doc: 'Thrust and power at any airspeed and rpm, from marked size and blade shape by blade elements. Within some 10 % for most propellers, 35 % for the worst: the reference shows all that was compared. One or two measured pulls tune it to your propeller.',
  line: ['diameter', 'pitch', 'static_thrust'],
  fields: {
    air: { link: 'air', results: air.results, doc: 'The air that it turns in.' },
    ...propellerFields,
    ...lookFields,
  },
  results: { ...propellerResults, ...bladeSolver, ...tuningResults },
  reasons: {
    ...tuningReasons,
    no_flow:
      'No flow was found that fits this propeller ({diameter} × {pitch}). Look at chords and blade angles: one of them may be mistyped.',
  },
  theory: propellerTheory,
  keeps: tunedRow,
  run(m, f, r, i, stride) {
    const density = m[f.air.density + i]!;
    const sound = soundSpeed(m[f.air.pressure + i]!, density);
    const airThere = { kinematicViscosity: m[f.air.kinematic_viscosity + i]!, soundSpeed: sound };
    const blade = tunedTo(m, f, r, i, readBlade(m, f, i), density, airThere);
    if (typeof blade === 'string') return blade;
    const diameter = m[f.diameter + i]!;
    const pitch = m[f.pitch + i]!;
    m[r.diameter + i] = diameter;
    m[r.pitch + i] = pitch;
    m[r.advance_step + i] = advanceStepOf(pitch, diameter);
    const solved = tabulatePropeller(blade, airThere, tableAt(m, r, i, stride));
    if (!solved.settled) return 'no_flow';
    m[r.status + i] = 0;
    m[r.iterations + i] = solved.iterations;
    m[r.residual + i] = solved.residual;
    writeLook(m, f, r, i, stride, density, sound);
    const estimate = propellerMass(blade, m[f.material_density + i]!);
    const mass = typedOr(m[f.mass + i]!, estimate.mass);
    m[r.mass + i] = mass;
    m[r.inertia + i] = estimate.inertia * (mass / estimate.mass);
    return undefined;
  },
  traces: {
    blade: {
      title: 'Blade',
      doc: 'Chord, angle and load along one blade at the rpm and airspeed looked at.',
      columns: {
        radius: { ...MILLIMETRES, symbol: 'r', title: 'Radius', doc: 'From the shaft.' },
        chord: { ...MILLIMETRES, symbol: 'c', title: 'Chord', doc: 'Breadth of the blade.' },
        angle: { ...ANGLE, symbol: 'β', title: 'Blade angle', doc: 'To the plane of rotation.' },
        inflow: { ...ANGLE, symbol: 'φ', title: 'Angle of the flow', doc: 'To the plane of rotation.' },
        lift_coefficient: { ...PLAIN, symbol: 'c_l', title: 'Lift coefficient', doc: 'Of the section.' },
        thrust: {
          dimension: overDimension(FORCE, LENGTH),
          unit: 'N/m',
          symbol: 'dP/dr',
          title: 'Thrust a length',
          doc: 'Of all blades together.',
        },
      },
      run(m, f, r) {
        const density = m[f.air.density]!;
        const radius = m[f.diameter]! / 2;
        const omega = m[f.at_shaft_speed]!;
        if (Number.isNaN(density + radius + omega)) return undefined;
        const [shift, factor] = [m[r.tuned_shift]!, m[r.tuned_chord]!];
        if (Number.isNaN(shift)) return undefined;
        const blade = tunedBlade(readBlade(m, f, 0), shift, factor);
        const n = omega / (2 * Math.PI);
        const J = m[f.at_airspeed]! / (n * blade.diameter);
        const airThere = {
          kinematicViscosity: m[f.air.kinematic_viscosity]!,
          soundSpeed: soundSpeed(m[f.air.pressure]!, density),
        };
        const columns = {
          radius: Array.from(blade.radius, (x) => x * radius),
          chord: Array.from(blade.chord, (c) => c * radius),
          angle: Array.from(blade.angle),
          inflow: [] as number[],
          lift_coefficient: [] as number[],
          thrust: [] as number[],
        };
        for (let k = 0; k < blade.radius.length; k++) {
          setAnnulus(blade, k, J, n, airThere, ring);
          solveAnnulus(ring, flow);
          const pressure = 0.5 * density * (flow.speed * omega * radius) ** 2;
          const [sine, cosine] = [Math.sin(flow.inflow), Math.cos(flow.inflow)];
          columns.inflow.push(flow.inflow);
          columns.lift_coefficient.push(flow.lift);
          columns.thrust.push(blade.blades * pressure * columns.chord[k]! * (flow.lift * cosine - flow.drag * sine));
        }
        return columns;
      },
    },
  },
});

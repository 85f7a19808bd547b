import { describe, expect, it } from 'vitest';
import {
  type FlightSetup,
  type FlightSolution,
  lapPower,
  lineStretch,
  newFlightRoom,
  newSolution,
  solveFlight,
} from '../../engine/physics/index';
import { quern, straightCurves } from '../engine/physics/flight/quern';
import { csvRows, halfUnit, jsonOf } from './aero-rows';
import { usedFlightRows } from './flight-rows';

const room = newFlightRoom();

/*
 * Textbook problems of models on a wire and of masses in steady circular motion, flown by the solver itself with
 * everything else taken away: no drag, lines without weight or air, all forces through the CG. Sources stand in each
 * row; answers to half a unit of the last printed digit.
 */
const FILE = 'circular_flight_examples.json';
const { examples } = jsonOf(FILE);
const row = (id: string) => examples.find((each: { id: string }) => each.id === id);
const near = (computed: number, printed: number): void => {
  expect(Math.abs(computed - printed), `${computed} against ${printed}`).toBeLessThanOrEqual(halfUnit(printed));
};

/** A model whose propeller stops pulling at the speed wanted, so that this is its speed. */
function model(mass: number, speed: number, length: number, changes: Partial<FlightSetup> = {}): FlightSolution {
  const x = newSolution();
  const bare: FlightSetup = {
    ...quern,
    mass,
    gravity: 9.8,
    cgX: 0,
    cgY: 0,
    height: 0,
    // The wire of the problem ends at the CG; here at a guide on the straight line to it, which holds the nose on the
    // path.
    guideRadius: 0.9 * length,
    handleReach: 0,
    lineLinearMass: 0,
    lineDragCoefficient: 0,
    guideX: 0,
    guideY: -0.1 * length,
    wingArea: 0.3,
    profileDrag: 0,
    inducedFactor: 0,
    wingQuarterChord: 0,
    liftLimit: 100,
    liftStation: 0,
    dragStation: 0,
    tailQuarterChord: 1,
    tailInducedFactor: 0,
    downwash: 0,
    finQuarterChord: 1,
    finArea: 0,
    sideArea: 0,
    sideMoment: 0,
    sideSecondMoment: 0,
    dragArea: 0,
    engineX: 0,
    sideThrust: 0,
    inertiaSpan: 0.02,
    inertiaUp: 0.02,
    ...straightCurves(speed, 1, 0, 1000),
    ...changes,
  };
  solveFlight(bare, room, x);
  expect(x.status).toBe('settled');
  expect(x.speed).toBeCloseTo(speed, 9);
  return x;
}

const checks: Readonly<Record<string, () => void>> = {
  serway_6_lift_tilted() {
    const { givens: g, answer, computed } = row('serway_6_lift_tilted');
    const angle = (g.wire_angle_below_horizontal_deg * Math.PI) / 180;
    // The lift stands square to the wire, as wings along it do.
    expect(g.lift_tilt_inward_from_vertical_deg).toBe(g.wire_angle_below_horizontal_deg);
    const x = model(g.mass_kg, g.speed_m_s, g.wire_length_m, { height: g.wire_length_m * Math.sin(angle) });
    near(x.pull, answer.tension_N);
    near(x.pull, computed.tension_N);
    near(x.lift, computed.lift_N);
  },
  cutnell_5_5() {
    const { givens: g, answer } = row('cutnell_5_5');
    g.speeds_m_s.forEach((speed: number, k: number) => {
      const x = model(g.mass_kg, speed, g.guideline_m);
      near(x.pull, answer.tension_N[k]);
      expect(x.lift).toBeCloseTo(g.mass_kg * 9.8, 6);
    });
  },
  cutnell_6_27: () => pulledIn('cutnell_6_27'),
  askew_6_27_variant: () => pulledIn('askew_6_27_variant'),
  verma_7_4w_spring() {
    const { givens: g, answer } = row('verma_7_4w_spring');
    // The line of the spring's stiffness, stretched by its own pull until both agree.
    const stiffness = g.spring_constant_N_m * g.natural_length_m;
    let stretch = 0;
    for (let n = 0; n < 60; n++) {
      const length = g.natural_length_m + stretch;
      const x = model(g.mass_kg, g.angular_speed_rad_s * length, length, { wingArea: 60 });
      stretch = lineStretch(x.pullRadial, g.natural_length_m, stiffness);
    }
    near(stretch, answer.elongation_m);
  },
  khurmi_14_3_gyro_turn() {
    const { givens: g, answer, computed } = row('khurmi_14_3_gyro_turn');
    const speed = g.speed_km_h / 3.6;
    const rotor = {
      rotorInertia: g.rotor_mass_kg * g.radius_of_gyration_m ** 2,
      // Surfaces so large that neither has to turn: the shaft lies along the path as in the book.
      wingArea: 60e3,
      tailArea: 12e3,
      ...straightCurves(speed, 1, 0, (g.rotor_rpm * 2 * Math.PI) / 60),
    };
    const arm = 1;
    /** Couple that the tail has to hold: its lift × the arm between the quarter chords. */
    const couple = (changes: Partial<FlightSetup>) =>
      (model(6000, speed, g.turn_radius_m, { ...rotor, ...changes }).tailLift * arm) / 1000;
    const noseUp = couple({}) - couple({ rotorInertia: 0 });
    // Nose up in a left turn with a rotor that turns clockwise seen from behind: the tail has to lift.
    expect(answer.effect).toBe('nose up for a left turn with clockwise rotation seen from behind');
    near(noseUp, computed.gyroscopic_couple_kN_m);
    // The book's 10.046 comes from a rounded shaft speed.
    expect(Math.abs(noseUp / answer.gyroscopic_couple_kN_m - 1)).toBeLessThan(0.001);
    expect(couple({ spinning: -1 }) - couple({ rotorInertia: 0 })).toBeCloseTo(-noseUp, 5);
  },
};

/** Work to pull a model in on its line until the tension is so many times as great. */
function pulledIn(id: string): void {
  const { givens: g, answer } = row(id);
  const ratio = g.tension_ratio_end_over_start;
  const fast = g.speed_m_s * Math.sqrt((ratio * g.radius_end_m) / g.radius_start_m);
  const start = model(g.mass_kg, g.speed_m_s, g.radius_start_m);
  const end = model(g.mass_kg, fast, g.radius_end_m);
  expect(end.pull / start.pull).toBeCloseTo(ratio, 9);
  near(0.5 * g.mass_kg * (end.speed ** 2 - start.speed ** 2), answer.work_J);
}

describe('textbook problems of circular flight', () => {
  it.each(usedFlightRows(FILE))('%s', (id) => {
    expect(checks[id], `no check of ${id}`).toBeDefined();
    checks[id]!();
  });
});

/*
 * FAI Sporting Code, Volume F2, courses as national associations and clubs quote it: radius and laps make the distance.
 * A lap time over so many laps must give the speed over that distance; the radii are rounded to 10 mm, so 0.04 % is
 * asked for.
 */
const COURSES = 'competition_courses.csv';
const course = (name: string) => csvRows(COURSES).find((each) => `${each.class}: ${each.item}` === name)!.value!;

/** Distance of so many laps at a radius, by the speed that a lap time of 2 s means, m. */
function distance(radius: number, laps: number): number {
  const lap = lapPower({
    lapTime: 2,
    mass: 0.4,
    gravity: 9.80665,
    radius,
    height: 0,
    lines: {
      count: 2,
      diameter: 0.0004,
      handleReach: 0.5,
      guideRadius: radius - 0.3,
      dragCoefficient: 1,
      dragFactor: 1,
      kinematicViscosity: 1.46e-5,
      density: 1.225,
    },
    lineLinearMass: 0.0007,
    dragArea: 0.002,
    wingArea: 0.1,
    inducedFactor: 0.08,
    propellerDiameter: 0.16,
  });
  return lap.speed * 2 * laps;
}

const speedRadius = Number(course('F2A speed: flight radius'));
const raceRadius = Number(course('F2C team race: line length'));
const courses: Readonly<Record<string, () => number>> = {
  'F2A speed: flight radius': () => distance(speedRadius, 9) / 1000,
  'F2A speed: timed distance': () => distance(speedRadius, Number(course('F2A speed: timed distance'))) / 1000,
  'F2C team race: line length': () => distance(raceRadius, 10) / 1000,
  'F2C team race: 10 laps': () => distance(raceRadius, 10) / (1000 * Number(course('F2C team race: 10 laps'))),
  'F2C team race: heat / final distance': () =>
    distance(raceRadius, Number(course('F2C team race: heat / final distance').split(' / ')[0])) / 10000,
  'F2D combat: line length': () => distance(Number(course('F2D combat: line length').split(' ')[0]), 10) / 1000,
  'F2F diesel profile: qualifying race / final': () =>
    distance(raceRadius, Number(course('F2F diesel profile: qualifying race / final').split(' / ')[1])) / 20000,
};

describe('courses', () => {
  it.each(usedFlightRows(COURSES))('%s', (name) => {
    expect(courses[name], `no check of ${name}`).toBeDefined();
    expect(Math.abs(courses[name]!() - 1)).toBeLessThan(0.0004);
  });
});

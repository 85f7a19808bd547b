import {
  dryPart,
  levelDragArea,
  STANDARD_GRAVITY,
  speedOfLap,
  type TimedLap,
  viscosityOfAir,
} from '../../physics/index';
import { air } from '../air/index';
import type { Columns } from '../block';
import { bodyResults } from '../body/results';
import { typedOr } from '../measures';
import { wingResults } from '../wing/results';
import type { knownSetup } from './measured-lap-fields';
import type { engineMount } from './mount';

/** What tells the drag of the timed lap, and the air of today. */
export const timedLinks = {
  air: { link: 'air', results: air.results, doc: 'The air of today, in which the propeller works.' },
  wing: { link: 'wing', results: wingResults, doc: 'The wing, for the drag of the timed lap where none is typed.' },
  body: {
    link: 'body',
    results: bodyResults,
    doc: 'Fuselage and exposed items, for the drag of the timed lap where none is typed.',
  },
} as const;

type Fields = Columns<typeof timedLinks & typeof knownSetup & typeof engineMount>;

/** Steepest lines at which a lap is timed: sine of their elevation. */
const STEEPEST = 0.98;

/** The air in which the lap was timed: its viscosity and dry part are those of today where its temperature and humidity are not said. */
export function airThen(
  m: Float64Array,
  f: Fields,
  i: number,
): { readonly known: number; readonly viscosity: number; readonly knownDryPart: number } {
  const known = m[f.known_density + i]!;
  const temperature = m[f.known_temperature + i]!;
  const humidity = m[f.known_humidity + i]!;
  const said = !Number.isNaN(temperature);
  return {
    known,
    viscosity: said ? viscosityOfAir(temperature) : m[f.air.viscosity + i]!,
    knownDryPart: said && !Number.isNaN(humidity) ? dryPart(known, temperature, humidity) : m[f.air.dry_part + i]!,
  };
}

/** The timed lap with the set-up that flew it; undefined where its height is out of reach. */
export function timedLap(m: Float64Array, f: Fields, i: number): TimedLap | undefined {
  const radius = m[f.known_radius + i]! + m[f.known_arm + i]!;
  const height = m[f.known_height + i]!;
  if (Math.abs(height) > STEEPEST * radius) return undefined;
  const { known: density, viscosity } = airThen(m, f, i);
  const kinematicViscosity = viscosity / density;
  const lapTime = m[f.lap_time + i]!;
  const mass = m[f.known_mass + i]!;
  const area = m[f.wing.area + i]!;
  const wing = {
    area,
    profileDrag: m[f.wing.profile_drag + i]!,
    sectionSpeed: (m[f.wing.section_reynolds + i]! * kinematicViscosity) / m[f.wing.mean_chord + i]!,
    dragPower: m[f.wing.drag_power + i]!,
    dragSlope: m[f.wing.drag_slope + i]!,
  };
  const speed = speedOfLap(radius, height, lapTime);
  const level = levelDragArea(wing, m[f.body.drag_area + i]!, speed, mass * STANDARD_GRAVITY, density);
  return {
    lapTime,
    mass,
    gravity: STANDARD_GRAVITY,
    radius,
    height,
    lines: {
      count: m[f.known_count + i]!,
      diameter: m[f.known_diameter + i]!,
      handleReach: m[f.known_handle_reach + i]!,
      guideRadius: m[f.known_radius + i]!,
      dragCoefficient: m[f.known_line_drag + i]!,
      dragFactor: 1,
      kinematicViscosity,
      density,
    },
    lineLinearMass: m[f.known_linear_mass + i]!,
    dragArea: typedOr(m[f.known_drag_area + i]!, level),
    wingArea: typedOr(m[f.known_induced_area + i]!, area / m[f.wing.induced_factor + i]!),
    inducedFactor: 1,
    propellerDiameter: typedOr(m[f.known_propeller_diameter + i]!, m[f.propeller_diameter + i]!),
  };
}

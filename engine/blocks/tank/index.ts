import {
  dot,
  fuelSurface,
  gravityAtRest,
  gravityInFlight,
  headAt,
  isInside,
  type Place,
  solidOf,
  volumeBeyond,
} from '../../physics/index';
import { PRESSURE, VOLUME } from '../../units/index';
import { air } from '../air/index';
import { block, type Columns, type Shape } from '../block';
import { engineResults } from '../engines/results';
import { finiteShapes } from '../finite-shapes';
import { flightResults } from '../flight/results';
import { MILLIMETRES } from '../measures';
import { partsResults, partsRole } from '../parts/results';
import { tankCautions } from './cautions';
import { drawTank } from './draw';
import { tankFields } from './fields';
import { tankResults } from './results';
import { readTank, referenceLevel, type TankSet } from './set';
import { tankTemplate } from './template';
import { tankTheory } from './theory';
import { tankViewColumns, tankViews } from './traces';

const tankLinks = {
  air: { link: 'air', results: air.results, doc: 'The air that presses into the vent.' },
  parts: { link: partsRole, results: partsResults, doc: 'Weight of the model.' },
  engine: { link: 'engine', results: engineResults, doc: 'Where the spray bar is, unless typed.' },
  flight: { link: 'flight', results: flightResults, doc: 'The load of the lap, and the fuel that it takes.' },
  body: { link: 'body', optional: true, doc: 'Size and place of the tank that stands in the air, unless typed.' },
  gear: { link: 'gear', optional: true, doc: 'How the model stands at rest, unless typed.' },
} as const;

type Fields = Columns<typeof tankLinks & typeof tankFields>;

/** What the fuel feels in level flight. */
const flown = (m: Float64Array, { flight }: Fields, i: number): Place =>
  gravityInFlight({
    speed: m[flight.speed + i]!,
    radius: m[flight.radius + i]!,
    elevation: m[flight.elevation + i]!,
    outboardLow: m[flight.outboard_low + i]!,
    sideslip: m[flight.sideslip + i]!,
    pitch: m[flight.pitch + i]!,
    gravity: m[flight.gravity + i]!,
  });

const rested = (m: Float64Array, f: Fields, i: number): Place =>
  gravityAtRest(m[f.flight.gravity + i]!, m[f.rest_pitch + i]!);

/** Pressure at the spray bar over that of the air around it, Pa, with the surface at `level`; `ram` what presses into the vent. */
const headOf = (tank: TankSet, density: number, gravity: Place, level: number, ram: number): number =>
  headAt(density, gravity, tank.spray, referenceLevel(tank, gravity, level)) + ram;

/** What presses into the vent in level flight, Pa. */
const ramOf = (m: Float64Array, f: Fields, { pressurised, forward }: TankSet, i: number): number =>
  pressurised ? m[f.pressure + i]! : forward ? 0.5 * m[f.air.density + i]! * m[f.flight.speed + i]! ** 2 : 0;

/** How far a mass of fuel is from that of the table of weights, as a share of the latter; none where the table has no fuel. */
const apartFrom = (fuel: number, counted: number): number => (counted > 0 ? Math.abs(fuel / counted - 1) : Number.NaN);

/** The vent runs out where its inner end is covered and its outer end lies deeper than the surface. */
const spills = (tank: TankSet, gravity: Place, level: number): boolean =>
  !tank.pressurised && dot(gravity, tank.vent) > level && dot(gravity, tank.outlet) > level;

/** Fuel in its tank, in the lap and at rest. */
export const tank = block({
  kind: 'tank',
  title: 'Tank',
  doc: 'How fuel lies in the tank in the lap and at rest, the head that it gives at the spray bar as it is drawn, and how many laps it lasts. The load of the lap throws the fuel outward: its surface stands nearly upright.',
  line: ['volume', 'usable'],
  fields: { ...tankLinks, ...tankFields },
  results: tankResults,
  reasons: {
    cut_away: 'The cuts leave nothing of the tank: type shorter cuts, or leave some of them blank.',
    pickup:
      'The pickup lies outside the tank: type a place within its length {length}, width {width} and height {height}, and clear of the cuts.',
    dry: 'The pickup is uncovered in level flight from the start, with {volume} in the tank: move the pickup outward and aft, or turn the tank.',
    too_narrow: 'The width that narrows, {taper}, is more than the tank width of {width}.',
    edge: 'The outboard edge of {edge_height} is higher than the tank of {height}.',
  },
  theory: tankTheory,
  cautions: tankCautions,
  run(m, f, r, i) {
    const at = (column: number): number => m[column + i]!;
    if (at(f.shape) === 1 && at(f.taper) > at(f.width)) return 'too_narrow';
    if (at(f.shape) === 1 && at(f.edge_height) > at(f.height)) return 'edge';
    const set = readTank(m, f, f.engine, i);
    const solid = solidOf(set.body);
    if (!(solid.volume > 0)) return 'cut_away';
    if (!isInside(set.body, solid.centroid, set.pickup)) return 'pickup';
    const density = at(f.fuel_density);
    const whole = solid.volume * at(f.fill);
    m[r.fuel_apart + i] = apartFrom(density * solid.volume, at(f.parts.mass_full) - at(f.parts.mass_empty));
    m[r.volume + i] = whole;
    const load = flown(m, f, i);
    const ground = rested(m, f, i);
    const unusable = volumeBeyond(set.body, load, set.pickup);
    const usable = whole - unusable;
    if (!(usable > 0)) return 'dry';
    const start = fuelSurface(set.body, load, whole);
    const half = fuelSurface(set.body, load, unusable + usable / 2);
    const end = fuelSurface(set.body, load, unusable);
    const rest = fuelSurface(set.body, ground, whole);
    const restEnd = fuelSurface(set.body, ground, unusable);
    const ram = ramOf(m, f, set, i);
    m[r.unusable + i] = unusable;
    m[r.usable + i] = usable;
    const perLap = at(f.flight.fuel_per_lap);
    const laps = perLap > 0 ? usable / perLap : Number.NaN;
    m[r.laps + i] = laps;
    m[r.time + i] = laps * at(f.flight.lap_time);
    m[r.surface_angle + i] = Math.atan2(Math.hypot(load[0], load[1]), -load[2]);
    m[r.load + i] = Math.hypot(...load) / at(f.flight.gravity);
    const head = (level: number): number => headOf(set, density, load, level, ram);
    m[r.head_start + i] = head(start.level);
    m[r.head_half + i] = head(half.level);
    m[r.head_end + i] = head(end.level);
    m[r.head_change + i] = head(end.level) - head(start.level);
    const still = headOf(set, density, ground, rest.level, 0);
    m[r.head_rest + i] = still;
    m[r.head_rest_end + i] = headOf(set, density, ground, restEnd.level, 0);
    m[r.needle_change + i] = head(start.level) - still;
    m[r.level_rest + i] = (dot(ground, set.spray) - rest.level) / at(f.flight.gravity);
    m[r.spills_at_rest + i] = spills(set, ground, rest.level) ? 1 : 0;
    m[r.spills_in_flight + i] = spills(set, load, start.level) ? 1 : 0;
    m[r.fuel_x_start + i] = start.fuel.centroid[0];
    m[r.fuel_y_start + i] = start.fuel.centroid[1];
    m[r.fuel_x_half + i] = half.fuel.centroid[0];
    // Moments of what is drawn: all that was there less what stays.
    const [full, left] = [density * whole, density * unusable];
    const gone = (axis: 0 | 1): number =>
      full * start.fuel.centroid[axis] - (left > 0 ? left * end.fuel.centroid[axis] : 0);
    const mass = at(f.parts.mass_empty) + full;
    const shift = (axis: 0 | 1, empty: number): number => {
      const before = (at(f.parts.mass_empty) * empty + full * start.fuel.centroid[axis]) / mass;
      const after =
        (at(f.parts.mass_empty) * empty + full * start.fuel.centroid[axis] - gone(axis)) / (mass - full + left);
      return after - before;
    };
    m[r.cg_shift + i] = shift(0, at(f.parts.x_empty));
    m[r.cg_shift_out + i] = shift(1, at(f.parts.y_empty));
    m[r.status + i] = [start, half, end, rest, restEnd].every(({ status }) => status === 'settled') ? 0 : 1;
    m[r.iterations + i] = start.iterations + half.iterations + end.iterations;
    m[r.residual + i] = Math.max(Math.abs(half.residual), Math.abs(end.residual));
    return undefined;
  },
  traces: {
    views: {
      title: 'How the fuel lies',
      doc: 'Outlines of the tank and of the fuel in it: plan and end view in level flight, side view at rest.',
      outlines: true,
      columns: tankViewColumns,
      run(m, f, r) {
        const [whole, unusable] = [m[r.volume]!, m[r.unusable]!];
        if (Number.isNaN(unusable)) return undefined;
        const set = readTank(m, f, f.engine, 0);
        const [flight, rest] = [flown(m, f, 0), rested(m, f, 0)];
        const density = m[f.fuel_density]!;
        const ram = ramOf(m, f, set, 0);
        const head = (view: 'flight' | 'rest', reference: number): number =>
          view === 'rest'
            ? headAt(density, rest, set.spray, reference)
            : headAt(density, flight, set.spray, reference) + ram;
        return tankViews({ set, flight, rest, pitch: m[f.rest_pitch]!, whole, unusable, head });
      },
    },
    drain: {
      title: 'As the tank empties',
      doc: 'Head at the spray bar in level flight against the fuel left, from filled to the pickup uncovering.',
      columns: {
        left: {
          dimension: VOLUME,
          unit: 'mL',
          tradeUnit: 'fl oz',
          symbol: 'V',
          title: 'Fuel left',
          doc: 'In the tank.',
        },
        head: { dimension: PRESSURE, unit: 'Pa', symbol: 'p', title: 'Head at the spray bar', doc: 'In level flight.' },
        fuel_x: {
          ...MILLIMETRES,
          symbol: 'x_f',
          title: 'Middle of the fuel',
          doc: 'Aft of the wing root leading edge.',
        },
      },
      run(m, f, r) {
        const [whole, unusable] = [m[r.volume]!, m[r.unusable]!];
        if (Number.isNaN(unusable)) return undefined;
        const set = readTank(m, f, f.engine, 0);
        const load = flown(m, f, 0);
        const ram = ramOf(m, f, set, 0);
        const left = Array.from(
          { length: DRAIN_PLACES },
          (_, k) => whole + ((unusable - whole) * k) / (DRAIN_PLACES - 1),
        );
        const surfaces = left.map((volume) => fuelSurface(set.body, load, volume));
        return {
          left,
          head: surfaces.map(({ level }) => headOf(set, m[f.fuel_density]!, load, level, ram)),
          fuel_x: surfaces.map(({ fuel }) => fuel.centroid[0]),
        };
      },
    },
  },
  templates(m, f) {
    const { body, pickup, vent } = readTank(m, f, f.engine, 0).own;
    return tankTemplate(body, pickup, vent);
  },
  draw(m, f, r): Shape[] {
    const set = readTank(m, f, f.engine, 0);
    const volume = (m[r.volume]! + m[r.unusable]!) / 2;
    if (Number.isNaN(volume)) return finiteShapes(drawTank(set));
    return finiteShapes(drawTank(set, { volume, flight: flown(m, f, 0), rest: rested(m, f, 0) }));
  },
});

const DRAIN_PLACES = 25;

import {
  type BodyStation,
  bodyFormFactor,
  frictionDragArea,
  measureSide,
  measureSideOutline,
  type SideMeasures,
  slabWettedArea,
  slenderBodyCouple,
  surfaceFormFactor,
} from '../../physics/index';
import { air } from '../air/index';
import { block, type Columns, type Shape } from '../block';
import { finiteShapes } from '../finite-shapes';
import { typedOr } from '../measures';
import { cornersAt, ofOutline } from '../outline';
import { tailResults } from '../tail/results';
import { drawBox, drawFuselage, drawGear, drawOutline } from './draw';
import { bodyEstimates, items, outline, sideOutlines } from './fields';
import { bodyResults } from './results';
import { bodyTheory } from './theory';

/** Thickness over chord taken for the form factor of thin flat tail surfaces. */
const TAIL_THICKNESS = 0.06;

/** Sizes that other blocks take as they were typed. */
const PASSED_ON = [
  'width',
  'wheel_x',
  'wheel_z',
  'wheel_diameter',
  'wheel_track',
  'wire_diameter',
  'tank_x',
  'tank_z',
  'tank_length',
  'tank_height',
] as const;

/** What the side of the fuselage tells, from its outline or from the four places. */
interface Side extends SideMeasures {
  readonly nose: number;
  readonly tailEnd: number;
  readonly tailBottom: number;
  readonly height: number;
}

const sideOfStations = (stations: readonly BodyStation[], middle: number): Side => ({
  ...measureSide(stations),
  nose: stations[0]!.x,
  tailEnd: stations[3]!.x,
  tailBottom: middle - stations[3]!.depth / 2,
  height: middle,
});

/** The four places of a ruler along a fuselage of sample i. */
const stationsAt = (m: Float64Array, f: Columns<typeof outline>, i: number): BodyStation[] => [
  { x: m[f.nose_x + i]!, depth: m[f.nose_depth + i]! },
  { x: m[f.front_x + i]!, depth: m[f.front_depth + i]! },
  { x: m[f.rear_x + i]!, depth: m[f.rear_depth + i]! },
  { x: m[f.tail_x + i]!, depth: m[f.tail_depth + i]! },
];

/** Fuselage, and everything that stands in the air beside wing and lines. */
export const body = block({
  kind: 'body',
  title: 'Fuselage and drag',
  doc: 'Side outline of the fuselage, at four places or by its corners, and the sizes of wheels, gear, engine parts and tank. Gives the side area that holds the nose in or out, and a drag table with one row for each thing.',
  line: ['drag_area', 'side_area'],
  lineTitled: true,
  fields: {
    air: { link: 'air', results: air.results, doc: 'The air, for friction.' },
    tail: { link: 'tail', results: tailResults, doc: 'The tail surfaces, for their friction.' },
    ...outline,
    ...items,
    ...bodyEstimates,
  },
  outlines: sideOutlines,
  results: bodyResults,
  reasons: {
    outline:
      'The places along the fuselage run backward: nose {nose_x}, front {front_x}, rear {rear_x}, tail end {tail_x}. Each must lie behind the one before.',
  },
  theory: bodyTheory,
  run(m, f, r, i, stride, o) {
    const corners = cornersAt(m, o.side_outline!, i, stride);
    const stations = stationsAt(m, f, i);
    for (let k = 1; k < 4 && !corners; k++) if (stations[k]!.x < stations[k - 1]!.x) return 'outline';
    const side = corners
      ? ofOutline('side_outline', () => measureSideOutline(corners))
      : sideOfStations(stations, m[f.middle_height + i]!);
    const length = side.tailEnd - side.nose;
    if (length === 0) return 'outline';
    const width = m[f.width + i]!;
    m[r.side_area + i] = side.area;
    m[r.side_moment + i] = side.moment;
    m[r.side_second_moment + i] = side.secondMoment;
    m[r.side_centroid + i] = side.area > 0 ? side.moment / side.area : (side.nose + side.tailEnd) / 2;
    m[r.side_slope + i] = m[f.side_slope + i]!;
    m[r.slender_couple + i] = typedOr(m[f.slender_couple + i]!, slenderBodyCouple(side.roundVolume));
    m[r.pitch_couple + i] = slenderBodyCouple((Math.PI / 4) * width * width * length);
    m[r.cross_flow_drag + i] = m[f.cross_flow_drag + i]!;

    m[r.nose_x + i] = side.nose;
    m[r.tail_x + i] = side.tailEnd;
    m[r.tail_bottom + i] = side.tailBottom;
    m[r.middle_height + i] = side.height;
    for (const name of PASSED_ON) m[r[name] + i] = m[f[name] + i]!;

    const speed = m[f.friction_speed + i]!;
    const nu = m[f.air.kinematic_viscosity + i]!;
    const wetted = slabWettedArea(side.area, width, length);
    const round = Math.sqrt(((4 / Math.PI) * width * side.area) / length);
    const fuselage = frictionDragArea(wetted, length, bodyFormFactor(round, length), speed, nu);
    const t = f.tail;
    const form = surfaceFormFactor(TAIL_THICKNESS);
    const surfaces =
      frictionDragArea(2 * m[t.area + i]!, m[t.mean_chord + i]!, form, speed, nu) +
      frictionDragArea(2 * m[t.fin_area + i]!, m[t.fin_mean_chord + i]!, form, speed, nu);
    const wheels = m[f.wheel_count + i]! * m[f.wheel_diameter + i]! * m[f.wheel_width + i]! * m[f.wheel_drag + i]!;
    const wire = m[f.wire_length + i]! * m[f.wire_diameter + i]! * m[f.wire_drag + i]!;
    const head = m[f.head_width + i]! * m[f.head_height + i]! * m[f.head_drag + i]!;
    const silencer = (Math.PI / 4) * m[f.silencer_diameter + i]! ** 2 * m[f.silencer_drag + i]!;
    const tank = m[f.tank_width + i]! * m[f.tank_height + i]! * m[f.tank_drag + i]!;
    const rows = fuselage + surfaces + wheels + wire + head + silencer + tank;
    const whole = typedOr(m[f.drag_area + i]!, rows + m[f.other_drag_area + i]!);
    m[r.drag_area + i] = whole;
    m[r.drag_area_body + i] = fuselage;
    m[r.drag_area_tail + i] = surfaces;
    m[r.drag_area_wheels + i] = wheels;
    m[r.drag_area_wire + i] = wire;
    m[r.drag_area_head + i] = head;
    m[r.drag_area_silencer + i] = silencer;
    m[r.drag_area_tank + i] = tank;
    m[r.drag_area_other + i] = whole - rows;
    return undefined;
  },
  draw(m, f, r, o): Shape[] {
    const corners = cornersAt(m, o.side_outline!, 0, 1);
    const middle = corners ? m[r.middle_height]! : m[f.middle_height]!;
    const width = m[f.width]!;
    return finiteShapes([
      ...(corners ? drawOutline(corners, width) : drawFuselage(stationsAt(m, f, 0), width, middle)),
      ...drawBox('tank', {
        x: m[f.tank_x]!,
        y: m[f.tank_y]!,
        z: m[f.tank_z]!,
        length: m[f.tank_length]!,
        width: m[f.tank_width]!,
        height: m[f.tank_height]!,
      }),
      ...drawGear({
        count: m[f.wheel_count]!,
        x: m[f.wheel_x]!,
        z: m[f.wheel_z]!,
        diameter: m[f.wheel_diameter]!,
        width: m[f.wheel_width]!,
        track: m[f.wheel_track]!,
        footZ: middle,
      }),
    ]);
  },
});

import {
  bowOf,
  catenary,
  endsOf,
  type LineShape,
  lapRate,
  lineShape as shapeOfLines,
  stretchAngle,
  type TurningBundle,
  unevenPair,
} from '../../physics/index';
import { block, type Columns, type TraceColumns } from '../block';
import { DIRECTIONS } from '../flight/directions';
import { typedOr } from '../measures';
import { lineShapeFields, lineShapeLinks } from './fields';
import { lineShapeResults } from './results';
import { lineShapeTheory } from './theory';
import { lineColumns } from './traces';

type Fields = Columns<typeof lineShapeLinks>;

/** All lines as they turn in level flight. */
function bundleOf(m: Float64Array, { air, lines, flight }: Fields, i: number): TurningBundle {
  const clockwise = DIRECTIONS[m[flight.direction + i]!] === 'clockwise';
  const rate = lapRate(m[flight.lap_time + i]!);
  return {
    count: m[lines.count + i]!,
    diameter: m[lines.diameter + i]!,
    linearMass: m[lines.linear_mass + i]!,
    dragCoefficient: m[lines.drag_coefficient + i]!,
    dragFactor: m[lines.drag_factor + i]!,
    density: m[air.density + i]!,
    kinematicViscosity: m[air.kinematic_viscosity + i]!,
    gravity: m[flight.gravity + i]!,
    rate: clockwise ? -rate : rate,
  };
}

function endsIn(m: Float64Array, { lines, flight }: Fields, i: number) {
  return {
    guideRadius: m[lines.guide_radius + i]!,
    elevation: m[flight.elevation + i]!,
    pull: m[flight.pull + i]!,
    handle: m[lines.handle_reach + i]!,
  };
}

/** The lines in full. */
export const lineShape = block({
  kind: 'line_shape',
  slow: true,
  title: 'Lines in full',
  doc: 'The shape of the lines in space between handle and guide in level flight: how they bow back and down, what that and their stretch do to the radius, and the handle angle that uneven pull costs.',
  line: ['stretch', 'line_trail'],
  lineTitled: true,
  fields: { ...lineShapeLinks, ...lineShapeFields },
  results: lineShapeResults,
  reasons: {
    no_shape:
      'No shape of the lines joins handle and guide with the pull of {flight.pull}: the drag of the lines would carry them too far back. More pull, or thinner or fewer lines, would hold them.',
    line_slack:
      'The easier pulled line would have {easier_pull} at the model, with {difference} between both lines: too little to hold a shape. A smaller difference of pull, or more pull, would keep it tight.',
  },
  theory: lineShapeTheory,
  run(m, f, r, i) {
    const bundle = bundleOf(m, f, i);
    const ends = endsIn(m, f, i);
    const { count, rate } = bundle;
    const stiffness = m[f.lines.stiffness + i]!;
    const shape = shapeOfLines(bundle, ends);
    m[r.status + i] = 0;
    m[r.iterations + i] = shape.iterations;
    m[r.residual + i] = shape.residual;
    const bow = bowOf(shape, rate);
    const at = endsOf(shape, ends.elevation, rate);
    // A line that leaves handle or guide square to the slant or beyond is no line that holds a model.
    if (shape.status !== 'settled' || !(Math.abs(at.guideTrail) < MOST_TRAIL)) return 'no_shape';

    const alone = count < 2;
    const difference = alone ? 0 : typedOr(m[f.difference + i]!, m[f.difference_share + i]! * ends.pull);
    m[r.difference + i] = difference;
    m[r.harder_pull + i] = ends.pull / count + difference / 2;
    m[r.easier_pull + i] = ends.pull / count - difference / 2;
    const pair = unevenPair(bundle, { ...ends, handle: shape.handle }, difference, stiffness);
    if (pair?.easier.status !== 'settled' || pair.harder.status !== 'settled') return 'line_slack';

    const stretch = shape.pullLength / (count * stiffness);
    m[r.handle_trail + i] = at.handleTrail;
    m[r.bow_back + i] = bow.greatestBack;
    m[r.bow_down + i] = bow.greatestDown;
    m[r.bow_length + i] = bow.extra;
    m[r.stretch + i] = stretch;
    m[r.reach_change + i] = stretch - bow.extra;
    m[r.handle_angle + i] = stretchAngle(pair.stretch + pair.bow, m[f.lines.handle_spacing + i]!);
    m[r.stretch_difference + i] = pair.stretch;
    m[r.bow_difference + i] = pair.bow;
    m[r.length + i] = shape.length;
    m[r.handle_sag + i] = at.handleSag;
    m[r.pull_at_handle + i] = at.handlePull;
    m[r.line_trail + i] = at.guideTrail;
    m[r.line_sag + i] = at.guideSag;
    m[r.line_drag + i] = at.drag;
    m[r.press + i] = at.press;
    m[r.handle_pull_change + i] = at.handlePull / m[f.flight.pull_at_handle + i]! - 1;
    m[r.drag_change + i] = at.drag / m[f.flight.line_drag + i]! - 1;
    m[r.press_change + i] = at.press / m[f.flight.line_weight_at_guide + i]! - 1;
    const span = m[f.lines.flying_length + i]!;
    const hanging = count * bundle.linearMass * bundle.gravity;
    m[r.rest_sag + i] = catenary(span, 0, typedOr(m[f.rest_pull + i]!, ends.pull), hanging).sag;
    return undefined;
  },
  traces: {
    line: {
      title: 'Along the lines',
      doc: 'Place, bow, direction and tension of the lines in level flight, from the handle to the guide.',
      columns: lineColumns,
      run(m, f, r) {
        if (Number.isNaN(m[r.bow_back]!)) return undefined;
        const bundle = bundleOf(m, f, 0);
        return alongShape(shapeOfLines(bundle, endsIn(m, f, 0)), bundle.rate);
      },
    },
  },
});

const MOST_TRAIL = (85 * Math.PI) / 180;

function alongShape(shape: LineShape, rate: number): TraceColumns {
  const { along, x, y, z, pullX, pullY, pullZ } = shape;
  const bow = bowOf(shape, rate);
  const way = rate < 0 ? -1 : 1;
  const [level, , upright] = shape.guide.map((each) => each / Math.hypot(...shape.guide)) as [number, number, number];
  const each = (value: (k: number) => number): Float64Array => along.map((_, k) => value(k));
  return {
    distance: along,
    radius: each((k) => Math.hypot(x[k]!, y[k]!)),
    height: z,
    behind: each((k) => -way * y[k]!),
    back: bow.back,
    down: bow.down,
    trail: each((k) => {
      // Against the slant over its own place, as level flight tells it at the guide; at the axis itself the line points outward.
      const radius = Math.hypot(x[k]!, y[k]!);
      if (radius === 0) return 0;
      const ahead = (pullY[k]! * x[k]! - pullX[k]! * y[k]!) / radius;
      const outward = (pullX[k]! * x[k]! + pullY[k]! * y[k]!) / radius;
      return Math.atan2(way * ahead, outward * level + pullZ[k]! * upright);
    }),
    slope: each((k) => Math.atan2(pullZ[k]!, Math.hypot(pullX[k]!, pullY[k]!))),
    tension: each((k) => Math.hypot(pullX[k]!, pullY[k]!, pullZ[k]!)),
  };
}

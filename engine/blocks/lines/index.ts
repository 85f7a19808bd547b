import {
  LINE_KINDS,
  LINE_MEASURES,
  lineLinearMass,
  lineMakeup,
  lineStiffness,
  STANDARD_GRAVITY,
} from '../../physics/index';
import { block, type Columns } from '../block';
import { leadoutResults } from '../leadouts/index';
import { typedOr } from '../measures';
import { ratedBreakingLoad } from '../wire';
import { linesCautions } from './cautions';
import { linesFields } from './fields';
import { linesResults } from './results';
import { linesTheory } from './theory';

/** What the kind of line brings, where nothing is typed. */
function writeKind(m: Float64Array, f: Columns<typeof linesFields>, r: Columns<typeof linesResults>, i: number): void {
  const kindAt = m[f.kind + i]!;
  const kind = LINE_KINDS[kindAt]!;
  const diameter = m[f.diameter + i]!;
  m[r.drag_coefficient + i] = typedOr(m[f.drag_coefficient + i]!, kind.dragCoefficient);
  m[r.stiffness + i] = typedOr(m[f.stiffness + i]!, lineStiffness(kind, diameter));
  m[r.breaking_load + i] = typedOr(m[f.breaking_load + i]!, ratedBreakingLoad(kindAt, diameter));
}

/** The lines between handle and model. */
export const lines = block({
  kind: 'lines',
  title: 'Lines',
  doc: 'Kind, number, diameter and length of the lines, and what stands between grip and guide. Gives the radius of the circle, the make-up, and what the lines weigh, drag and carry.',
  line: ['count', 'diameter', 'length'],
  fields: {
    leadouts: { link: 'leadouts', results: leadoutResults, doc: 'Where the guide stands on the wing.' },
    ...linesFields,
  },
  results: linesResults,
  reasons: {
    too_short:
      'The lines are {length} long, measured as typed; what stands between grip and guide beside them is longer. Type a longer length, or shorter handle cable, connectors and leadout.',
  },
  theory: linesTheory,
  cautions: linesCautions,
  run(m, f, r, i) {
    const kind = LINE_KINDS[m[f.kind + i]!]!;
    const count = m[f.count + i]!;
    const diameter = m[f.diameter + i]!;
    const reach = m[f.handle_reach + i]!;
    const makeup = lineMakeup(m[f.length + i]!, LINE_MEASURES[m[f.measure + i]!]!, {
      handleCable: m[f.handle_cable + i]!,
      connectors: m[f.connectors + i]!,
      exposedLeadout: m[f.exposed_leadout + i]!,
      guideArm: -m[f.leadouts.guide_y + i]!,
      wraps: m[f.wraps + i]!,
    });
    if (!(makeup.eyelets > 0)) return 'too_short';
    const perLength = typedOr(
      m[f.set_mass + i]! / (count * makeup.eyelets),
      typedOr(m[f.linear_mass + i]!, lineLinearMass(kind, diameter)),
    );
    const mass = count * perLength * makeup.flying;
    m[r.count + i] = count;
    m[r.diameter + i] = diameter;
    m[r.flying_length + i] = makeup.flying;
    m[r.guide_radius + i] = reach + makeup.flying;
    m[r.handle_reach + i] = reach;
    m[r.centreline_length + i] = makeup.toCentreline;
    m[r.eyelet_length + i] = makeup.eyelets;
    m[r.cut_length + i] = makeup.cut;
    m[r.linear_mass + i] = perLength;
    m[r.mass + i] = mass;
    m[r.weight + i] = mass * STANDARD_GRAVITY;
    m[r.drag_factor + i] = m[f.drag_factor + i]!;
    m[r.handle_spacing + i] = m[f.handle_spacing + i]!;
    writeKind(m, f, r, i);
    return undefined;
  },
});

import { SECTION_FAMILIES } from '../../library/index';
import {
  chordLoadStation,
  inducedFactor,
  liftingLine,
  measurePlanform,
  outlineBays,
  type Planform,
  panelOutline,
  STANDARD_KINEMATIC_VISCOSITY,
  WING_SHARE_OF_SECTION_LIFT,
  wingSlope,
} from '../../physics/index';
import { block, type Columns, type Shape } from '../block';
import { finiteShapes } from '../finite-shapes';
import { typedOr } from '../measures';
import { cornersAt, type OutlineColumns, ofOutline, turned } from '../outline';
import { drawWing, type WingOutline } from './draw';
import { PANEL_OUTLINES, panelOutlines, wingEstimates, wingRibs, wingShape } from './fields';
import { wingResults } from './results';
import { modelSection } from './section';
import { wingTemplates } from './template';
import { wingTheory } from './theory';

/** Camber of the section families over chord, as their names say. */
const CAMBER = [0, 0.02, 0.04];

/** Panels that are given by their corners, as the equations take them: along the span first. */
function edgesAt(
  m: Float64Array,
  o: OutlineColumns,
  i: number,
  stride: number,
): Pick<Planform, 'inboardEdge' | 'outboardEdge'> {
  const [inboard, outboard] = PANEL_OUTLINES.map((name) => cornersAt(m, o[name]!, i, stride));
  return {
    ...(inboard ? { inboardEdge: turned(inboard) } : {}),
    ...(outboard ? { outboardEdge: turned(outboard) } : {}),
  };
}

/** A panel that its corners can't be is told at the outline of that panel. */
function refuseCrossed({ inboardEdge, outboardEdge, rootChord }: Planform): void {
  for (const [name, edge] of [
    ['inboard_outline', inboardEdge],
    ['outboard_outline', outboardEdge],
  ] as const) {
    if (edge) ofOutline(name, () => outlineBays(panelOutline(edge, rootChord)));
  }
}

const outlineOf = (m: Float64Array, f: Columns<typeof wingShape>, o: OutlineColumns): WingOutline => ({
  ...edgesAt(m, o, 0, 1),
  inboardSpan: m[f.inboard_span]!,
  outboardSpan: m[f.outboard_span]!,
  rootChord: m[f.root_chord]!,
  inboardTipChord: m[f.inboard_tip_chord]!,
  outboardTipChord: m[f.outboard_tip_chord]!,
  inboardSweep: m[f.inboard_sweep]!,
  outboardSweep: m[f.outboard_sweep]!,
  thickness: m[f.thickness_ratio]!,
  incidence: m[f.incidence]!,
});

/** Wing of two panels that may differ. */
export const wing = block({
  kind: 'wing',
  title: 'Wing',
  doc: 'Two panels from a ruler or by the corners of their outlines, and the section from its picture and thickness. Gives area, mean chord, lift slope, where lift and drag act across the span, and drag.',
  line: ['span', 'area', 'thickness_ratio'],
  fields: { ...wingShape, ...wingRibs, ...wingEstimates },
  outlines: panelOutlines,
  results: wingResults,
  reasons: {},
  theory: wingTheory,
  run(m, f, r, i, stride, o) {
    const planform: Planform = {
      ...edgesAt(m, o, i, stride),
      inboardSpan: m[f.inboard_span + i]!,
      outboardSpan: m[f.outboard_span + i]!,
      rootChord: m[f.root_chord + i]!,
      inboardTipChord: m[f.inboard_tip_chord + i]!,
      outboardTipChord: m[f.outboard_tip_chord + i]!,
      inboardSweep: m[f.inboard_sweep + i]!,
      outboardSweep: m[f.outboard_sweep + i]!,
    };
    refuseCrossed(planform);
    const measures = measurePlanform(planform);
    const { aspectRatio } = measures;
    m[r.inboard_span + i] = measures.inboardSpan;
    m[r.outboard_span + i] = measures.outboardSpan;
    m[r.span + i] = measures.span;
    m[r.area + i] = measures.area;
    m[r.aspect_ratio + i] = aspectRatio;
    m[r.mean_chord + i] = measures.meanChord;
    m[r.mean_chord_edge + i] = measures.meanChordEdge;
    m[r.quarter_chord + i] = measures.quarterChord;
    m[r.incidence + i] = m[f.incidence + i]!;

    const reynolds = (m[f.section_speed + i]! * measures.meanChord) / STANDARD_KINEMATIC_VISCOSITY;
    m[r.section_reynolds + i] = reynolds;
    const section = modelSection(SECTION_FAMILIES[m[f.shape + i]!]!, m[f.thickness_ratio + i]!, reynolds);
    const slope = typedOr(m[f.section_slope + i]!, section.slope);
    m[r.section_slope + i] = slope;
    m[r.zero_lift_angle + i] = typedOr(m[f.zero_lift_angle + i]!, section.zeroLiftAngle);
    m[r.moment_coefficient + i] = typedOr(m[f.moment_coefficient + i]!, section.moment);
    const { growth, leastDragLift } = section;
    const profileDrag = section.drag * m[f.roughness_factor + i]! + growth * leastDragLift * leastDragLift;
    m[r.profile_drag + i] = typedOr(m[f.profile_drag + i]!, profileDrag);
    m[r.drag_power + i] = Number.isNaN(m[f.profile_drag + i]!) ? section.dragPower : 0;
    m[r.drag_slope + i] = -2 * growth * leastDragLift;
    const liftLimit = section.liftLimit * m[f.roughness_lift_factor + i]! * WING_SHARE_OF_SECTION_LIFT;
    m[r.lift_limit + i] = typedOr(m[f.lift_limit + i]!, liftLimit);
    m[r.lift_power + i] = Number.isNaN(m[f.lift_limit + i]!) ? section.liftPower : 0;

    const line = liftingLine(planform, slope);
    const liftSlope = wingSlope(line.slope, slope, aspectRatio, measures.halfChordSweep);
    m[r.lift_slope + i] = typedOr(m[f.lift_slope + i]!, liftSlope);
    m[r.line_slope + i] = line.slope;
    const efficiency = typedOr(m[f.span_efficiency + i]!, 1 / (1 + line.delta + Math.PI * aspectRatio * growth));
    m[r.span_efficiency + i] = efficiency;
    m[r.induced_factor + i] = inducedFactor(aspectRatio, efficiency);

    const liftStation = m[f.lift_station + i]!;
    m[r.lift_station + i] = typedOr(liftStation, line.station);
    m[r.lift_station_turn + i] = typedOr(m[f.lift_station_turn + i]!, Number.isNaN(liftStation) ? line.turn : 0);
    const drag = chordLoadStation(measures);
    const dragStation = m[f.drag_station + i]!;
    m[r.drag_station + i] = typedOr(dragStation, drag.station);
    m[r.drag_station_turn + i] = typedOr(m[f.drag_station_turn + i]!, Number.isNaN(dragStation) ? drag.turn : 0);
    return undefined;
  },
  templates: (m, f, _, o) =>
    wingTemplates(outlineOf(m, f, o), CAMBER[m[f.shape]!] ?? Number.NaN, {
      count: m[f.rib_count]!,
      station: m[f.rib_station]!,
    }),
  draw: (m, f, _, o): Shape[] => finiteShapes(drawWing(outlineOf(m, f, o))),
});

import {
  datcomSlope,
  downwashGradient,
  FIN_END_PLATE,
  FLAT_PLATE_SECTION_SLOPE,
  hingedEffect,
  inducedFactor,
  measurePlanform,
  type PlanformMeasures,
  surfaceStiffness,
  TAIL_SPAN_EFFICIENCY,
  tailVolume,
} from '../../physics/index';
import { block, type Columns, type Shape } from '../block';
import { finiteShapes } from '../finite-shapes';
import { typedOr } from '../measures';
import { wingResults } from '../wing/results';
import { drawFin, drawStabiliser } from './draw';
import { finShape, stabiliserShape, tailEstimates, tailStock } from './fields';
import { tailResults } from './results';
import { tailTheory } from './theory';

/** Stabiliser with elevator, fin with rudder. */
export const tail = block({
  kind: 'tail',
  title: 'Tail',
  doc: 'Stabiliser, elevator, fin and rudder from a ruler. Gives areas, lift slopes, downwash and how strongly elevator and rudder act. What they are made of stands in the list of parts.',
  line: ['area', 'volume'],
  fields: {
    wing: { link: 'wing', results: wingResults, doc: 'The wing whose downwash the tail flies in.' },
    ...stabiliserShape,
    ...finShape,
    ...tailStock,
    ...tailEstimates,
  },
  results: tailResults,
  reasons: {},
  theory: tailTheory,
  run(m, f, r, i) {
    const stabiliser = mirrored(m[f.span + i]! / 2, m[f.root_chord + i]!, m[f.tip_chord + i]!, m[f.sweep + i]!);
    const { area, meanChord } = stabiliser;
    const quarterChord = m[f.edge + i]! + stabiliser.quarterChord;
    m[r.area + i] = area;
    m[r.quarter_chord + i] = quarterChord;
    m[r.mean_chord + i] = meanChord;
    const liftSlope = datcomSlope(FLAT_PLATE_SECTION_SLOPE, stabiliser.aspectRatio, stabiliser.halfChordSweep);
    m[r.lift_slope + i] = typedOr(m[f.lift_slope + i]!, liftSlope);
    m[r.induced_factor + i] = inducedFactor(stabiliser.aspectRatio, TAIL_SPAN_EFFICIENCY);
    const wing = f.wing;
    const downwash = downwashGradient(m[wing.lift_slope + i]!, m[wing.aspect_ratio + i]!);
    m[r.downwash + i] = typedOr(m[f.downwash + i]!, downwash);
    m[r.incidence + i] = m[f.incidence + i]!;
    m[r.elevator_share + i] = m[f.elevator_share + i]!;
    m[r.hinge_x + i] = m[f.edge + i]! + m[f.root_chord + i]! * (1 - m[f.elevator_share + i]!);
    m[r.hinge_z + i] = m[f.height + i]!;
    const elevator = hingedEffect(m[f.elevator_share + i]!);
    m[r.elevator_effect + i] = typedOr(m[f.elevator_effect + i]!, elevator);
    m[r.volume + i] = tailVolume(
      quarterChord - m[wing.quarter_chord + i]!,
      area,
      m[wing.mean_chord + i]!,
      m[wing.area + i]!,
    );

    writeFin(m, f, r, i);
    m[r.rudder_angle + i] = m[f.rudder_angle + i]!;
    const rudder = hingedEffect(m[f.rudder_share + i]!);
    m[r.rudder_effect + i] = typedOr(m[f.rudder_effect + i]!, rudder);

    const [chord, share] = [m[f.root_chord + i]!, m[f.elevator_share + i]!];
    m[r.stabiliser_bending + i] = surfaceStiffness(m[f.stabiliser_stock + i]!, chord * (1 - share));
    m[r.elevator_bending + i] = surfaceStiffness(m[f.elevator_stock + i]!, chord * share);
    m[r.fin_bending + i] = surfaceStiffness(m[f.fin_stock + i]!, m[f.fin_root_chord + i]!);
    return undefined;
  },
  draw(m, f): Shape[] {
    return finiteShapes([
      ...drawStabiliser({
        span: m[f.span]!,
        rootChord: m[f.root_chord]!,
        tipChord: m[f.tip_chord]!,
        edge: m[f.edge]!,
        sweep: m[f.sweep]!,
        height: m[f.height]!,
        elevatorShare: m[f.elevator_share]!,
      }),
      ...drawFin({
        height: m[f.fin_height]!,
        rootChord: m[f.fin_root_chord]!,
        tipChord: m[f.fin_tip_chord]!,
        edge: m[f.fin_edge]!,
        sweep: m[f.fin_sweep]!,
        base: m[f.fin_base]!,
        rudderShare: m[f.rudder_share]!,
        rudderAngle: m[f.rudder_angle]!,
      }),
    ]);
  },
});

type FinFields = Columns<typeof finShape & typeof tailEstimates>;

/** Fin and rudder; a fin of no height has no area and no slope. */
function writeFin(m: Float64Array, f: FinFields, r: Columns<typeof tailResults>, i: number): void {
  const height = m[f.fin_height + i]!;
  const root = m[f.fin_root_chord + i]!;
  const tip = m[f.fin_tip_chord + i]!;
  m[r.fin_centre + i] = m[f.fin_base + i]! + (height * (root + 2 * tip)) / (3 * (root + tip));
  if (height === 0) {
    m[r.fin_area + i] = 0;
    m[r.fin_quarter_chord + i] = m[f.fin_edge + i]! + root / 4;
    m[r.fin_mean_chord + i] = root;
    m[r.fin_slope + i] = 0;
    return;
  }
  const fin = mirrored(height, root, tip, m[f.fin_sweep + i]!);
  m[r.fin_area + i] = fin.area / 2;
  m[r.fin_quarter_chord + i] = m[f.fin_edge + i]! + fin.quarterChord;
  m[r.fin_mean_chord + i] = fin.meanChord;
  // One half of the mirrored pair has half of its aspect ratio.
  const finAspect = (FIN_END_PLATE * fin.aspectRatio) / 2;
  const finSlope = datcomSlope(FLAT_PLATE_SECTION_SLOPE, finAspect, fin.halfChordSweep);
  m[r.fin_slope + i] = typedOr(m[f.fin_slope + i]!, finSlope);
}

/** Two equal halves, from the centreline out. */
const mirrored = (half: number, root: number, tip: number, sweep: number): PlanformMeasures =>
  measurePlanform({
    inboardSpan: half,
    outboardSpan: half,
    rootChord: root,
    inboardTipChord: tip,
    outboardTipChord: tip,
    inboardSweep: sweep,
    outboardSweep: sweep,
  });

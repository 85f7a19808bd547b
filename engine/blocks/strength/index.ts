import {
  bearingHolds,
  bellcrankHolds,
  glueHolds,
  lapRate,
  pivotHolds,
  preload,
  strandsHold,
  THREADS,
  threadStressArea,
} from '../../physics/index';
import { block } from '../block';
import { flightResults } from '../flight/results';
import { leadoutResults } from '../leadouts/index';
import { linesResults } from '../lines/results';
import { typedOr } from '../measures';
import { partsResults, partsRole } from '../parts/results';
import { strengthCautions } from './cautions';
import { strengthFields } from './fields';
import { strengthResults } from './results';
import { strengthTheory } from './theory';

/** What each part of the system holds, beside the pull test and the pull in flight; and the engine on its bearers. */
export const strength = block({
  kind: 'strength',
  title: 'Strength and pull test',
  doc: 'What each part of the whole system holds (handle, cable, connectors, lines, leadouts, bellcrank, pivot, platform), beside the pull-test load and the greatest pull met in flight; and the screws and wood that hold the engine. It finds the part to look at first: the pull test itself decides.',
  line: ['strength_over_test', 'test_over_pull'],
  lineTitled: true,
  fields: {
    parts: { link: partsRole, results: partsResults, doc: 'Weight of the model.' },
    lines: { link: 'lines', results: linesResults, doc: 'Number and breaking load of the lines.' },
    leadouts: { link: 'leadouts', results: leadoutResults, doc: 'Size of the bellcrank.' },
    flight: { link: 'flight', results: flightResults, doc: 'Pull in level flight, and the load of the pull test.' },
    lap: { link: 'lap', optional: true, doc: 'The greatest pull met in flight, unless typed.' },
    ...strengthFields,
  },
  results: strengthResults,
  reasons: {
    hole: 'The pivot hole {bellcrank_hole} is as wide as the bellcrank there, {bellcrank_width}: nothing is left to hold.',
    edge: 'The engine screw {screw_diameter} is as wide as its bearer, {bearer_width}.',
  },
  theory: strengthTheory,
  cautions: strengthCautions,
  run(m, f, r, i) {
    const at = (column: number): number => m[column + i]!;
    if (at(f.bellcrank_hole) >= at(f.bellcrank_width)) return 'hole';
    if (at(f.screw_diameter) >= at(f.bearer_width)) return 'edge';
    const test = at(f.flight.test_load);
    m[r.test_load + i] = test;

    const count = at(f.lines.count);
    const uneven = at(f.unevenness);
    const strands = (one: number, ends: number): number => strandsHold(one, count, ends, uneven);
    const connector = at(f.connectors);
    const arm = {
      thickness: at(f.bellcrank_thickness),
      width: at(f.bellcrank_width),
      hole: at(f.bellcrank_hole),
      length: at(f.leadouts.bellcrank) / 2,
    };
    const sides = at(f.pivot_held) === 0 ? 1 : 2;
    // In the order of SYSTEM; NaN where nobody has typed what it holds.
    const holds = [
      at(f.handle),
      strands(at(f.cable_breaking_load), at(f.cable_ends)),
      Number.isNaN(connector) ? Number.NaN : strands(connector, 1),
      strands(at(f.lines.breaking_load), at(f.line_ends)),
      strands(at(f.leadout_breaking_load), at(f.leadout_ends)),
      bellcrankHolds(arm, at(f.bellcrank_strength)) / uneven,
      pivotHolds(at(f.pivot_diameter), at(f.pivot_arm), at(f.pivot_strength), sides),
      bearingHolds(at(f.pivot_diameter), at(f.platform_thickness), at(f.platform_strength)),
      glueHolds(at(f.platform_glue), at(f.glue_strength)),
    ];
    let weakest = -1;
    let uncounted = 0;
    for (const [k, load] of holds.entries()) {
      m[r[HOLDS[k]!] + i] = load;
      if (Number.isNaN(load)) uncounted += 1;
      else if (weakest < 0 || load < holds[weakest]!) weakest = k;
    }
    m[r.weakest + i] = weakest;
    m[r.weakest_load + i] = holds[weakest]!;
    m[r.uncounted + i] = uncounted;
    m[r.strength_over_test + i] = holds[weakest]! / test;

    const clamp = preload(at(f.screw_torque), at(f.torque_coefficient), at(f.screw_diameter));
    const proof =
      at(f.screw_strength) * threadStressArea(at(f.screw_diameter), at(f.screw_pitch), THREADS[at(f.screw_thread)]!);
    m[r.screw_preload + i] = clamp;
    m[r.screw_margin + i] = proof / clamp;
    m[r.bearer_margin + i] = (at(f.bearer_strength) * at(f.lug_area)) / clamp;
    m[r.edge_distance + i] = at(f.bearer_width) / 2 / at(f.screw_diameter);
    const radius = at(f.flight.speed) / lapRate(at(f.flight.lap_time));
    const outward = (at(f.engine_mass) * at(f.flight.speed) ** 2) / radius;
    m[r.clamp_over_pull + i] = (clamp * at(f.screw_count)) / outward;
    return undefined;
  },
  // What the parts hold stands whether or not a lap in wind has an answer.
  after: {
    fields: ['greatest_pull'],
    results: ['greatest_pull', 'test_over_pull'],
    run(m, f, r, i) {
      const pull = typedOr(m[f.greatest_pull + i]!, m[f.flight.pull_at_handle + i]!);
      m[r.greatest_pull + i] = pull;
      m[r.test_over_pull + i] = m[r.test_load + i]! / pull;
    },
  },
});

const HOLDS = [
  'handle_holds',
  'cable_holds',
  'connectors_hold',
  'lines_hold',
  'leadouts_hold',
  'bellcrank_holds',
  'pivot_holds',
  'bearing_holds',
  'glue_holds',
] as const;

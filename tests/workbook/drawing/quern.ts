import type { NameInfo, Shape } from '../../../engine/index';
import { LENGTH, ONE } from '../../../engine/units/index';

/** The invented Quern 25 as shapes and names, for tests of the drawing. All data here is made up. */
export interface Place {
  readonly engine?: number;
  readonly cg?: number;
  readonly guide?: number;
}

const name = (path: string, slot: number, title: string, unit: string, dimension = LENGTH): NameInfo => ({
  path,
  slot,
  kind: 'result',
  cell: path.split('.')[0]!,
  title,
  symbol: '',
  dimension,
  unit,
  suffix: '',
  doc: '',
  settable: false,
});

export const quernNames: ReadonlyMap<string, NameInfo> = new Map(
  [
    name('balance.cg_x', 0, 'CG aft of the datum', 'mm'),
    name('balance.neutral_point', 1, 'neutral point', 'mm'),
    name('leadouts.guide_x', 2, 'guide aft of the datum', 'mm'),
    name('engine.station', 3, 'engine station', 'mm'),
    name('balance.static_margin', 4, 'static margin', '%', ONE),
  ].map((n) => [n.path, n]),
);

export const quernValues = ({ engine = -0.15, cg = 0.046, guide = 0.062 }: Place = {}): Float64Array =>
  Float64Array.of(cg, 0.0612, guide, engine, 0.07);

const box = (view: Shape['view'], part: string, a0: number, b0: number, a1: number, b1: number): Shape => ({
  view,
  part,
  closed: true,
  points: [a0, b0, a1, b0, a1, b1, a0, b1],
});

export function quernShapes({ engine = -0.15, cg = 0.046, guide = 0.062 }: Place = {}): Shape[] {
  const trail = Math.tan((3.3 * Math.PI) / 180);
  return [
    { view: 'plan', part: 'wing', closed: true, points: [0, -0.515, 0, 0.485, 0.2, 0.485, 0.23, 0, 0.2, -0.515] },
    box('plan', 'stabiliser', 0.45, -0.2, 0.51, 0.2),
    box('plan', 'elevator', 0.51, -0.2, 0.545, 0.2),
    box('plan', 'body', -0.17, -0.008, 0.6, 0.008),
    box('plan', 'engine', engine - 0.045, -0.02, engine + 0.04, 0.03),
    { view: 'plan', part: 'propeller', points: [engine - 0.06, -0.114, engine - 0.06, 0.114] },
    box('plan', 'tank', -0.095, 0.008, -0.035, 0.04),
    box('plan', 'wheel', -0.02, 0.075, 0.03, 0.088),
    { view: 'plan', part: 'bellcrank', points: [0.06, -0.03], radius: 0.038 },
    { view: 'plan', part: 'leadout', points: [guide - 0.012, -0.515, 0.045, -0.06] },
    { view: 'plan', part: 'leadout', points: [guide + 0.012, -0.515, 0.083, -0.06] },
    { view: 'plan', part: 'line', points: [guide - 0.012, -0.515, guide - 0.012 + 18.3 * trail, -18.815] },
    { view: 'plan', part: 'line', points: [guide + 0.012, -0.515, guide + 18.3 * trail, -18.815] },
    { view: 'plan', part: 'guide', points: [guide, -0.515], label: 'leadouts.guide_x' },
    { view: 'plan', part: 'engine_station', points: [engine, 0], label: 'engine.station' },
    { view: 'plan', part: 'neutral_point', points: [0.0612, 0], label: 'balance.neutral_point' },
    { view: 'plan', part: 'cg', points: [cg, 0.01], label: 'balance.cg_x' },
    {
      view: 'side',
      part: 'body',
      closed: true,
      points: [-0.17, -0.025, -0.17, 0.03, 0.0, 0.05, 0.23, 0.05, 0.6, 0.02, 0.6, -0.012, 0.23, -0.045, -0.08, -0.045],
    },
    { view: 'side', part: 'wing', closed: true, points: [0, 0, 0.06, 0.018, 0.22, 0.002, 0.22, -0.002, 0.06, -0.018] },
    { view: 'side', part: 'fin', closed: true, points: [0.49, 0.03, 0.6, 0.02, 0.6, 0.11, 0.53, 0.12] },
    { view: 'side', part: 'stabiliser', points: [0.45, 0.01, 0.545, 0.01] },
    box('side', 'engine', engine - 0.045, -0.025, engine + 0.04, 0.055),
    { view: 'side', part: 'propeller', points: [engine - 0.06, -0.114, engine - 0.06, 0.114] },
    { view: 'side', part: 'wire', points: [-0.04, -0.045, 0.005, -0.13] },
    { view: 'side', part: 'wheel', points: [0.005, -0.13], radius: 0.025 },
    { view: 'side', part: 'cg', points: [cg, 0], label: 'balance.cg_x' },
    { view: 'side', part: 'guide', points: [guide, 0], label: 'leadouts.guide_x' },
  ];
}

import type { Least, Result } from '../block';
import { NEWTONS, PLAIN } from '../measures';

/** Parts of the system from hand to model, in the order of the pull; names as they are shown. */
export const SYSTEM = [
  'handle',
  'handle_cable',
  'connectors',
  'lines',
  'leadouts',
  'bellcrank',
  'pivot_bolt',
  'platform_bearing',
  'platform_glue',
] as const;

const holds = (symbol: string, title: string, doc: string): Result => ({
  ...NEWTONS,
  symbol,
  title,
  doc,
  detail: true,
});
const ratio = (symbol: string, title: string, doc: string, least?: Least): Result => ({
  ...{ ...PLAIN, symbol, title, doc },
  ...(least ? { least } : {}),
});

export const strengthResults = {
  test_load: {
    ...NEWTONS,
    symbol: 'F_t',
    title: 'Pull-test load',
    doc: 'That of level flight. Check the current rule book.',
  },
  greatest_pull: {
    ...NEWTONS,
    symbol: 'T_m',
    title: 'Greatest pull met in flight',
    doc: 'At the handle: as typed, else that of the lap in wind with its gusts where the design has one, else that of level flight in calm air.',
  },
  weakest_load: {
    ...NEWTONS,
    symbol: 'F_w',
    title: 'Load that the system holds',
    doc: 'Of its weakest part, as a load on the whole system. Parts that nobody has typed a load for are not counted.',
  },
  weakest: {
    ...PLAIN,
    symbol: 'w',
    title: 'Weakest part',
    doc: 'The first to fail as the load on the whole system grows.',
    oneOf: SYSTEM,
  },
  strength_over_test: ratio(
    'F_w/F_t',
    'Weakest part over pull test',
    'The least over all parts: load that the weakest part holds over the pull-test load. Below 1 it breaks in the test: stop. The test itself decides, of the whole system, by the current rule book.',
    { at: 1, because: 'the weakest part breaks in the pull test', stops: true },
  ),
  test_over_pull: ratio(
    'F_t/T_m',
    'Pull test over greatest pull',
    'Pull-test load over the greatest pull met in flight: how far the test proves what the flight asks. Below 1 the flight pulls harder than the test: stop.',
    { at: 1, because: 'the flight pulls harder than the test', stops: true },
  ),
  uncounted: ratio('n_u', 'Parts not counted', 'Parts of the system whose load nobody has typed: handle, connectors.'),
  handle_holds: holds('F_1', 'Handle holds', 'As a load on the whole system.'),
  cable_holds: holds('F_2', 'Handle cable holds', 'As a load on the whole system.'),
  connectors_hold: holds('F_3', 'Connectors hold', 'As a load on the whole system.'),
  lines_hold: holds('F_4', 'Lines hold', 'With their ends, as a load on the whole system.'),
  leadouts_hold: holds('F_5', 'Leadouts hold', 'With their ends, as a load on the whole system.'),
  bellcrank_holds: holds('F_6', 'Bellcrank holds', 'Its arms in bending, as a load on the whole system.'),
  pivot_holds: holds('F_7', 'Pivot bolt holds', 'In bending and shear, as a load on the whole system.'),
  bearing_holds: holds('F_8', 'Platform holds the bolt', 'In bearing, as a load on the whole system.'),
  glue_holds: holds('F_9', 'Platform holds in the model', 'Its glued area in shear, as a load on the whole system.'),
  screw_preload: holds('F_s', 'Preload of an engine screw', 'By its tightening torque.'),
  screw_margin: ratio(
    'M_s',
    'Screw strength over preload',
    'Proof load of an engine screw over its preload. Below 1 the screw stretches for good: stop tightening.',
    { at: 1, because: 'the screw stretches for good' },
  ),
  bearer_margin: ratio(
    'M_l',
    'Bearer strength over lug pressure',
    'Crushing strength of the bearer across the grain over the pressure under a lug. Below 1 the wood crushes and the screws come loose: put a harder plate under the lugs.',
    { at: 1, because: 'the wood crushes and the screws come loose' },
  ),
  edge_distance: ratio(
    'e/d',
    'Edge distance over screw diameter',
    'From the middle of a screw in the middle of the bearer to its edge. Below 1.5 a bearer splits easily (common practice, no source).',
    { at: 1.5, because: 'the bearer splits easily' },
  ),
  clamp_over_pull: ratio(
    'F_c/T_e',
    'Clamping force over outward pull of the engine',
    'Preload of all screws over the outward force of the engine in the lap. Wood that shrinks loses preload: tighten again.',
    { at: 1, because: 'the engine pulls harder than its screws clamp' },
  ),
} as const satisfies Readonly<Record<string, Result>>;

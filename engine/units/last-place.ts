/**
 * The last place of a computed number that means anything at a model's size, as decimals, by unit: nobody measures or builds finer.
 * Common practice, no source. A unit that is not named has none; three digits of the number are the other bound.
 */
const DECIMALS: Readonly<Record<string, number>> = {
  µm: 0,
  mm: 1,
  cm: 2,
  m: 3,
  thou: 0,
  in: 2,
  ft: 2,
  yd: 2,
  'mm²': 1,
  'cm²': 1,
  'dm²': 2,
  'in²': 1,
  'ft²': 2,
  'cm³': 2,
  mL: 1,
  'in³': 3,
  'fl oz': 2,
  ms: 0,
  s: 2,
  min: 2,
  'mm/s': 0,
  'm/s': 1,
  'km/h': 1,
  mph: 1,
  kn: 1,
  'ft/s': 1,
  'm/s²': 2,
  'ft/s²': 1,
  mg: 0,
  g: 1,
  kg: 3,
  oz: 2,
  lb: 2,
  g·mm: 0,
  oz·in: 2,
  'g/m²': 1,
  'g/dm²': 1,
  'oz/ft²': 2,
  'oz/yd²': 2,
  'kg/m³': 0,
  'lb/ft³': 1,
  mN: 0,
  N: 1,
  gf: 0,
  ozf: 1,
  lbf: 1,
  N·mm: 0,
  ozf·in: 1,
  Pa: 0,
  hPa: 1,
  inHg: 2,
  psi: 2,
  MPa: 1,
  W: 0,
  mAh: 0,
  A: 1,
  V: 1,
  K: 1,
  '°C': 1,
  '°F': 1,
  rpm: 0,
  '°': 1,
  '%': 1,
};

/**
 * Where more decimals tell something, between two sizes: half a degree of nose-out is a lot, wire, lines and sheet are bought
 * and measured finer, small pulls are felt in tenths, and air weighs a thousandth of what is built.
 */
const FINER: Readonly<Record<string, { readonly from: number; readonly under: number; readonly decimals: number }>> = {
  '°': { from: 0, under: 1, decimals: 2 },
  '%': { from: 0, under: 1, decimals: 2 },
  mm: { from: 0.1, under: 1, decimals: 2 },
  in: { from: 0.005, under: 0.1, decimals: 3 },
  N: { from: 0, under: 1, decimals: 2 },
  lbf: { from: 0, under: 1, decimals: 2 },
  'kg/m³': { from: 0, under: 10, decimals: 3 },
  'lb/ft³': { from: 0, under: 1, decimals: 4 },
};

export function lastPlace(unit: string, size: number): number {
  const finer = FINER[unit];
  if (finer && size >= finer.from && size < finer.under) return finer.decimals;
  return DECIMALS[unit] ?? Number.POSITIVE_INFINITY;
}

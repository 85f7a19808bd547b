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

/** Angles and shares under one tell more in their second decimal: half a degree of nose-out is a lot. */
const FINER_UNDER_ONE: ReadonlySet<string> = new Set(['°', '%']);
/** Wire, lines and sheet: between these sizes one more decimal is bought and measured. */
const FINER_BETWEEN: Readonly<Record<string, readonly [number, number]>> = { mm: [0.1, 1], in: [0.005, 0.1] };

export function lastPlace(unit: string, size: number): number {
  const decimals = DECIMALS[unit] ?? Number.POSITIVE_INFINITY;
  if (FINER_UNDER_ONE.has(unit) && size < 1) return decimals + 1;
  const [from, to] = FINER_BETWEEN[unit] ?? [0, 0];
  return size >= from && size < to ? decimals + 1 : decimals;
}

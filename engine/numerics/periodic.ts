/**
 * A function of period 2π at n equal steps from 0, and what is needed of the wave through its values. Filled by `periodicWave` alone; a row of a
 * circulant stands twice, so that it is read on without a turn.
 */
export interface PeriodicWave {
  readonly places: number;
  /** Of the places. */
  readonly sine: Float64Array;
  readonly cosine: Float64Array;
  /** What a value adds to the slope, and to the integral of what is left of the mean, so many places on. */
  readonly slopes: Float64Array;
  readonly sums: Float64Array;
  /** Room for `solvePeriodic`. */
  readonly kernel: Float64Array;
  readonly growth: Float64Array;
  readonly part: Float64Array;
  readonly each: Float64Array;
}

const known = new Map<number, PeriodicWave>();

/**
 * The wave through n values, made once a number of places.
 *
 *   dy/dx at k = Σ_j d_(k−j) y_j,  d_m = ½ (−1)^m cot(m π/n) for even n, ½ (−1)^m/sin(m π/n) for odd n;  d_0 = 0
 *   ∫ (y − ȳ) dx at k = Σ_j s_(k−j) y_j,  s_m = (2/n) Σ_{h<n/2} sin(2π h m/n)/h
 *
 * Exact for waves of up to (n − 1)/2 turns.
 * Source: J. P. Boyd, Chebyshev and Fourier Spectral Methods, on Fourier collocation (from memory); checked against the slopes of waves.
 */
export function periodicWave(n: number): PeriodicWave {
  const kept = known.get(n);
  if (kept) return kept;
  const row = (length = n) => new Float64Array(length);
  const wave: PeriodicWave = {
    places: n,
    sine: row(),
    cosine: row(),
    slopes: row(2 * n),
    sums: row(2 * n),
    kernel: row(2 * n),
    growth: row(),
    part: row(),
    each: row(),
  };
  const most = (n - 1) >> 1;
  for (let m = 0; m < n; m++) {
    wave.sine[m] = Math.sin((2 * Math.PI * m) / n);
    wave.cosine[m] = Math.cos((2 * Math.PI * m) / n);
    const angle = (m * Math.PI) / n;
    const sign = m % 2 === 0 ? 0.5 : -0.5;
    if (m > 0) wave.slopes[m] = n % 2 === 0 ? sign / Math.tan(angle) : sign / Math.sin(angle);
    for (let h = 1; h <= most; h++) wave.sums[m]! += ((2 / n) * Math.sin((2 * Math.PI * h * m) / n)) / h;
  }
  wave.slopes.copyWithin(n, 0, n);
  wave.sums.copyWithin(n, 0, n);
  known.set(n, wave);
  return wave;
}

/** Slopes of the wave through `y`, to `out`. */
export function periodicSlopes(wave: PeriodicWave, y: Float64Array, out: Float64Array): void {
  turnThrough(wave.slopes, y, out);
}

/**
 * Solves dy/dx − g y = r for a periodic y at equal steps: `r` gives way to y; not a number where the mean of g is 0 and there is none.
 *
 *   G = e^∫(g − ḡ) dx,  y = G z,  dz/dx − ḡ z = r/G,  z_k = Σ_j K_(k−j) (r/G)_j
 *   K_m = (1/n) Σ_h (h sin(2π h m/n) − ḡ cos(2π h m/n))/(h² + ḡ²) over all turns h from −(n − 1)/2 to (n − 1)/2; at even n the alternating wave has no slope
 *
 * Takes n² steps where elimination takes n³/3. Exact for one g; else as good as n places hold r/G.
 * Derivation: integrating factor, and division wave by wave.
 */
export function solvePeriodic(wave: PeriodicWave, g: Float64Array, r: Float64Array): void {
  const n = wave.places;
  const growth = wave.growth;
  const part = wave.part;
  let mean = 0;
  for (let k = 0; k < n; k++) mean += g[k]!;
  mean /= n;
  turnThrough(wave.sums, g, growth);
  for (let k = 0; k < n; k++) {
    growth[k] = Math.exp(growth[k]!);
    part[k] = r[k]! / growth[k]!;
  }
  fillKernel(wave, mean);
  turnThrough(wave.kernel, part, r);
  let alternating = 0;
  for (let k = 0; k < n; k++) {
    const right = part[k]! * growth[k]!;
    r[k]! *= growth[k]!;
    const off = right + g[k]! * r[k]!;
    alternating += k % 2 === 0 ? off : -off;
  }
  if (n % 2 !== 0) return;
  // The alternating wave has no slope: what is left of it is for g alone.
  const more = alternating / (mean * n);
  for (let k = 0; k < n; k++) r[k]! -= k % 2 === 0 ? more : -more;
}

function fillKernel(wave: PeriodicWave, mean: number): void {
  const n = wave.places;
  const kernel = wave.kernel;
  const sine = wave.sine;
  const cosine = wave.cosine;
  const most = (n - 1) >> 1;
  const share = 2 / n;
  const each = wave.each;
  const mean2 = mean * mean;
  for (let h = 1; h <= most; h++) each[h] = 1 / (h * h + mean2);
  for (let m = 0; 2 * m <= n; m++) {
    let even = 0.5 / mean2;
    let odd = 0;
    let at = 0;
    for (let h = 1; h <= most; h++) {
      at += m;
      if (at >= n) at -= n;
      even += each[h]! * cosine[at]!;
      odd += each[h]! * h * sine[at]!;
    }
    if (n % 2 === 0) even += (m % 2 === 0 ? 0.5 : -0.5) / mean2;
    kernel[m] = share * (odd - mean * even);
    if (m > 0) kernel[n - m] = share * (-odd - mean * even);
  }
  kernel.copyWithin(n, 0, n);
}

/** out_k = Σ_j row_(k−j) y_j, in four sums that do not wait for one another. */
function turnThrough(row: Float64Array, y: Float64Array, out: Float64Array): void {
  const n = y.length;
  const whole = n - (n % 4);
  for (let k = 0; k < n; k++) {
    const from = n + k;
    let a = 0;
    let b = 0;
    let c = 0;
    let d = 0;
    for (let j = 0; j < whole; j += 4) {
      a += row[from - j]! * y[j]!;
      b += row[from - j - 1]! * y[j + 1]!;
      c += row[from - j - 2]! * y[j + 2]!;
      d += row[from - j - 3]! * y[j + 3]!;
    }
    for (let j = whole; j < n; j++) a += row[from - j]! * y[j]!;
    out[k] = a + b + (c + d);
  }
}

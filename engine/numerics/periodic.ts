const known = new Map<number, Float64Array>();

/**
 * D of dy/dx ≈ D y for a function of period 2π at n equal steps from 0: the slopes of the wave through its values, n × n, row by row.
 *
 *   D_jk = ½ (−1)^(j−k) cot((j − k) π/n) for even n, ½ (−1)^(j−k)/sin((j − k) π/n) for odd n;  D_jj = 0
 *
 * Exact for waves of up to (n − 1)/2 turns. Tables are kept and never written to.
 * Source: J. P. Boyd, Chebyshev and Fourier Spectral Methods, on Fourier collocation (from memory); checked against the slopes of waves.
 */
export function periodicSlopes(n: number): Float64Array {
  const kept = known.get(n);
  if (kept) return kept;
  const d = new Float64Array(n * n);
  for (let j = 0; j < n; j++) {
    for (let k = 0; k < n; k++) {
      if (j === k) continue;
      const angle = ((j - k) * Math.PI) / n;
      const sign = (j - k) % 2 === 0 ? 0.5 : -0.5;
      d[j * n + k] = n % 2 === 0 ? sign / Math.tan(angle) : sign / Math.sin(angle);
    }
  }
  known.set(n, d);
  return d;
}

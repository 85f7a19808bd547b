import { fft } from 'fourier-transform';

/**
 * |X_k|², k = 0 … N/2 − 1: power in each line of the spectrum of N real samples, a power of 2 of them, X_k = Σ x_n e^(−2πi k n/N).
 * Written into `to`, which may be shorter.
 */
export function powerSpectrum(samples: Float64Array, to: Float32Array): void {
  const [re, im] = fft(samples);
  for (let k = 0; k < to.length; k++) to[k] = re[k]! * re[k]! + im[k]! * im[k]!;
}

/** w_n = ½ − ½ cos(2π (n + ½)/N): the window of J. von Hann, which keeps a strong line from spreading over the spectrum. Definition. */
export const hannWindow = (length: number): Float64Array =>
  Float64Array.from({ length }, (_, n) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (n + 0.5)) / length));

declare module 'fourier-transform' {
  /** Real and imaginary parts of the spectrum of real samples, a power of 2 of them; overwritten by the next call without a place of its own. */
  export function fft(samples: ArrayLike<number>): readonly [re: Float64Array, im: Float64Array];
}

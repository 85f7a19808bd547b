import type { Sound } from '../../engine/index';

const HEAD = 44;

/** A sound as a WAV file: one channel of 16 bits, linear PCM. Source: IBM and Microsoft, Multimedia Programming Interface and Data Specifications 1.0 (1991), from memory. */
export function wavOf({ samples, rate }: Sound): ArrayBuffer {
  const buffer = new ArrayBuffer(HEAD + 2 * samples.length);
  const view = new DataView(buffer);
  const word = (at: number, text: string): void => {
    for (let k = 0; k < text.length; k++) view.setUint8(at + k, text.charCodeAt(k));
  };
  word(0, 'RIFF');
  view.setUint32(4, HEAD - 8 + 2 * samples.length, true);
  word(8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, 2 * rate, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  word(36, 'data');
  view.setUint32(40, 2 * samples.length, true);
  for (const [n, value] of samples.entries()) {
    view.setInt16(HEAD + 2 * n, Math.round(32767 * Math.max(-1, Math.min(1, value))), true);
  }
  return buffer;
}

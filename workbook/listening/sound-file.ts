import type { Sound } from '../../engine/index';
import { MOST_SECONDS } from './microphone';

/** Samples a second of what is read from a file: enough for the highest line that is listened to. */
const RATE = 24_000;

export type ReadSound =
  | { readonly ok: true; readonly sound: Sound; readonly cut: boolean }
  | { readonly ok: false; readonly message: string };

/** The sound of a file, whatever the browser can decode; its channels together, and no more of it than is listened to. */
export async function readSound(file: File): Promise<ReadSound> {
  try {
    const decoded = await new OfflineAudioContext(1, 1, RATE).decodeAudioData(await file.arrayBuffer());
    const length = Math.min(decoded.length, MOST_SECONDS * RATE);
    const samples = new Float32Array(length);
    for (let c = 0; c < decoded.numberOfChannels; c++) {
      const channel = decoded.getChannelData(c);
      for (let n = 0; n < length; n++) samples[n]! += channel[n]! / decoded.numberOfChannels;
    }
    return { ok: true, sound: { samples, rate: RATE }, cut: decoded.length > length };
  } catch {
    return {
      ok: false,
      message: `“${file.name}” can’t be read as sound. Take a WAV file, or one that this browser can play.`,
    };
  }
}

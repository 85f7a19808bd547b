import type { Sound } from '../../engine/index';
import takeSound from './take-sound.js?url';

/** Longer sounds are cut, s. */
export const MOST_SECONDS = 240;

/** What comes in at the microphone while it is open. */
export interface Recording {
  /** Closes it; what has come in until then. */
  stop(): Sound;
}

export interface RecordingPorts {
  /** Greatest level of the last piece, from 0 to 1, and seconds taken so far. */
  onLevel(level: number, seconds: number): void;
  /** It has taken as much as it takes. */
  onFull(): void;
}

/** Opens the microphone without anything that is made for speech: it would take the tone of an engine for noise. */
export async function openMicrophone({ onLevel, onFull }: RecordingPorts): Promise<Recording> {
  if (!navigator.mediaDevices) throw new Error('Not safe');
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: { echoCancellation: false, noiseSuppression: false, autoGainControl: false, channelCount: 1 },
  });
  const context = new AudioContext();
  const close = (): void => {
    for (const track of stream.getTracks()) track.stop();
    void context.close();
  };
  const pieces: Float32Array[] = [];
  let taken = 0;
  let open = true;
  try {
    await context.audioWorklet.addModule(takeSound);
  } catch (error) {
    close();
    throw error;
  }
  const taker = new AudioWorkletNode(context, 'take-sound', { numberOfOutputs: 0 });
  taker.port.onmessage = ({ data }: MessageEvent<Float32Array>) => {
    if (!open) return;
    pieces.push(data);
    taken += data.length;
    const seconds = taken / context.sampleRate;
    onLevel(Math.min(1, peakOf(data)), seconds);
    if (seconds >= MOST_SECONDS) onFull();
  };
  context.createMediaStreamSource(stream).connect(taker);
  await context.resume();
  return {
    stop() {
      open = false;
      const rate = context.sampleRate;
      close();
      const samples = new Float32Array(taken);
      let at = 0;
      for (const piece of pieces) {
        samples.set(piece, at);
        at += piece.length;
      }
      return { samples, rate };
    },
  };
}

const peakOf = (piece: Float32Array): number => piece.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/** Why a microphone can't be had, and what helps. */
export function microphoneTrouble(error: unknown): string {
  const name = error instanceof Error ? error.name : '';
  if (name === 'NotAllowedError' || name === 'SecurityError')
    return 'The microphone was refused. Allow it for this page in the browser’s settings, or take a sound file.';
  if (name === 'NotFoundError') return 'No microphone was found. Connect one, or take a sound file.';
  if (name === 'NotReadableError') return 'The microphone is used by something else. Close that, or take a sound file.';
  return 'This browser gives no microphone at this address. Open the page by https or on this machine itself, or take a sound file.';
}

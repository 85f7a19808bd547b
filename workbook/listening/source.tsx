import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { Sound } from '../../engine/index';
import { MOST_SECONDS, microphoneTrouble, openMicrophone, type Recording } from './microphone';
import { readSound } from './sound-file';

/** Louder than this it is clipped. */
const TOO_LOUD = 0.99;

interface SourceProps {
  onSound(sound: Sound, words: string): void;
  onTrouble(sentence: string): void;
}

/** Where a sound comes from: the microphone, or a file. */
export function Source({ onSound, onTrouble }: SourceProps) {
  const level = useSignal<{ readonly peak: number; readonly seconds: number } | undefined>(undefined);
  const recording = useRef<Recording | undefined>(undefined);
  const gone = useRef(false);
  useEffect(
    () => () => {
      gone.current = true;
      recording.current?.stop();
    },
    [],
  );
  const stop = (): void => {
    const open = recording.current;
    if (!open) return;
    recording.current = undefined;
    level.value = undefined;
    onSound(open.stop(), 'from the microphone');
  };
  const listen = async (): Promise<void> => {
    onTrouble('');
    try {
      const open = await openMicrophone({
        onLevel: (peak, seconds) => {
          level.value = { peak, seconds };
        },
        onFull: stop,
      });
      // The dialog was closed while the browser asked.
      if (gone.current) open.stop();
      else {
        recording.current = open;
        level.value = { peak: 0, seconds: 0 };
      }
    } catch (error) {
      onTrouble(microphoneTrouble(error));
    }
  };
  const take = async (file: File): Promise<void> => {
    onTrouble('');
    const read = await readSound(file);
    if (!read.ok) onTrouble(read.message);
    else onSound(read.sound, `from “${file.name}”${read.cut ? `, its first ${MOST_SECONDS / 60} minutes` : ''}`);
  };
  const now = level.value;
  if (now) {
    return (
      <div class="listening-now">
        <p>
          <strong>{clock(now.seconds)}</strong> heard, at most {clock(MOST_SECONDS)}.{' '}
          {now.peak >= TOO_LOUD && 'Too loud for the microphone: stand farther away.'}
        </p>
        <meter min={0} max={1} high={TOO_LOUD} value={now.peak} aria-label="Loudness" />
        <button type="button" class="word listening-stop" onClick={stop}>
          Stop and work it out
        </button>
      </div>
    );
  }
  return (
    <p class="commands">
      <button type="button" class="word" onClick={() => void listen()}>
        Listen by microphone
      </button>
      <label class="word listening-file">
        Take a sound file
        <input
          class="unseen"
          type="file"
          accept="audio/*,.wav"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            currentTarget.value = '';
            if (file) void take(file);
          }}
        />
      </label>
    </p>
  );
}

const clock = (seconds: number): string =>
  `${Math.floor(seconds / 60)}:${String(Math.floor(seconds % 60)).padStart(2, '0')}`;

import './style.css';
import { useSignal } from '@preact/signals';
import { useContext, useEffect, useRef, useState } from 'preact/hooks';
import type { HeardFlight, Sound } from '../../engine/index';
import { putReadings } from '../cells/index';
import { useSheet } from '../store/context';
import { fileName, saveFile } from '../store/files';
import { ListeningContext } from '../store/listening';
import { ListenedForm } from './form';
import { airOf, expectedOf, questionOf, radiusOf } from './from-design';
import { HeardLaps } from './laps';
import { readingsOf } from './readings';
import { Source } from './source';
import { Track } from './track';
import { wavOf } from './wav';
import { heardSentences } from './words';

/** Listens to a flight, and puts what was heard into a log. Nothing of the sound is kept unless somebody saves it. */
export function ListeningDialog({ log, onClose }: { log?: string | undefined; onClose(): void }) {
  const sheet = useSheet();
  const engine = useContext(ListeningContext);
  const dialog = useRef<HTMLDialogElement>(null);
  const [listened, setListened] = useState(() => expectedOf(sheet, sheet.cells.peek()));
  const sound = useSignal<{ readonly sound: Sound; readonly words: string } | undefined>(undefined);
  const heard = useSignal<HeardFlight | undefined>(undefined);
  const share = useSignal<number | undefined>(undefined);
  const said = useSignal('');
  useEffect(() => {
    dialog.current?.showModal();
    return () => void engine?.haltListening();
  }, []);
  const workOut = async (): Promise<void> => {
    const taken = sound.value;
    if (!engine || !taken) return;
    const question = questionOf(listened, airOf(sheet));
    heard.value = undefined;
    said.value = typeof question === 'string' ? question : '';
    if (typeof question === 'string') return;
    share.value = 0;
    try {
      const answer = await engine.listen(taken.sound, question, (done) => {
        share.value = done;
      });
      if (!answer) return;
      heard.value = answer;
    } catch (error) {
      said.value = error instanceof Error ? error.message : String(error);
    }
    share.value = undefined;
  };
  const stop = (): void => {
    share.value = undefined;
    void engine?.haltListening();
  };
  const answer = heard.value;
  const readings = answer && readingsOf(answer);
  const put = (): void => {
    if (!readings) return;
    said.value = putReadings(sheet, readings, log === undefined ? {} : { log })
      ? 'It stands in the log as a flight of today.'
      : 'The log can’t be changed while an earlier state is looked at.';
  };
  const done = <p role="status">{said.value}</p>;
  return (
    <dialog ref={dialog} class="open-dialog listening-dialog" aria-labelledby="listening-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="listening-title">Listen to a flight</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <p>
        The pitch of an engine goes up while the model comes and down while it goes: that tells its rpm and its lap
        times. Three level laps are enough.
      </p>
      <details class="set-up" open={!sound.value}>
        <summary>Where the phone lies</summary>
        <ul>
          <li>Outside the circle, behind the safety line, half a radius or more from where the model passes.</li>
          <li>Lying still, out of the wind, its microphone toward the circle. No hand and no cloth on it.</li>
          <li>Begin when the model flies level, and stop before it climbs or lands.</li>
          <li>In the middle of the circle the pitch doesn’t swing: it tells the rpm alone.</li>
        </ul>
      </details>
      <p class="caution">
        Never walk into or across a circle while a model flies. Watch the model and not the phone: lay it down. Where
        people may stand is what the rule book, the club’s practice and its safety officer say.
      </p>
      <ListenedForm listened={listened} onChange={setListened} />
      <Source
        onSound={(taken, words) => {
          sound.value = { sound: taken, words };
          void workOut();
        }}
        onTrouble={(sentence) => {
          said.value = sentence;
        }}
      />
      <p class="aside">
        The sound is worked out on this device and goes nowhere. It is gone when this is closed, unless you keep it.
      </p>
      {!answer && done}
      {sound.value && (
        <div class="heard">
          <p class="commands">
            <span>
              {(sound.value.sound.samples.length / sound.value.sound.rate).toFixed(1)}&nbsp;s {sound.value.words}
            </span>
            {share.value === undefined ? (
              <button type="button" class="word" onClick={() => void workOut()}>
                Work it out again
              </button>
            ) : (
              <>
                <progress max={1} value={share.value} aria-label="Worked out" />
                <button type="button" class="word" onClick={stop}>
                  Stop
                </button>
              </>
            )}
            <button
              type="button"
              class="word"
              onClick={() => {
                const name = `${sheet.document.value.title || 'Untitled design'} flight`;
                if (sound.value) saveFile([wavOf(sound.value.sound)], fileName(name, '.wav'), 'audio/wav');
              }}
            >
              Keep the sound
            </button>
          </p>
          {answer && (
            <>
              <p role="status" class="heard-words">
                {heardSentences(answer, sheet.units(), radiusOf(sheet)).join(' ')}
              </p>
              {readings && (
                <p class="commands">
                  <button type="button" class="word" onClick={put}>
                    Put into the log
                  </button>
                </p>
              )}
              {done}
              <Track track={answer.track} />
              <HeardLaps laps={answer.laps} />
            </>
          )}
        </div>
      )}
    </dialog>
  );
}

import { useState } from 'preact/hooks';
import { OBSERVATIONS, type TrimAnswer } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { SetUp } from '../shared/set-up';

/** What was seen in the air: its likely cause, one change, and what the model of this design expects of it. */
export function Seen() {
  const sheet = useSheet();
  const [answer, tell] = useState<{ readonly key: string; readonly told: TrimAnswer } | undefined>(undefined);
  const [asked, ask] = useState('');
  const observation = OBSERVATIONS.find(({ key }) => key === asked);
  const pick = (key: string): void => {
    ask(key);
    sheet.settle();
    void sheet.trim(key).then((told) => tell({ key, told }));
  };
  const told = answer?.key === asked ? answer.told : undefined;
  return (
    <SetUp title="What was seen, and what mends it" open={false}>
      <div class="seen-list">
        {OBSERVATIONS.map(({ key, seen }) => (
          <button key={key} type="button" class="word" aria-pressed={key === asked} onClick={() => pick(key)}>
            {seen}
          </button>
        ))}
      </div>
      <div role="status">
        {observation && (
          <>
            <p>
              <strong>{observation.seen}</strong>: {observation.likely} (likely; common practice, no source).
            </p>
            <p>{observation.first}</p>
          </>
        )}
        {told && !told.ok && <p>{told.message}</p>}
        {told?.ok && (
          <>
            <p>
              <strong>One change: {told.change}</strong> The model expects of it:
            </p>
            <ul class="seen-figures">
              {told.figures.map(({ title, before, after }) => (
                <li key={title}>
                  {title}: {before} → {after}
                </li>
              ))}
            </ul>
            {told.unsaid !== '' && <p class="aside">{told.unsaid}</p>}
            <p class="aside">Change one thing, pull-test, fly, look again.</p>
          </>
        )}
      </div>
    </SetUp>
  );
}

import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';

/** Says that nothing can be changed at present, why, and what can be done: another tab works on the design, or a version is looked at. */
export function OnlyLooking() {
  const sheet = useSheet();
  const designs = useDesigns();
  const banner = useRef<HTMLElement>(null);
  const refusals = sheet.refusals.value;
  useEffect(() => {
    if (refusals > 0) banner.current?.focus();
  }, [refusals]);
  const keeping = designs?.keeping.value;
  const looking = sheet.looking.value;
  if (!designs || (!looking && keeping?.kind !== 'elsewhere')) return null;
  return (
    <section ref={banner} class="only-looking" role="alert" aria-label="Only to be looked at" tabIndex={-1}>
      {looking ? (
        <>
          <p>
            <strong>You are looking at {looking.at}.</strong> Nothing can be changed here. The design as it is now waits
            behind it.
          </p>
          <p class="commands">
            <button type="button" class="word" onClick={() => sheet.look(undefined)}>
              Back to the design as it is now
            </button>
            <button type="button" class="word" onClick={() => designs.returnTo(looking.version)}>
              Return the design to this version
            </button>
            <button type="button" class="word" onClick={() => designs.copyVersion(looking.version)}>
              Work on a copy of it
            </button>
          </p>
        </>
      ) : (
        <>
          <p>
            <strong>This design is open in another tab, and is worked on there.</strong>{' '}
            {keeping?.kind === 'elsewhere' && keeping.unkept
              ? 'What stands here is not what the other tab has kept, and it is kept nowhere: save it to a file, or work on it as a copy.'
              : 'Here it is shown as the other tab has it, and nothing can be changed.'}
          </p>
          <p class="commands">
            <button type="button" class="word" onClick={() => void designs.takeOver()}>
              Work on it here
            </button>
            <button type="button" class="word" onClick={designs.copyShown}>
              Work on a copy
            </button>
          </p>
        </>
      )}
    </section>
  );
}

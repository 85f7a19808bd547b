import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from '../../store/context';
import { useDesigns } from '../../store/designs';
import { askingToShare } from '../../store/sharing';
import { DesignsHere } from './designs-here';

/** What can be opened: a file of this machine, a design that is kept in this browser, or the demo. Undo brings back the one that was open. */
export function OpenDialog({ onFile }: { onFile: () => void }) {
  const sheet = useSheet();
  const designs = useDesigns();
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => dialog.current?.showModal(), []);
  const close = (): void => dialog.current?.close();
  const leaving = (then: () => void) => (): void => {
    close();
    then();
  };
  return (
    <dialog
      ref={dialog}
      class="open-dialog wide-dialog"
      aria-labelledby="open-title"
      onClose={() => {
        sheet.choosing.value = false;
      }}
    >
      <div class="dialog-head">
        <h2 id="open-title">Open</h2>
        <button type="button" class="word" onClick={close}>
          Close
        </button>
      </div>
      <p>What is open now stays among the designs on this machine, and comes back with Undo too.</p>
      <ul>
        <Way words="A file of this machine" take={leaving(onFile)} aside="You can also drop it onto the page." />
        <Way
          words="A design that was handed on"
          take={leaving(() => {
            askingToShare.value = 'from';
          })}
          aside="By QR pictures, or their texts pasted."
        />
        <Way
          words="Share this design"
          take={leaving(() => {
            askingToShare.value = 'to';
          })}
          aside="By this device, as a file, or as QR pictures that another machine reads from the screen."
        />
        <Way
          words="Begin with my model"
          take={leaving(() => {
            if (designs) designs.beginning.value = true;
          })}
        />
        <Way words="An empty design" take={leaving(() => designs?.emptySheet())} />
        <Way
          words="Lessons"
          take={leaving(() => {
            sheet.choosingStudy.value = 'lessons';
          })}
          aside="Ten questions for juniors, put on the design that is open; each begins with a guess."
        />
        <Way
          words="The demo: Quern 25"
          take={leaving(() => void sheet.openDemo('quern'))}
          aside="An invented club racer of 1.0&nbsp;m span with every study on it, as it came."
        />
        <Way
          words="A trainer: Hob"
          take={leaving(() => void sheet.openDemo('hob'))}
          aside="An invented electric trainer of 0.6&nbsp;m span on lines of 12&nbsp;m."
        />
        <Way
          words="A stunt model: Trivet 46"
          take={leaving(() => void sheet.openDemo('trivet'))}
          aside="An invented stunt model of 1.4&nbsp;m span: what the lines pull from level flight to 60° up, and what overhead asks for."
        />
      </ul>
      <DesignsHere onLeave={close} />
    </dialog>
  );
}

interface WayProps {
  readonly words: string;
  readonly aside?: string;
  take(): void;
}

/** Something to open, as a line of the list. */
const Way = ({ words, aside, take }: WayProps) => (
  <li>
    <button type="button" class="word" onClick={take}>
      {words}
    </button>
    {aside && <p class="aside">{aside}</p>}
  </li>
);

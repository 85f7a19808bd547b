import { useSignal } from '@preact/signals';
import { useEffect } from 'preact/hooks';
import { serialise } from '../../engine/index';
import { useSheet } from '../store/context';
import { MOST_PICTURES, packDesign } from './packed';
import { QrPicture } from './qr-picture';
import { fileToShare } from './share-file';

/** The ways in which the open design goes to another machine: by the system, as a file, as pictures. */
export function HandOn() {
  const sheet = useSheet();
  const document = sheet.document.value;
  const text = serialise(document);
  const file = fileToShare(text, document.title);
  const pictures = useSignal<readonly string[] | undefined>(undefined);
  const packed = useSignal(false);
  const at = useSignal(0);
  const said = useSignal('');
  useEffect(() => {
    let gone = false;
    void packDesign(text).then((texts) => {
      if (gone) return;
      pictures.value = texts;
      packed.value = true;
    });
    return () => {
      gone = true;
    };
  }, [text]);
  const share = async (): Promise<void> => {
    try {
      await navigator.share({ files: [file!], title: document.title });
      said.value = 'Handed to the system.';
    } catch (error) {
      // Whoever closes the system's sheet has changed their mind.
      const left = error instanceof Error && error.name === 'AbortError';
      said.value = left ? '' : 'The system did not take it. Save it to a file and send that.';
    }
  };
  const shown = pictures.value;
  return (
    <>
      <p class="commands">
        {file && (
          <button type="button" class="word" onClick={() => void share()}>
            Share by this device
          </button>
        )}
        <button type="button" class="word" onClick={sheet.save}>
          Save to a file
        </button>
      </p>
      <p role="status">{said.value}</p>
      {!packed.value && <p>Working.</p>}
      {packed.value && !shown && (
        <p>
          {`This design is too large for QR pictures: it would take more than ${MOST_PICTURES}. Save it to a file and send that.`}
        </p>
      )}
      {shown && (
        <>
          <h3>{shown.length === 1 ? 'As a QR picture' : `As ${shown.length} QR pictures, one after the other`}</h3>
          <p class="aside">
            On the other machine: “Open”, then “A design that was handed on”. Nothing goes over a network.
          </p>
          <QrPicture
            text={shown[Math.min(at.value, shown.length - 1)]!}
            says={`QR picture ${at.value + 1} of ${shown.length} of ${document.title}`}
          />
          {shown.length > 1 && (
            <p class="commands">
              <button
                type="button"
                class="word"
                onClick={() => {
                  at.value = (at.value + 1) % shown.length;
                }}
              >
                Next picture
              </button>
              <span role="status">{`${at.value + 1} of ${shown.length}`}</span>
            </p>
          )}
        </>
      )}
    </>
  );
}

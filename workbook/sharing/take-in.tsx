import { useSignal } from '@preact/signals';
import { useSheet } from '../store/context';
import { Camera, readerHere } from './camera';
import { isWhole, type PartsRead, takePart, takePasted, unpackDesign } from './packed';

/** Opens a design from the text of QR pictures: read by the camera where the browser reads them, or pasted. */
export function TakeIn({ onDone }: { onDone(): void }) {
  const sheet = useSheet();
  const read = useSignal<PartsRead | undefined>(undefined);
  const said = useSignal('');
  const looking = useSignal(false);
  const take = async (parts: PartsRead | undefined): Promise<void> => {
    read.value = parts;
    if (!parts) return;
    if (!isWhole(parts)) {
      said.value = `${parts.parts.size} of ${parts.count} pictures read. Go on with the next.`;
      return;
    }
    const text = await unpackDesign(parts);
    if (text === undefined) {
      said.value = 'A picture was misread. Read them again.';
      read.value = undefined;
      return;
    }
    looking.value = false;
    await sheet.openHandedOn(text);
    onDone();
  };
  return (
    <>
      <p>A file: “Open”, then “A file of this machine”. QR pictures are read here, in any order.</p>
      {readerHere() ? (
        <p class="commands">
          <button
            type="button"
            class="word"
            onClick={() => {
              looking.value = !looking.value;
            }}
          >
            {looking.value ? 'Stop the camera' : 'Read by camera'}
          </button>
        </p>
      ) : (
        <p class="aside">
          This browser reads no QR pictures itself. Read them with the camera of the phone, copy each text, and paste
          them here.
        </p>
      )}
      {looking.value && (
        <Camera
          onRead={(text) => void take(takePart(read.peek(), text))}
          onRefused={(why) => {
            looking.value = false;
            said.value = why;
          }}
        />
      )}
      <label class="handed-on">
        <span>Texts of the pictures, one a line</span>
        <textarea
          rows={4}
          spellcheck={false}
          onInput={({ currentTarget: { value } }) => {
            const parts = takePasted(value);
            if (parts) void take(parts);
            else
              said.value =
                value.trim() === '' ? '' : 'This is no text of a picture of a design. It begins with TETHERWRIGHT.';
          }}
        />
      </label>
      <p role="status">{said.value}</p>
    </>
  );
}

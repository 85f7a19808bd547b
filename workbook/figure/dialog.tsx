import './style.css';
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import { useSheet } from '../store/context';
import { figuresHere, type OfferedFigure } from '../store/figures';
import { captionOf } from './caption';
import { FiguresChoice, LookChoice, WIDTHS, WidthChoice } from './choices';
import type { Look } from './colours';
import { makeFigure } from './draw';
import { Choice, NumberRow, WordsRow } from './fields';
import { copyFigure, type FigureFile, FORMATS, type Format, saveFigure } from './save';
import { useSaying } from './use-saying';

const LEAST_WIDTH = 40;
const MOST_WIDTH = 400;
const LEAST_DPI = 72;
const MOST_DPI = 1200;
const USUAL_DPI = 300;
/** More stand too small to be read. */
const MOST_FIGURES = 6;

/** One figure, alone or with others of the sheet, as a file of the size that it has on paper. */
export function FigureDialog({ of, onClose }: { of: OfferedFigure; onClose(): void }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  const preview = useRef<HTMLDivElement>(null);
  const format = useSignal<Format>('pdf');
  const width = useSignal<number>(WIDTHS[0]);
  const look = useSignal<Look>('colour');
  const dpi = useSignal(USUAL_DPI);
  const with_ = useSignal<readonly OfferedFigure[]>([]);
  const caption = useSignal<string | undefined>(undefined);
  const alt = useSignal<string | undefined>(undefined);
  const [said, doing] = useSaying();
  useEffect(() => dialog.current?.showModal(), []);
  const figures = [of, ...with_.value];
  const words =
    caption.value ??
    captionOf(
      figures.map(({ title }) => title),
      sheet,
    );
  const wishes = { figures, look: look.value, width: width.value, title: of.title, caption: words, alt: alt.value };
  const made = useSignal<ReturnType<typeof makeFigure>>(undefined);
  // Beside what is drawn here, not within it.
  useEffect(() => {
    made.value = makeFigure(wishes, sheet);
    preview.current?.replaceChildren(...(made.value ? [made.value.svg.cloneNode(true)] : []));
  }, [look.value, width.value, words, alt.value, with_.value]);
  const { svg, alt: told = '' } = made.value ?? {};
  const fileOf = (of: SVGSVGElement): FigureFile => ({
    ...{ svg: of, format: format.value, dpi: dpi.value, alt: told },
    ...{ title: wishes.title, date: sheet.document.value.date },
  });
  const others = figuresHere().filter((each) => each !== of);
  return (
    <dialog ref={dialog} class="open-dialog figure-dialog" aria-labelledby="figure-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="figure-title">Save figure: {of.title}</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      <div class="figure-form">
        <Choice
          legend="File"
          name="figure-format"
          value={format.value}
          options={FORMATS.map((value) => ({ value, words: value.toUpperCase() }))}
          onPick={(value) => {
            format.value = value;
          }}
        />
        <LookChoice name="figure-look" look={look} />
        <WidthChoice name="figure-width" width={width} />
        <NumberRow
          label="or so many mm"
          value={width.value}
          least={LEAST_WIDTH}
          most={MOST_WIDTH}
          onTake={(mm) => {
            width.value = mm;
          }}
        />
        <NumberRow
          label="Dots an inch, of a PNG and on the clipboard"
          value={dpi.value}
          least={LEAST_DPI}
          most={MOST_DPI}
          onTake={(dots) => {
            dpi.value = dots;
          }}
        />
        {others.length > 0 && (
          <FiguresChoice
            legend="On the same page"
            offered={others}
            picked={with_}
            room={MOST_FIGURES - figures.length}
          />
        )}
        <WordsRow
          label="Caption"
          text={words}
          onTake={(text) => {
            caption.value = text;
          }}
        />
        <WordsRow
          label="Said to those who don’t see it"
          text={told}
          onTake={(text) => {
            alt.value = text;
          }}
        />
      </div>
      <p class="commands">
        <button
          type="button"
          class="word"
          disabled={!svg}
          onClick={() => void doing(() => saveFigure(fileOf(svg!)), `Saved as ${format.value.toUpperCase()}.`)}
        >
          Save
        </button>
        {navigator.clipboard && 'write' in navigator.clipboard && (
          <button
            type="button"
            class="word"
            disabled={!svg}
            onClick={() => void doing(() => copyFigure(fileOf(svg!)), 'Copied as a picture.')}
          >
            Copy
          </button>
        )}
      </p>
      <p role="status">{said.value}</p>
      <div class="figure-preview" ref={preview} aria-hidden="true" />
    </dialog>
  );
}

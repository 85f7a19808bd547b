import '../style.css';
import { useSignal } from '@preact/signals';
import { useEffect, useRef } from 'preact/hooks';
import type { NoteCell } from '../../../engine/index';
import { useSheet } from '../../store/context';
import { figuresHere, type OfferedFigure } from '../../store/figures';
import { fileName, saveText } from '../../store/files';
import { captionOf, captionSentence } from '../caption';
import { FiguresChoice, LookChoice, WIDTHS, WidthChoice } from '../choices';
import { type Look, standing } from '../colours';
import { composeFigure } from '../compose';
import { drawnAlone } from '../draw';
import { Choice, WordsRow } from '../fields';
import { saveFigure } from '../save';
import { useSaying } from '../use-saying';
import { figureWidth, mmOf, newsletterPage } from './page';
import { printedWords, textFile } from './words';

const MOST_FIGURES = 3;
const DPI = 300;
/** Asked for as the words: none. */
const NO_NOTE = '';

/** Two or three figures of the sheet with captions and a paragraph, as one page of a column's width or as pictures with a text file. */
export function NewsletterDialog({ onClose }: { onClose(): void }) {
  const sheet = useSheet();
  const dialog = useRef<HTMLDialogElement>(null);
  const preview = useRef<HTMLDivElement>(null);
  const here = figuresHere();
  const notes = sheet.shownSheet.value.pieces.filter((piece): piece is NoteCell => piece.kind === 'note');
  const picked = useSignal<readonly OfferedFigure[]>(here.slice(0, 2));
  const note = useSignal(notes[0]?.name ?? NO_NOTE);
  const title = useSignal(notes[0]?.title ?? sheet.shownSheet.value.title);
  const width = useSignal<number>(WIDTHS[1]);
  const look = useSignal<Look>('colour');
  const captions = useSignal<ReadonlyMap<OfferedFigure, string>>(new Map());
  const [said, doing] = useSaying();
  useEffect(() => dialog.current?.showModal(), []);
  const figures = here.filter((figure) => picked.value.includes(figure));
  /** Of which design, and under which conditions, is said once, under the last. */
  const captionFor = (figure: OfferedFigure): string =>
    captions.value.get(figure) ??
    (figure === figures.at(-1) ? captionOf([figure.title], sheet) : captionSentence(figure.title));
  const chosen = notes.find(({ name }) => name === note.value);
  const words = chosen ? printedWords(chosen, sheet) : [];
  const ink = standing('currentColor', look.value);
  const drawn = (of: readonly OfferedFigure[]) =>
    of.flatMap((figure, k) => {
      const alone = drawnAlone(figure, figureWidth(width.value), look.value, `p${k + 1}-`, sheet);
      return alone ? [{ ...alone, caption: captionFor(figure), title: figure.title }] : [];
    });
  const page = (): SVGSVGElement | undefined => {
    const pictures = drawn(figures);
    if (pictures.length === 0) return undefined;
    const alt = [...words, ...pictures.map((each) => each.alt)].join(' ');
    return newsletterPage({ title: title.value, words, figures: pictures, widthMm: width.value, ink, alt });
  };
  useEffect(() => {
    const svg = page();
    preview.current?.replaceChildren(...(svg ? [svg] : []));
  }, [picked.value, note.value, title.value, width.value, look.value, captions.value, words.join('\n')]);
  const common = { dpi: DPI, date: sheet.document.value.date };
  const asPdf = async (): Promise<void> => {
    const svg = page();
    if (!svg) return;
    await saveFigure({ ...common, svg, format: 'pdf', title: title.value || 'Newsletter page', alt: words.join(' ') });
  };
  const asPictures = async (): Promise<void> => {
    const stem = title.value || 'Newsletter page';
    const named = drawn(figures).map((each, k) => ({ ...each, name: `${stem} figure ${k + 1}` }));
    for (const { picture, alt, caption: _, name } of named) {
      const widthMm = mmOf(figureWidth(width.value));
      const svg = composeFigure({ pictures: [picture], title: name, caption: '', alt, width: widthMm, ink });
      await saveFigure({ ...common, svg, format: 'png', title: name, alt });
    }
    const listed = named.map(({ name, caption }) => ({ file: fileName(name, '.png'), caption }));
    saveText(textFile(title.value, words, listed), fileName(stem, '.txt'), 'text/plain');
  };
  return (
    <dialog ref={dialog} class="open-dialog figure-dialog" aria-labelledby="newsletter-title" onClose={onClose}>
      <div class="dialog-head">
        <h2 id="newsletter-title">Newsletter page</h2>
        <button type="button" class="word" onClick={() => dialog.current?.close()}>
          Close
        </button>
      </div>
      {here.length === 0 && (
        <p class="form-problem">
          No chart or picture stands on this sheet. Close this, show a sheet with two or three, and come back.
        </p>
      )}
      <div class="figure-form">
        <WidthChoice name="newsletter-width" width={width} />
        <LookChoice name="newsletter-look" look={look} />
        <FiguresChoice
          legend={`Figures, up to ${MOST_FIGURES}`}
          offered={here}
          picked={picked}
          room={MOST_FIGURES - figures.length}
        />
        <WordsRow
          label="Title"
          text={title.value}
          onTake={(text) => {
            title.value = text;
          }}
        />
        <Choice
          legend="Words: a note of this sheet, whose numbers follow the design"
          name="newsletter-note"
          value={note.value}
          options={[
            ...notes.map(({ name, title: words }) => ({ value: name, words })),
            { value: NO_NOTE, words: 'no words' },
          ]}
          onPick={(name) => {
            note.value = name;
          }}
        />
        {figures.map((figure) => (
          <WordsRow
            key={figure.title}
            label={`Caption of ${figure.title}`}
            text={captionFor(figure)}
            onTake={(text) => {
              captions.value = new Map([...captions.value, [figure, text]]);
            }}
          />
        ))}
      </div>
      <p class="commands">
        <button
          type="button"
          class="word"
          disabled={figures.length === 0}
          onClick={() => void doing(asPdf, 'Saved as one page, PDF.')}
        >
          Save as PDF
        </button>
        <button
          type="button"
          class="word"
          disabled={figures.length === 0}
          onClick={() => void doing(asPictures, 'Saved as pictures and a text file.')}
        >
          Save as pictures with a text file
        </button>
      </p>
      <p role="status">{said.value}</p>
      <div class="figure-preview" ref={preview} aria-hidden="true" />
    </dialog>
  );
}

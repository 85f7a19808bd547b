import type { Signal } from '@preact/signals';
import {
  type BlockCell,
  cornersText,
  cornerTexts,
  inSentence,
  type OutlineDescription,
} from '../../../../engine/index';
import { useSheet } from '../../../store/context';
import type { Sheet } from '../../../store/sheet';
import { cornerTextsOf } from '../../block/outline-start';
import { RowFaults } from '../../shared/row-faults';
import type { CornerTexts } from './corner-places';

/** An outline that is being drawn. */
export interface Tracing {
  readonly path: string;
  readonly says: string;
  readonly outline: OutlineDescription;
  readonly texts: CornerTexts;
  /** A press puts a corner behind the last; else on the side that is nearest. */
  readonly anew: boolean;
  readonly taken: number | undefined;
}

/** Keeps what is drawn so far; an outline that is begun waits until it has enough corners. `rests`: the hand is up. */
export function keepTracing(
  sheet: Sheet,
  { path, says, outline, texts, anew }: Tracing,
  rests: boolean,
  byKeys = false,
): void {
  if (anew || texts.length < outline.least) return;
  sheet.dragTexts(new Map([[path, cornersText(texts)]]), says);
  if (rests) sheet.rest(byKeys);
}

interface Props {
  readonly view: OutlineDescription['view'];
  readonly tracing: Signal<Tracing | undefined>;
  onBegin(): void;
}

/** The outlines of a view: drawn anew by presses, or their corners moved. */
export function OutlineTools({ view, tracing, onBegin }: Props) {
  const sheet = useSheet();
  const now = tracing.value;
  if (now) return <Drawn tracing={tracing} now={now} />;
  const rows = sheet.cells.value.flatMap((cell) =>
    cell.kind === 'model'
      ? (sheet.blockNamed(cell.of)?.outlines ?? []).flatMap((outline) =>
          outline.view === view ? [{ cell, outline }] : [],
        )
      : [],
  );
  const begin = (cell: BlockCell, outline: OutlineDescription, anew: boolean): void => {
    const text = cell.fields[outline.name] ?? '';
    const standing = (): CornerTexts => cornerTextsOf(outline, sheet.snapshot.value?.drawing ?? [], sheet.units());
    onBegin();
    tracing.value = {
      path: `${cell.name}.${outline.name}`,
      says: `${inSentence(outline.title)} of ${cell.title}`,
      ...{ outline, anew, taken: undefined },
      texts: anew ? [] : text === '' ? standing() : cornerTexts(text),
    };
  };
  if (rows.length === 0) return <p class="aside">This view has no outline: the wing and the fuselage have.</p>;
  return (
    <ul class="outline-tools">
      {rows.map(({ cell, outline }) => (
        <li key={`${cell.name}.${outline.name}`}>
          {outline.title} of {cell.title}:{' '}
          <button type="button" class="word" onClick={() => begin(cell, outline, true)}>
            Draw it<span class="unseen"> by presses: {outline.title}</span>
          </button>
          <button type="button" class="word" onClick={() => begin(cell, outline, false)}>
            Move its corners<span class="unseen">: {outline.title}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

function Drawn({ tracing, now }: { tracing: Signal<Tracing | undefined>; now: Tracing }) {
  const sheet = useSheet();
  const { outline, anew, texts, taken } = now;
  const cell = sheet.cells.value.find(({ name }) => name === now.path.split('.')[0]);
  const block = cell?.kind === 'model' ? sheet.blockNamed(cell.of) : undefined;
  const enough = texts.length >= outline.least;
  return (
    <div class="outline-tools">
      <p class="aside">{outline.doc}</p>
      <p role="status">
        {anew
          ? `${texts.length === 1 ? '1 corner' : `${texts.length} corners`}. Each press on the drawing adds the next; by keys the arrows move the cross and Enter adds.`
          : 'Drag a corner, or press on the outline to add one; by keys arrows go from corner to corner, with Shift they move it, Delete removes it.'}
      </p>
      {!anew && (
        <p class="aside" data-outline-results>
          {(block?.results ?? [])
            .filter(({ name }) => OUTLINE_RESULTS.has(name))
            .map(({ name, title }) => `${title} ${sheet.shown(`${cell!.name}.${name}`)}`)
            .join(' · ')}
        </p>
      )}
      <RowFaults paths={[now.path]} />
      {anew && (
        <button
          type="button"
          class="word"
          disabled={texts.length === 0}
          onClick={() => {
            tracing.value = { ...now, texts: texts.slice(0, -1) };
          }}
        >
          Take back the last corner
        </button>
      )}
      {!anew && taken !== undefined && texts.length > outline.least && (
        <button
          type="button"
          class="word"
          onClick={() => {
            const next = { ...now, texts: texts.toSpliced(taken, 1), taken: undefined };
            tracing.value = next;
            keepTracing(sheet, next, true);
          }}
        >
          Remove corner {taken + 1}
        </button>
      )}
      {anew && (
        <button
          type="button"
          class="word"
          disabled={!enough}
          onClick={() => {
            const next = { ...now, anew: false };
            keepTracing(sheet, next, true);
            tracing.value = next;
          }}
        >
          {outline.closed ? 'Close the outline' : 'The outline is complete'}
        </button>
      )}
      <button
        type="button"
        class="word"
        onClick={() => {
          tracing.value = undefined;
        }}
      >
        {anew ? 'Leave it' : 'Done'}
      </button>
    </div>
  );
}

/** What an outline bears on, to be seen while it is drawn. */
const OUTLINE_RESULTS: ReadonlySet<string> = new Set([
  ...['side_area', 'side_centroid', 'middle_height'],
  ...['span', 'area', 'mean_chord', 'quarter_chord'],
]);

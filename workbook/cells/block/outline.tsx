import { useRef } from 'preact/hooks';
import {
  type BlockCell,
  cornerKept,
  cornersText,
  cornerTexts,
  fieldAnchor,
  inSentence,
  inUnitsOf,
  type OutlineDescription,
} from '../../../engine/index';
import { along } from '../../controls/along';
import { ReferenceLink } from '../../controls/reference-link';
import { TextEntry } from '../../controls/text-entry';
import { useSheet } from '../../store/context';
import { RowFaults } from '../shared/row-faults';
import { cornersPasted, cornerTextsOf } from './outline-start';

interface Props {
  readonly cell: BlockCell;
  readonly outline: OutlineDescription;
}

/** An outline by its corners: opened, it begins with what stands there now. */
export function OutlineRow({ cell, outline }: Props) {
  const sheet = useSheet();
  const path = `${cell.name}.${outline.name}`;
  const text = cell.fields[outline.name] ?? '';
  const set = sheet.units();
  const keep = (corners: readonly (readonly string[])[]): void =>
    sheet.setTexts([[path, cornersText(corners)]], `${inSentence(outline.title)} of ${cell.title}`);
  const begin = (): void => keep(cornerTextsOf(outline, sheet.snapshot.value?.drawing ?? [], set));
  return (
    <details class="outline" open={text !== ''}>
      <summary {...along()} data-path={path}>
        {outline.title} by corners
      </summary>
      <p class="aside">
        {inUnitsOf(outline.doc, set)} <ReferenceLink to={fieldAnchor(cell.of, outline.name)}>More</ReferenceLink>
      </p>
      {text === '' ? (
        <button type="button" class="word" onClick={begin}>
          Begin with the outline that stands now
        </button>
      ) : (
        <Corners outline={outline} path={path} corners={cornerTexts(text)} onKeep={keep} />
      )}
      <RowFaults paths={[path]} />
    </details>
  );
}

interface CornersProps {
  readonly outline: OutlineDescription;
  readonly path: string;
  readonly corners: readonly (readonly string[])[];
  onKeep(corners: readonly (readonly string[])[]): void;
}

function Corners({ outline, path, corners, onKeep }: CornersProps) {
  const sheet = useSheet();
  const set = sheet.units();
  const room = useRef<HTMLTableElement>(null);
  const titles = outline.corner.map(({ title }) => title);
  const at = (corner: readonly string[], axis: number): string => corner[axis] ?? '';
  const put = (k: number, axis: number, typed: string): void => {
    const kept = cornerKept(typed, outline, set);
    onKeep(corners.map((corner, j) => (j === k ? titles.map((_, a) => (a === axis ? kept : at(corner, a))) : corner)));
  };
  /** Between this corner and the next; behind the last one where it stands. */
  const add = (k: number): void => onKeep(corners.toSpliced(k + 1, 0, corners[k]!));
  const remove = (k: number): void => {
    onKeep(corners.toSpliced(k, 1));
    // The row goes away with the focus in it.
    room.current?.querySelectorAll<HTMLElement>('button')[Math.max(0, 2 * k - 1)]?.focus();
  };
  const paste = (event: ClipboardEvent): void => {
    const pasted = event.clipboardData?.getData('text/plain') ?? '';
    const row = (event.target as Element).closest('[data-corner]')?.getAttribute('data-corner');
    const filled = row && cornersPasted(corners, Number(row), pasted, outline, set);
    if (!filled) return;
    event.preventDefault();
    onKeep(filled);
  };
  return (
    <>
      <table class="corners" ref={room} onPaste={paste}>
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">Corner</span>
            </th>
            {titles.map((title) => (
              <th key={title} scope="col">
                {title}
              </th>
            ))}
            <td />
          </tr>
        </thead>
        <tbody>
          {corners.map((corner, k) => (
            <tr key={k} data-corner={k}>
              <th scope="row">{k + 1}</th>
              {titles.map((title, axis) => (
                <td key={title}>
                  <TextEntry
                    path={`${path}.${k + 1}.${axis + 1}`}
                    label={`Corner ${k + 1}, ${title}`}
                    text={at(corner, axis)}
                    shown={at(corner, axis).replace('-', '−').replaceAll(' ', '\u00a0')}
                    onCommit={(typed) => put(k, axis, typed)}
                    onUndoBeyond={sheet.undo}
                  />
                </td>
              ))}
              <td class="corner-words">
                <button type="button" class="word quiet" onClick={() => add(k)}>
                  Add<span class="unseen"> a corner behind corner {k + 1}</span>
                </button>
                <button type="button" class="word quiet" onClick={() => remove(k)}>
                  Remove<span class="unseen"> corner {k + 1}</span>
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p class="aside">
        Several corners at once: paste them into an entry, one corner a line, {titles.join(' and ')} with a semicolon or
        a tab between them.
      </p>
      <button type="button" class="word" onClick={() => onKeep([])}>
        Remove the outline
      </button>
    </>
  );
}

import { useSignal } from '@preact/signals';
import { useRef } from 'preact/hooks';
import { along, goAlong } from '../controls/along';
import { ReferenceLink } from '../controls/reference-link';
import { useSheet } from '../store/context';
import { openField } from '../store/field-open';
import { FILE_ENDING } from '../store/files';
import { askingToPrint } from '../store/printing';
import { AddList } from './add-list';
import { KeepingWords } from './designs/keeping-words';
import { OpenDialog } from './designs/open-dialog';
import { Versions } from './designs/versions';
import { GoToDialog, KeysDialog } from './keys/index';
import { ChartDialog } from './making/chart-dialog';
import { SwapDialog } from './making/swap-dialog';
import { MoveDialog } from './set/move-dialog';
import { StateWords } from './state/state-words';
import { AddStudy } from './studies/add-study';
import { StudyDialog } from './studies/study-dialog';

/** The few words at the top, and the state of the sheet. */
export function TopBar() {
  const sheet = useSheet();
  const picker = useRef<HTMLInputElement>(null);
  const versions = useSignal(false);
  const back = sheet.undoSays.value;
  const forward = sheet.redoSays.value;
  const asked = (what: 'where' | 'keys') => (): void => {
    if (sheet.asking.peek() === what) sheet.asking.value = undefined;
  };
  return (
    <header class="top-bar">
      <h1>{sheet.part('title') || 'Untitled design'}</h1>
      <nav aria-label="Design">
        <div role="toolbar" aria-label="Design" onKeyDown={goAlong}>
          <Word enters dialog onClick={() => (sheet.choosing.value = true)}>
            Open
          </Word>
          <Word onClick={sheet.save}>Save</Word>
          <Word dialog onClick={() => (versions.value = true)}>
            Versions
          </Word>
          <Word disabled={back === undefined} title={back && `Take back: ${back}`} onClick={sheet.undo}>
            Undo
          </Word>
          <Word disabled={forward === undefined} title={forward && `Do again: ${forward}`} onClick={sheet.redo}>
            Redo
          </Word>
          <Word dialog onClick={() => (sheet.adding.value = sheet.shownSheet.peek().pieces.length)}>
            Add a piece
          </Word>
          <AddStudy list="studies" {...along()} />
          <Word onClick={openField}>Day card</Word>
          <Word dialog onClick={() => (askingToPrint.value = true)}>
            Print
          </Word>
          <Word dialog onClick={() => (sheet.asking.value = 'where')}>
            Go to
          </Word>
          <ReferenceLink class="word" along>
            Reference
          </ReferenceLink>
        </div>
      </nav>
      <KeepingWords />
      <StateWords />
      <input
        ref={picker}
        class="unseen"
        type="file"
        tabIndex={-1}
        aria-label="File of a design"
        accept={`${FILE_ENDING},.json,application/json,.txt`}
        onChange={(event) => {
          const file = event.currentTarget.files?.[0];
          event.currentTarget.value = '';
          if (file) void sheet.openFile(file);
        }}
      />
      {versions.value && (
        <Versions
          onClose={() => {
            versions.value = false;
          }}
        />
      )}
      {sheet.choosing.value && <OpenDialog onFile={() => picker.current?.click()} />}
      {sheet.choosingStudy.value && <StudyDialog key={sheet.choosingStudy.value} list={sheet.choosingStudy.value} />}
      {sheet.asking.value === 'where' && <GoToDialog onClose={asked('where')} />}
      {sheet.asking.value === 'keys' && <KeysDialog onClose={asked('keys')} />}
      <Swapping />
      {sheet.charting.value !== undefined && <ChartDialog of={sheet.charting.value} />}
      {sheet.adding.value !== undefined && <AddList at={sheet.adding.value} />}
      {sheet.placing.value !== undefined && <MoveDialog />}
    </header>
  );
}

interface WordProps {
  readonly disabled?: boolean;
  readonly title?: string | undefined;
  /** Tab enters the bar at it. */
  readonly enters?: boolean;
  /** It opens a dialog. */
  readonly dialog?: boolean;
  readonly children: string;
  onClick(): void;
}

/** A word of the bar. */
const Word = ({ enters, dialog, ...rest }: WordProps) => (
  <button
    type="button"
    class="word"
    {...along(enters)}
    {...(dialog ? { 'aria-haspopup': 'dialog' as const } : {})}
    {...rest}
  />
);

/** The kinds that could stand in the place of a piece, while they are asked for. */
function Swapping() {
  const sheet = useSheet();
  const cell = sheet.cells.value.find(({ id }) => id === sheet.swapping.value);
  if (cell?.kind !== 'model') return null;
  const block = sheet.blockNamed(cell.of);
  const kinds = (sheet.offered.value?.blocks ?? []).filter(
    ({ role, kind }) => role === block?.role && kind !== cell.of,
  );
  return kinds.length === 0 ? null : <SwapDialog key={cell.id} cell={cell} kinds={kinds} />;
}

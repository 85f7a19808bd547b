import type { ReadonlySignal, Signal } from '@preact/signals';
import { Fragment } from 'preact';
import type { Cell } from '../../engine/index';
import { AddHere, CellView, columnOf, gapsOf, standingDrawing } from '../cells/index';
import { kept } from '../controls/kept';
import { useSheet } from '../store/context';
import { useDesigns } from '../store/designs';
import { printing } from '../store/printing';
import { EmptySheet } from './designs/empty-sheet';
import { FirstDesign } from './designs/first-design';
import { FirstVisit } from './designs/first-visit';
import { OnlyLooking } from './designs/only-looking';
import type { Paper } from './paper';
import { PaperChoice } from './paper-choice';
import { SheetList } from './sheet-list';
import { StandingColumn } from './standing/column';
import { DrawingCommands } from './standing/drawing';
import { StandingFigures } from './standing/figures';
import { Strip } from './standing/strip';
import { LiveSummary } from './state/live-summary';
import { Notices } from './state/notices';
import { TitleBlock } from './title-block';
import { TopBar } from './top-bar';
import { Zones } from './zones';

/** The drawing sheet: frame and zones, words at the top, cells, standing column, title block. */
export function App({ narrow, paper }: { narrow: ReadonlySignal<boolean>; paper: Signal<Paper> }) {
  return (
    <>
      <a class="skip" href="#cells">
        Go to the cells
      </a>
      <div class="sheet">
        <Zones />
        <div class="frame">
          <TopBar />
          <SheetList />
          <Notices />
          <OnlyLooking />
          <FirstVisit />
          <Beginning />
          {narrow.value ? (
            <>
              <Strip />
              <Column />
              <aside class="standing" aria-label="Key figures and checks">
                <DrawingCommands />
                <StandingFigures />
                <PaperChoice paper={paper} />
              </aside>
            </>
          ) : (
            <div class="columns">
              <Column />
              <StandingColumn>
                <PaperChoice paper={paper} />
              </StandingColumn>
            </div>
          )}
          <TitleBlock />
          <LiveSummary />
        </div>
      </div>
    </>
  );
}

/** The form of a first design, while it is open. */
function Beginning() {
  const beginning = useDesigns()?.beginning;
  if (!beginning?.value) return null;
  return (
    <FirstDesign
      onClose={() => {
        beginning.value = false;
      }}
    />
  );
}

const KeptCell = kept(CellView);

/** The shown sheet; on paper the whole set, one after another. */
function Column() {
  const sheet = useSheet();
  const shown = sheet.shownSheet.value;
  const sheets = printing.value ? sheet.part('sheets') : [shown];
  return (
    // A change that was refused leaves nothing of it in the controls.
    <main id="cells" tabIndex={-1} key={sheet.refusals.value}>
      <p class="unseen" role="status">
        {sheet.told.value}
      </p>
      {sheets.map(({ id, pieces }) => (
        <Pieces key={id} pieces={pieces} />
      ))}
    </main>
  );
}

/** The pieces of a sheet in reading order. The first drawing of the design stands in the column beside, so its balloon is not repeated here. */
function Pieces({ pieces }: { pieces: readonly Cell[] }) {
  const standing = standingDrawing(useSheet().cells.value);
  const gaps = gapsOf(pieces, standing);
  return (
    <>
      {pieces.length === 0 && <EmptySheet />}
      {columnOf(pieces, standing).map((cell, index) => (
        <Fragment key={cell.id}>
          <AddHere {...gaps[index]!} />
          <KeptCell cell={cell} number={index + 1} />
        </Fragment>
      ))}
      <AddHere {...gaps.at(-1)!} />
    </>
  );
}

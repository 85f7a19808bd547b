import type { ReadonlySignal, Signal } from '@preact/signals';
import { useDesigns } from '../store/designs';
import { askingToPrint, printing } from '../store/printing';
import { FirstDesign } from './designs/first-design';
import { FirstVisit } from './designs/first-visit';
import { OnlyLooking } from './designs/only-looking';
import type { Paper } from './paper';
import { PaperChoice } from './paper-choice';
import { Pieces } from './pieces';
import { PageStyle } from './print/page-style';
import { PrintDialog } from './print/print-dialog';
import type { Room } from './room';
import { SetColumn } from './set/set-column';
import { SetLine } from './set/set-line';
import { StandingColumn } from './standing/column';
import { DrawingCommands } from './standing/drawing';
import { StandingFigures } from './standing/figures';
import { KeyFigures } from './standing/key-figures';
import { Stops } from './standing/stops';
import { Strip } from './standing/strip';
import { LiveSummary } from './state/live-summary';
import { Notices } from './state/notices';
import { TitleBlock } from './title-block';
import { TopBar } from './top-bar';
import { Zones } from './zones';

/** The drawing sheet: frame and zones, words at the top, the set, the pieces of the open sheet, standing column, title block. */
export function App({ room, paper }: { room: ReadonlySignal<Room>; paper: Signal<Paper> }) {
  const phone = room.value === 'phone';
  return (
    <>
      <a class="skip" href="#pieces">
        Go to the pieces
      </a>
      <div class="sheet">
        <Zones />
        <div class="frame">
          <TopBar />
          <Notices />
          <OnlyLooking />
          <FirstVisit />
          <Beginning />
          {room.value !== 'wide' && <SetLine />}
          {phone && <Strip />}
          <div class={`columns ${room.value}`}>
            {room.value === 'wide' && <SetColumn />}
            <Pieces room={room} />
            {phone ? (
              <aside class="standing" aria-label="Key figures and stops">
                <Stops />
                <KeyFigures />
                <StandingFigures />
                <DrawingCommands />
                <PaperChoice paper={paper} />
              </aside>
            ) : (
              <StandingColumn>
                <PaperChoice paper={paper} />
              </StandingColumn>
            )}
          </div>
          <TitleBlock />
          <LiveSummary />
          {printing.value && <PageStyle />}
          {askingToPrint.value && <PrintDialog />}
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

import type { ReadonlySignal, Signal } from '@preact/signals';
import { LargeAsked } from '../cells/index';
import { useFetched } from '../drawing/index';
import type { FieldView } from '../field/index';
import { useSheet } from '../store/context';
import { useDesigns } from '../store/designs';
import { atField } from '../store/field-open';
import { askingNewsletter, figureAsked } from '../store/figures';
import { askingToListen } from '../store/listening';
import { askingFullSize, askingToPrint, printing } from '../store/printing';
import { askingToShare } from '../store/sharing';
import { unrolled } from '../store/unrolling';
import { FirstDesign } from './designs/first-design';
import { FirstVisit } from './designs/first-visit';
import { OnlyLooking } from './designs/only-looking';
import { TakeFrom } from './designs/take-from';
import { FullSize, Listening, Newsletter, SavingFigure, Sharing } from './fetched-dialogs';
import type { Paper } from './paper';
import { PaperChoice } from './paper-choice';
import { Pieces } from './pieces';
import { PageStyle } from './print/page-style';
import { PrintDialog } from './print/print-dialog';
import type { Room } from './room';
import { CopyVariant } from './set/copy-to-design';
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

interface Shown {
  readonly room: ReadonlySignal<Room>;
  readonly paper: Signal<Paper>;
}

/** The drawing sheet: frame and zones, words at the top, the set, the pieces of the open sheet, standing column, title block. */
export function App({ room, paper }: Shown) {
  if (atField.value) return <AtField />;
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
          <Design room={room} paper={paper} />
          <LiveSummary />
          {printing.value && <PageStyle />}
          {askingToPrint.value && <PrintDialog />}
          {askingFullSize.value && <FullSize />}
          <LargeAsked />
          {askingToListen.value && <Listening log={askingToListen.value.log} />}
          {figureAsked.value && <SavingFigure of={figureAsked.value} />}
          {askingNewsletter.value && <Newsletter />}
          {askingToShare.value && <Sharing what={askingToShare.value} />}
          <CopyVariant />
          <TakeFrom />
        </div>
      </div>
    </>
  );
}

/**
 * The set, the open sheet and what stands beside it, once there are numbers for them: an empty place that is filled later moves
 * what is being read. Where no engine answers the design is there all the same, with what is wrong above it.
 */
function Design({ room, paper }: Shown) {
  const sheet = useSheet();
  const answered = sheet.snapshot.value !== undefined && sheet.offered.value !== undefined;
  if (!answered && sheet.notices.value.length === 0) return null;
  const phone = room.value === 'phone';
  const all = unrolled.value === Number.POSITIVE_INFINITY;
  return (
    <>
      {room.value !== 'wide' && <SetLine />}
      {phone && <Strip />}
      <div class={`columns ${room.value}`}>
        {room.value === 'wide' && <SetColumn />}
        <Pieces room={room} />
        {unrolled.value > 0 && !phone && (
          <StandingColumn>
            <PaperChoice paper={paper} />
          </StandingColumn>
        )}
        {all && phone && <PhoneFigures paper={paper} />}
      </div>
      {all && <TitleBlock />}
    </>
  );
}

/** What a phone has no column for stands below the pieces. */
function PhoneFigures({ paper }: Pick<Shown, 'paper'>) {
  return (
    <aside class="standing" aria-label="Key figures and stops">
      <Stops />
      <KeyFigures />
      <StandingFigures />
      <DrawingCommands />
      <PaperChoice paper={paper} />
    </aside>
  );
}

/** The view for the field, fetched when it is asked for first; the browser keeps it for a day without a connection. */
function AtField() {
  const View = useFetched(
    () => fieldView,
    async () => {
      fieldView = (await import('../field/index')).FieldView;
    },
  );
  return View ? <View /> : null;
}
let fieldView: typeof FieldView | undefined;

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

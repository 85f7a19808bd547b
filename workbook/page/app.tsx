import type { ReadonlySignal, Signal } from '@preact/signals';
import { useEffect, useState } from 'preact/hooks';
import { LargeAsked } from '../cells/index';
import { useFetched } from '../drawing/index';
import type { FieldView } from '../field/index';
import type { FigureDialog, NewsletterDialog } from '../figure/index';
import type { FullSizeDialog } from '../full-size/index';
import type { ListeningDialog } from '../listening/index';
import type { SharingDialog } from '../sharing/index';
import { useSheet } from '../store/context';
import { useDesigns } from '../store/designs';
import { fetched, NOT_FETCHED } from '../store/fetched';
import { atField } from '../store/field-open';
import { askingNewsletter, figureAsked } from '../store/figures';
import { askingToListen } from '../store/listening';
import { askingFullSize, askingToPrint, printing } from '../store/printing';
import { askingToShare } from '../store/sharing';
import type { Sheet } from '../store/sheet';
import { unrolled } from '../store/unrolling';
import { FirstDesign } from './designs/first-design';
import { FirstVisit } from './designs/first-visit';
import { OnlyLooking } from './designs/only-looking';
import { TakeFrom } from './designs/take-from';
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
          {askingToListen.value && <Listening />}
          {figureAsked.value && <SavingFigure />}
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
  const [, arrive] = useState(false);
  useEffect(() => {
    if (fieldView) return;
    void import('../field/index').then((field) => {
      fieldView = field.FieldView;
      arrive(true);
    });
  }, []);
  const View = fieldView;
  return View ? <View /> : null;
}
let fieldView: typeof FieldView | undefined;

/** Part of the program that is asked for first; where it can't be fetched that is said. */
async function orSay<T>(sheet: Sheet, load: () => Promise<T>): Promise<T | undefined> {
  try {
    return await fetched(load);
  } catch {
    sheet.tell({ title: 'Not fetched.', sentences: [NOT_FETCHED] });
    return undefined;
  }
}

/** The form of a figure to be saved, fetched when the first one is. */
function SavingFigure() {
  const sheet = useSheet();
  const Dialog = useFetched(
    () => figureDialog,
    async () => {
      const part = await orSay(sheet, () => import('../figure/index'));
      if (part) figureDialog = part.FigureDialog;
      else figureAsked.value = undefined;
    },
  );
  const asked = figureAsked.value;
  if (!Dialog || !asked) return null;
  return (
    <Dialog
      of={asked}
      onClose={() => {
        figureAsked.value = undefined;
      }}
    />
  );
}
let figureDialog: typeof FigureDialog | undefined;

/** What hands a design on, fetched when it is asked for first. */
function Sharing({ what }: { what: 'to' | 'from' }) {
  const sheet = useSheet();
  const Dialog = useFetched(
    () => sharingDialog,
    async () => {
      const part = await orSay(sheet, () => import('../sharing/index'));
      if (part) sharingDialog = part.SharingDialog;
      else askingToShare.value = undefined;
    },
  );
  return (
    Dialog && (
      <Dialog
        what={what}
        onClose={() => {
          askingToShare.value = undefined;
        }}
      />
    )
  );
}
let sharingDialog: typeof SharingDialog | undefined;

/** The form of a newsletter page, fetched when it is asked for first. */
function Newsletter() {
  const sheet = useSheet();
  const Dialog = useFetched(
    () => newsletterDialog,
    async () => {
      const part = await orSay(sheet, () => import('../figure/index'));
      if (part) newsletterDialog = part.NewsletterDialog;
      else askingNewsletter.value = false;
    },
  );
  return (
    Dialog && (
      <Dialog
        onClose={() => {
          askingNewsletter.value = false;
        }}
      />
    )
  );
}
let newsletterDialog: typeof NewsletterDialog | undefined;

/** Templates at full size, fetched when they are asked for first. */
function FullSize() {
  const sheet = useSheet();
  const Dialog = useFetched(
    () => fullSizeDialog,
    async () => {
      const part = await orSay(sheet, () => import('../full-size/index'));
      if (part) fullSizeDialog = part.FullSizeDialog;
      else askingFullSize.value = false;
    },
  );
  return (
    Dialog && (
      <Dialog
        onClose={() => {
          askingFullSize.value = false;
        }}
      />
    )
  );
}
let fullSizeDialog: typeof FullSizeDialog | undefined;

/** What listens to a flight, fetched when it is asked for first. */
function Listening() {
  const sheet = useSheet();
  const Dialog = useFetched(
    () => listeningDialog,
    async () => {
      const part = await orSay(sheet, () => import('../listening/index'));
      if (part) listeningDialog = part.ListeningDialog;
      else askingToListen.value = undefined;
    },
  );
  const asked = askingToListen.value;
  if (!Dialog || !asked) return null;
  return (
    <Dialog
      log={asked.log}
      onClose={() => {
        askingToListen.value = undefined;
      }}
    />
  );
}
let listeningDialog: typeof ListeningDialog | undefined;

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

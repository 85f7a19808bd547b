import type { ReadonlySignal, Signal } from '@preact/signals';
import { CellView } from '../cells/index';
import { kept } from '../controls/kept';
import { useSheet } from '../store/context';
import { Notices } from './notices';
import { OnlyLooking } from './only-looking';
import type { Paper } from './paper';
import { StandingColumn } from './standing-column';
import { StandingFigures } from './standing-figures';
import { Strip } from './strip';
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
          <TopBar paper={paper} />
          <Notices />
          <OnlyLooking />
          {narrow.value ? (
            <>
              <Strip />
              <Column />
              <div class="standing">
                <StandingFigures />
              </div>
            </>
          ) : (
            <div class="columns">
              <Column />
              <StandingColumn />
            </div>
          )}
          <TitleBlock />
        </div>
      </div>
    </>
  );
}

const KeptCell = kept(CellView);

/** In reading order. The first drawing stands in the column beside, so its balloon is not repeated here. */
function Column() {
  const sheet = useSheet();
  const cells = sheet.part('cells');
  const standing = cells.find((cell) => cell.kind === 'drawing');
  return (
    // A change that was refused leaves nothing of it in the controls.
    <main id="cells" tabIndex={-1} key={sheet.refusals.value}>
      {cells
        .filter((cell) => cell !== standing)
        .map((cell, index) => (
          <KeptCell key={cell.id} cell={cell} number={index + 1} />
        ))}
    </main>
  );
}

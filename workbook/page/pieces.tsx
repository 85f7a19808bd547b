import type { ReadonlySignal } from '@preact/signals';
import { type ComponentChildren, Fragment } from 'preact';
import { useEffect } from 'preact/hooks';
import type { Cell } from '../../engine/index';
import { AddHere, CellView, columnOf, gapsOf, standingDrawing } from '../cells/index';
import { kept } from '../controls/kept';
import { useSheet } from '../store/context';
import { printedAs } from '../store/printed-kinds';
import { notPrinted, printed, printing, sheetsOnPaper } from '../store/printing';
import { unroll, unrolled } from '../store/unrolling';
import { EmptySheet } from './designs/empty-sheet';
import { StandingOnPaper } from './print/standing-on-paper';
import { pageName, WEIGHTS_PAGE } from './print/title-lines';
import { WeightStatement } from './print/weight-statement';
import type { Room } from './room';
import { bandsOf } from './sides';

const KeptCell = kept(CellView);

/** The shown sheet; on paper this or the whole set, one after another, as was chosen. */
export function Pieces({ room }: { room: ReadonlySignal<Room> }) {
  const sheet = useSheet();
  const shown = sheet.shownSheet.value;
  const wide = room.value === 'wide';
  const set = sheet.part('sheets');
  const onPaper = printing.value && printed.value !== 'weights';
  // What is shown stays on the screen while the others are laid out.
  const chosen = onPaper ? sheetsOnPaper(set, shown) : [shown];
  const sheets = chosen.includes(shown) ? chosen : [...chosen, shown];
  return (
    // A change that was refused leaves nothing of it in the controls.
    <main id="pieces" tabIndex={-1} key={sheet.refusals.value}>
      <p class="unseen" role="status">
        {sheet.told.value}
      </p>
      {sheets.map(({ id, title, pieces }, k) => {
        const number = set.findIndex((each) => each.id === id) + 1;
        return (
          <section
            key={id}
            class={`one-sheet ${id === shown.id ? 'shown' : ''} ${printing.value && !(onPaper && chosen.some((each) => each.id === id)) ? 'not-on-paper' : ''}`.trim()}
            aria-label={title}
            style={{ page: pageName(number) }}
          >
            {printing.value && (
              <>
                <h2 class="on-paper sheet-heading">{`Sheet ${number} of ${set.length}: ${title}`}</h2>
                {k === 0 && !notPrinted.value.has('standing') && <StandingOnPaper />}
              </>
            )}
            <OneSheet pieces={printing.value ? pieces.filter(isOnPaper) : pieces} wide={wide} />
          </section>
        );
      })}
      {printing.value && printed.value === 'weights' && (
        <section class="one-sheet" style={{ page: pageName(WEIGHTS_PAGE) }}>
          <WeightStatement />
        </section>
      )}
    </main>
  );
}

const isOnPaper = ({ kind }: Cell): boolean => !notPrinted.value.has(printedAs[kind]);

/**
 * One column in reading order, or on a wide window what is set at the left and what follows at the right. The first drawing of
 * the design stands in the column beside, so its balloon is not repeated here.
 */
function OneSheet({ pieces, wide }: { pieces: readonly Cell[]; wide: boolean }): ComponentChildren {
  const standing = standingDrawing(useSheet().cells.value);
  const column = columnOf(pieces, standing);
  const gaps = gapsOf(pieces, standing);
  // What stands beside the sheet comes first.
  const there = printing.value ? column.length : unrolled.value - 1;
  useEffect(() => {
    if (unrolled.peek() === 0) unroll(1 + column.length);
  }, []);
  if (column.length === 0) {
    return (
      <>
        <EmptySheet />
        <AddHere {...gaps[0]!} alone />
      </>
    );
  }
  const bands = wide ? bandsOf(column) : [[column]];
  return bands.map((sides, band) => (
    <div key={band} class={sides.length > 1 ? 'band two-sides' : 'band'}>
      {sides.map((cells, side) => (
        <div key={side} class="side">
          {cells.map((cell) => {
            const at = column.indexOf(cell);
            return at >= there ? null : (
              <Fragment key={cell.id}>
                {at === 0 && <AddHere {...gaps[0]!} />}
                <KeptCell cell={cell} number={at + 1} />
                <AddHere {...gaps[at + 1]!} />
              </Fragment>
            );
          })}
        </div>
      ))}
    </div>
  ));
}

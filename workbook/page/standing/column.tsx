import type { ComponentChildren } from 'preact';
import { DrawingView, standingDrawing } from '../../cells/index';
import { useSheet } from '../../store/context';
import { useTurn } from '../../store/unrolling';
import { DrawingCommands } from './drawing';
import { StandingFigures } from './figures';
import { KeyFigures } from './key-figures';
import { Stops } from './stops';

/** Beside every sheet: stops that are broken, the key figures, the scale drawing, and what else watches the design. */
export function StandingColumn({ children }: { children: ComponentChildren }) {
  const drawing = standingDrawing(useSheet().cells.value);
  const drawn = useTurn(true);
  const told = useTurn(drawn);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls by itself on a low window, so keys have to reach it.
    <aside class="standing" aria-label="Drawing and key figures" tabIndex={0}>
      <Stops />
      <KeyFigures />
      {drawn && (
        <>
          <DrawingCommands />
          {drawing && <DrawingView cell={drawing} />}
        </>
      )}
      {told && (
        <>
          <StandingFigures />
          {children}
        </>
      )}
    </aside>
  );
}
